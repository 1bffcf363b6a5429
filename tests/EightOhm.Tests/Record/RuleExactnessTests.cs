using System.Linq.Expressions;
using CsCheck;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

/// <summary>What the record computes from its JSON equals what the cell's own lambda computes, in every bit.</summary>
public sealed class RuleExactnessTests
{
    private static readonly Gen<double> Positive = Gen.Double[-6.0, 6.0].Select(e => Math.Pow(10, e));

    [Fact]
    public void Roots_and_products() => Same((Power x, ElectricResistance y) => Sqrt(x * y), v => Power.FromWatts(v), v => ElectricResistance.FromOhms(v));

    [Fact]
    public void Operators_of_UnitsNet_and_decimals() => Same((Power x, Power y) => (double)((x * 3 + y / 7 - x * 0.1) / (x + y)) * x, v => Power.FromWatts(v), v => Power.FromWatts(v));

    [Fact]
    public void Thermal_noise_with_constants() => Same((ElectricResistance x, Frequency y) => Sqrt(4 * (k * Literals.get_degC(25)) * x) * Sqrt(y), v => ElectricResistance.FromOhms(v), v => Frequency.FromHertz(v));

    [Fact]
    public void Poles() => Same((ElectricResistance x, ElectricCapacitance y) => 1 / (2 * pi * (x * y)), v => ElectricResistance.FromOhms(v), v => ElectricCapacitance.FromFarads(v));

    [Fact]
    public void Choices_comparisons_and_signs() => Same((double x, double y) => x > y && !(x == 3) ? -x % y : +y * (x <= 1 || y != 2 ? 2 : 3), v => v, v => v);

    [Fact]
    public void Parts_of_quantities_and_constructors() => Same((ElectricPotential x, Gain y) => 20 * Log10(x.Volts * y.Ratio) + new SquaredVoltage(x.Millivolts).Si, v => ElectricPotential.FromVolts(v), Gain.FromRatio);

    [Fact]
    public void Quantities_from_numbers() => Same((double x, Power y) => ElectricPotential.FromVolts(x) * 2 + Sqrt(y * ElectricResistance.FromOhms(x)), v => v, v => Power.FromWatts(v));

    [Fact]
    public void Temperatures_and_whole_numbers() => Same((Temperature x, int y) => (x - Literals.get_degC(25)) * y / 3, v => Temperature.FromKelvins(v), v => (int)Math.Round(v) + 1);

    private static void Same<T1, T2, TR>(Expression<Func<T1, T2, TR>> rule, Func<double, T1> first, Func<double, T2> second)
        where T1 : struct
        where T2 : struct
        where TR : struct
    {
        using var folder = new TestFolder();
        folder.Open().Target("x", first(1));
        folder.Open().Target("y", second(2));
        folder.Open().Derive("z", rule);
        // Only what the file says is left of the rule now.
        var stored = folder.Open().EntryOf("z").Expression!;
        var rebuilt = new Rule(stored);
        var own = rule.Compile();
        Gen.Select(Positive, Positive).Sample((a, b) => (first(a), second(b)) is var (x, y) && Bits(own(x, y)) == Bits(rebuilt.Evaluate([x, y])), iter: 300);
    }

    private static string Bits(object value) => value is Power p ? p.Watts.ToString(System.Globalization.CultureInfo.InvariantCulture) : KeptValue.Fingerprint(QuantityKinds.Of(value.GetType()), value);
}
