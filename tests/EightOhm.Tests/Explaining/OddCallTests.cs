using System.Reflection;
using EightOhm.Devices;
using EightOhm.Loads;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;
using EightOhm.Tests.Devices;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Explaining;

/// <summary>Whatever the constructors, solvers and members of the power side are given, they give finite numbers or say in words what is wrong.</summary>
public class OddCallTests
{
    private const int Draws = 20;

    private static readonly MethodBase[] All = [.. Rooms.Types.Where(t => !typeof(Delegate).IsAssignableFrom(t)).SelectMany(Calls)];

    public static TheoryData<string> Names => [.. All.Select(Name).Distinct()];

    [Theory]
    [MemberData(nameof(Names))]
    public void Odd_inputs_give_finite_values_or_a_refusal_in_words(string name)
    {
        foreach (var call in All.Where(m => Name(m) == name))
        {
            var random = new Random(name.Length);
            for (var draw = 0; draw < Draws; draw++)
            {
                object? target = null;
                object?[] inputs;
                try
                {
                    target = call.IsStatic || call is ConstructorInfo ? null : Things.Make(call.DeclaringType!, "this", random);
                    inputs = [.. call.GetParameters().Select(p => Things.Make(p.ParameterType, p.Name!, random))];
                }
                catch (Exception e) when (OddInputs.InWords(e))
                {
                    continue; // the ordinary ones do not fit each other: draw again
                }

                if (inputs.Length > 0)
                    OddInputs.Put(inputs, random);
                string said = $"{name} of ({string.Join("; ", inputs.Select(OddInputs.Text))}) on {target}";
                using var time = new CancellationTokenSource(TimeSpan.FromMinutes(1));
                using var work = Work.Begin(time.Token);
                try
                {
                    var value = call is ConstructorInfo made ? made.Invoke(BindingFlags.DoNotWrapExceptions, null, inputs, null) : call.Invoke(target, BindingFlags.DoNotWrapExceptions, null, inputs, null);
                    // A record of figures keeps those that it is given; what computes must not make bad ones.
                    if (call is not ConstructorInfo && !OddInputs.Numbers(value).All(double.IsFinite))
                        Assert.Fail($"{said} gave {value}");
                }
                catch (OperationCanceledException)
                {
                    Assert.Fail($"{said} had not ended after a minute");
                }
                catch (Exception refusal) when (refusal is not Xunit.Sdk.XunitException)
                {
                    Assert.True(OddInputs.InWords(refusal), $"{said} threw {refusal.GetType().Name}: {refusal.Message}");
                }
            }
        }
    }

    private static IEnumerable<MethodBase> Calls(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        IEnumerable<MethodBase> made = type.IsAbstract || type.IsValueType || type.GetConstructors().Any(c => c.GetParameters().Any(p => p.ParameterType.IsByRef)) ? [] : type.GetConstructors();
        var members = type.GetMethods(all).Where(m => !m.IsSpecialName && m.Name is not ("ToString" or "GetHashCode" or "Equals" or "Deconstruct" or "PrintMembers" or "<Clone>$" or "GetType") && m.ReturnType != typeof(void) && !m.ContainsGenericParameters);
        return made.Concat(members).Where(m => (m.IsStatic || m is ConstructorInfo || Things.Can(type)) && m.GetParameters().All(p => Things.Can(p.ParameterType)));
    }

    private static string Name(MethodBase m) => $"{m.DeclaringType!.Name}.{m.Name}({string.Join(", ", m.GetParameters().Select(p => p.Name))})";
}
