using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>A figure's natural logarithm as a weighted sum of logarithms of what the sheet does not print: gain, noise, rated voltage.</summary>
/// <remarks>All relations between a sheet's figures are products and powers, so in logarithms they are linear.</remarks>
/// <param name="What">The figure in words, to stand before its printed text: "gain", "rated power into 8 Ω".</param>
/// <param name="Type">The type of its value.</param>
/// <param name="Terms">The unknowns, each with its weight.</param>
/// <param name="Constant">The sum's constant.</param>
/// <param name="Slack">An unknown that can only be one or more (its logarithm not negative), where the figure may fall short of the relation; or null.</param>
/// <param name="Load">The load that the figure is stated for, or null.</param>
internal sealed record SheetForm(string What, Type Type, IReadOnlyList<(string Unknown, double Weight)> Terms, double Constant = 0, string? Slack = null, ElectricResistance? Load = null)
{
    private const string Gain = "gain", Slew = "slew", Density = "density", Bandwidth = "bandwidth";

    public static SheetForm RatedPower(ElectricResistance load) => new($"rated power into {load.Text()}", typeof(Power), [(PowerInto(load), 1)], Load: load);

    // V = √(P·R)
    public static SheetForm RatedVoltage(ElectricResistance load) => new($"rms voltage at rated power into {load.Text()}", typeof(ElectricPotential), [(PowerInto(load), 0.5)], HalfLog(load.Ohms), Load: load);

    // î = √(2·P/R)
    public static SheetForm PeakCurrent(ElectricResistance load) => new($"peak current at rated power into {load.Text()}", typeof(ElectricCurrent), [(PowerInto(load), 0.5)], HalfLog(2 / load.Ohms), Load: load);

    public static SheetForm BurstPower(ElectricResistance load) => new($"burst power into {load.Text()}", typeof(Power), [(PowerInto(load), 1), (HeadroomInto(load), 2)], Load: load);

    public static SheetForm DynamicHeadroom(ElectricResistance load) => new($"dynamic headroom into {load.Text()}", typeof(Gain), [(HeadroomInto(load), 1)], Load: load);

    // V_in = √(P·R)/G
    public static SheetForm Sensitivity(ElectricResistance load) =>
        new($"sensitivity for rated power into {load.Text()}", typeof(ElectricPotential), [(PowerInto(load), 0.5), (Gain, -1)], HalfLog(load.Ohms), Load: load);

    // One voltage said to give rated power into both loads: f(first) − f(second) = 0 whatever the voltage, a form that is known to be one.
    public SheetForm SameAs(SheetForm other) =>
        new(What, Type, [.. Terms, .. other.Terms.Select(t => (t.Unknown, -t.Weight))], Constant - other.Constant, Load: Load);

    public static SheetForm VoltageGain() => new("gain", typeof(Gain), [(Gain, 1)]);

    public static SheetForm SlewRate() => new("slew rate", typeof(ElectricPotentialChangeRate), [(Slew, 1)]);

    // f = SR/(2π·√(2·P·R)) at most: a filter before the amplifier may hold it lower.
    public static SheetForm FullPowerBandwidth(ElectricResistance load) =>
        new($"full-power bandwidth into {load.Text()}", typeof(Frequency), [(Slew, 1), (PowerInto(load), -0.5)], -Math.Log(2 * Math.PI) - HalfLog(2 * load.Ohms), $"slack {load.Text()}", load);

    public static SheetForm NoiseDensity() => new("input noise density", typeof(VoltageNoiseDensity), [(Density, 1)]);

    public static SheetForm NoiseBandwidth() => new("noise bandwidth", typeof(Frequency), [(Bandwidth, 1)]);

    // B = π/2·f
    public static SheetForm OnePoleCorner() => new("corner of the one-pole noise band", typeof(Frequency), [(Bandwidth, 1)], -Math.Log(Math.PI / 2));

    // E = e·√B
    public static SheetForm NoiseAtInput() => new("total noise at the input", typeof(ElectricPotential), [.. Noise("", 1)]);

    public static SheetForm NoiseAtOutput() => new("total noise at the output", typeof(ElectricPotential), [.. Noise("", 1), (Gain, 1)]);

    public static SheetForm Snr(ElectricPotential reference, string weighting) =>
        new($"{Weighted(weighting)}SNR re {QuantityFormat.Short(reference)} at the input", typeof(Gain), [.. Noise(weighting, -1)], Math.Log(reference.Volts));

    public static SheetForm SnrAt(Power power, ElectricResistance load, string weighting) =>
        new($"{Weighted(weighting)}SNR at {QuantityFormat.Short(power)} into {load.Text()}", typeof(Gain), [.. Noise(weighting, -1), (Gain, -1)], HalfLog((double)power.Watts * load.Ohms), Load: load);

    public static SheetForm SnrAtRated(ElectricResistance load, string weighting) =>
        new($"{Weighted(weighting)}SNR at rated power into {load.Text()}", typeof(Gain), [.. Noise(weighting, -1), (Gain, -1), (PowerInto(load), 0.5)], HalfLog(load.Ohms), Load: load);

    // A weighted noise is a noise of its own: density and bandwidth say nothing certain of it.
    private static (string, double)[] Noise(string weighting, double weight) =>
        weighting.Length > 0 ? [($"noise {weighting}", weight)] : [(Density, weight), (Bandwidth, weight / 2)];

    private static string Weighted(string weighting) => weighting.Length > 0 ? $"{weighting}-weighted " : "";

    private static string PowerInto(ElectricResistance load) => $"power {load.Text()}";

    private static string HeadroomInto(ElectricResistance load) => $"headroom {load.Text()}";

    public QuantityKind Kind() => QuantityKinds.Of(Type);

    private static double HalfLog(double number) => Math.Log(number) / 2;
}

/// <summary>How a load reads.</summary>
internal static class LoadText
{
    public static string Text(this ElectricResistance load) => QuantityFormat.Short(load);
}
