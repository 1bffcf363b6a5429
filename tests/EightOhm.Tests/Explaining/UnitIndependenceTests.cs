using System.Reflection;
using CsCheck;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Explaining;

/// <summary>A result does not depend on the units that its inputs are kept in.</summary>
public class UnitIndependenceTests
{
    private static readonly MethodInfo[] Formulas = [.. FormulaSteps.FormulasOf(typeof(FormulaSteps).Assembly).OfType<MethodInfo>().Where(m => m.IsStatic && QuantityKinds.Find(m.ReturnType) is not null)];

    private static readonly MethodInfo[] Operators = [.. typeof(Algebra).GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly).Where(m => m.Name.StartsWith("op_", StringComparison.Ordinal))];

    [Fact]
    public void A_formula_gives_the_same_for_values_in_any_unit() => Same(Formulas, 3000);

    [Fact]
    public void An_operator_gives_the_same_for_values_in_any_unit() => Same(Operators, 3000);

    private static void Same(MethodInfo[] functions, int samples) =>
        Gen.Select(Gen.Int[0, functions.Length - 1], Gen.Int[0, int.MaxValue - 1]).Sample((which, seed) =>
        {
            var random = new Random(seed);
            var function = functions[which];
            object[] inputs = [.. Inputs.For(function, random)];
            object[] other = [.. inputs.Select(i => Elsewhere(i, random))];
            if (Try(function, inputs) is not { } one || Try(function, other) is not { } two)
                return;
            var kind = QuantityKinds.Of(function.ReturnType);
            double a = kind.ToSi(one), b = kind.ToSi(two);
            var scale = kind.Style == FormatStyle.Celsius ? Math.Max(Math.Abs(a), 300) : Math.Abs(a);
            // A small difference of large inputs loses digits in any unit; what is left must agree.
            Assert.True(Math.Abs(a - b) <= 1e-6 * scale || Math.Abs(a - b) < 1e-12, $"{function.DeclaringType!.Name}.{function.Name}({string.Join(", ", inputs)}) is {a:R}, in other units ({string.Join(", ", other)}) {b:R}");
        }, iter: samples, threads: 1);

    // A guard on a bound may fall either way after a conversion's rounding.
    private static object? Try(MethodInfo function, object[] inputs)
    {
        try
        {
            return function.Invoke(null, BindingFlags.DoNotWrapExceptions, null, inputs, null);
        }
        catch (RefusedValueException)
        {
            return null;
        }
    }

    private static object Elsewhere(object value, Random random) => value switch
    {
        IQuantity quantity when quantity.QuantityInfo.UnitInfos is { Length: > 1 } units => Kept(quantity, units[random.Next(units.Length)].Value),
        _ => value,
    };

    // A unit that scales: UnitsNet computes in the unit at hand, so twice a value in B units, which are squares of a frequency, is not twice the frequency.
    private static IQuantity Kept(IQuantity quantity, Enum unit)
    {
        // A slope has no angle beyond itself: UnitsNet refuses to convert.
        if (quantity is Angle && unit is UnitsNet.Units.AngleUnit.Tilt)
            return quantity;
        var kind = QuantityKinds.Of(quantity.GetType());
        var there = quantity.ToUnit(unit);
        double one = kind.ToSi(Of(1)), two = kind.ToSi(Of(2));
        return Math.Abs(two - (2 * one)) <= 1e-12 * Math.Abs(one) && one != 0 ? there : quantity;

        // Quantity.From knows UnitsNet's own alone.
        IQuantity Of(double number) => (IQuantity)quantity.GetType().GetMethod("From", [typeof(QuantityValue), unit.GetType()])?.Invoke(null, [(QuantityValue)number, unit])!
            ?? (IQuantity)quantity.GetType().GetMethod("From", [typeof(double), unit.GetType()])!.Invoke(null, [number, unit])!;
    }
}
