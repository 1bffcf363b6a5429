using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Tests.Explaining;

/// <summary>What is shown is what computes: each formula's steps gives the member's own value, bit for bit.</summary>
public class StepsTellTheTruthTests
{
    private const int Wanted = 200;

    private static readonly MemberInfo[] All = [.. FormulaSteps.FormulasOf(typeof(FormulaSteps).Assembly)];

    public static TheoryData<string> Formulas => [.. All.Select(Name)];

    [Fact]
    public void There_are_formulas_and_each_names_its_source()
    {
        Assert.NotEmpty(All);
        Assert.All(All, m => Assert.True(m.GetCustomAttribute<FormulaAttribute>()!.Source.Length > 10, Name(m)));
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public void The_last_step_is_the_formulas_own_value_to_the_last_bit(string name)
    {
        var formula = All.Single(m => Name(m) == name);
        var steps = FormulaSteps.Of(formula)!;
        var random = new Random(name.Length);
        var accepted = 0;
        for (var draw = 0; accepted < Wanted; draw++)
        {
            Assert.True(draw < 200 * Wanted, $"{name} accepted only {accepted} of {draw} inputs: narrow the ranges in tests/EightOhm.Tests/Explaining/Inputs.cs.");
            object[] inputs = [.. Inputs.For(formula, random)];
            object own;
            try
            {
                own = Own(formula, inputs);
            }
            catch (RefusedValueException)
            {
                continue; // a guard's refusal: draw again
            }

            accepted++;
            Assert.Equal(Bits(own), Bits(steps.Compute(inputs)[^1]));
        }
    }

    private static object Own(MemberInfo formula, object[] inputs)
    {
        var method = formula as MethodInfo ?? ((PropertyInfo)formula).GetMethod!;
        return method.IsStatic
            ? method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, inputs, null)!
            : method.Invoke(inputs[0], BindingFlags.DoNotWrapExceptions, null, inputs[1..], null)!;
    }

    // The bits of every number in a value: a quantity, both sides of a balance, the items of a list, the figures of a record.
    private static IEnumerable<long> Bits(object value) => value switch
    {
        _ when QuantityKinds.Find(value.GetType()) is { } kind => [BitConverter.DoubleToInt64Bits(kind.ToSi(value))],
        bool b => [b ? 1 : 0],
        ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Bits(tuple[i]!)),
        IEnumerable list => list.Cast<object>().SelectMany(Bits),
        _ => Figures(value),
    };

    private static IEnumerable<long> Figures(object value)
    {
        var properties = value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0).ToList();
        Assert.True(properties.Count > 0, $"{value.GetType().Name} has no figures to compare");
        return properties.SelectMany(p => Bits(p.GetValue(value)!));
    }

    private static string Name(MemberInfo m) => m is MethodInfo f
        ? $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", f.GetParameters().Select(p => p.Name))})"
        : $"{m.DeclaringType!.Name}.{m.Name}";
}
