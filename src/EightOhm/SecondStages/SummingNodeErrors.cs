using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.SecondStages;

/// <summary>A harmonic at the amplifier's output that comes from the second stage's input, by its two causes.</summary>
/// <param name="Number">2 for the second harmonic, and so on.</param>
/// <param name="FromCapacitance">From the collector-base capacitance, which changes over the swing; rises with frequency.</param>
/// <param name="FromEarlyEffect">From the base current, which changes with the collector's voltage; the same at all frequencies.</param>
/// <param name="Together">Both, a quarter turn apart.</param>
public sealed record SummingNodeHarmonic(
    [property: Symbol("n")] int Number,
    [property: Symbol("d_C")] Ratio FromCapacitance,
    [property: Symbol("d_A")] Ratio FromEarlyEffect,
    [property: Symbol("d")] Ratio Together);

/// <summary>Harmonics that a second stage adds at the summing node: at the output they have the closed-loop gain, and no loop gain reduces them.</summary>
public sealed record SummingNodeErrors
{
    private const int Instants = 512;
    private const int Highest = 7;

    private SummingNodeErrors(IReadOnlyList<SummingNodeHarmonic> harmonics) => Harmonics = harmonics;

    /// <summary>The second to the seventh harmonic.</summary>
    public IReadOnlyList<SummingNodeHarmonic> Harmonics { get; }

    /// <summary>All together: the root of the sum of squares.</summary>
    [Symbol("THD")]
    public Ratio Total => Ratio.FromDecimalFractions(Math.Sqrt(Harmonics.Sum(h => h.Together.DecimalFractions * h.Together.DecimalFractions)));

    internal static SummingNodeErrors Of(SecondStage stage, Frequency f, ElectricPotential V_p, ElectricConductance g_m1, Gain G)
    {
        double w = 2 * Math.PI * Guard.Positive(f).Hertz, swing = Guard.Positive(V_p).Volts, rest = stage.RestVoltage.Volts;
        if (!(swing < rest))
            Guard.Refuse(nameof(V_p), V_p, $"below the voltage at rest, {QuantityFormat.Short(stage.RestVoltage)}", "The collector would meet its base: less swing, or more rail.");
        // What the error is at the output for an ampere of it.
        var scale = Guard.Positive(G).Ratio / Guard.Positive(g_m1).Siemens / swing;
        var follower = (stage.FollowerGain ?? 0) + 1;
        double capacitance = (stage.Cascode?.OutputCapacitance ?? stage.OutputCapacitance).Farads, gain = stage.Cascode?.CurrentGain ?? stage.CurrentGain;
        double[] capacitive = new double[Instants], early = new double[Instants];
        for (var i = 0; i < Instants; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / Instants);
            capacitive[i] = Capacitance(stage, capacitance, rest - (swing * sin)) * w * swing * cos;
            early[i] = Base(stage, gain, rest - (swing * sin));
            if (!stage.IsPushPull)
                continue;
            capacitive[i] += Capacitance(stage, capacitance, rest + (swing * sin)) * w * swing * cos;
            early[i] -= Base(stage, gain, rest + (swing * sin));
        }

        return new([.. Enumerable.Range(2, Highest - 1).Select(n =>
        {
            var reaches = scale * Reaching(stage.Cascode, stage.CurrentGain, follower, n * w);
            Complex c = reaches * Harmonic(capacitive, n), e = reaches * Harmonic(early, n);
            return new SummingNodeHarmonic(n, Fraction(c), Fraction(e), Fraction(c + e));
        })]);
    }

    // How much of an error current the first stage must give. Without a cascode it flows into the base, and a follower divides it. A cascode's flows in the
    // collector below: that base must move by i/g_m2, and the input's admittance asks for a current with it.
    private static Complex Reaching(StageCascode? cascode, double gain, double follower, double w)
    {
        if (cascode is null)
            return 1 / follower;
        var g = cascode.Transconductance.Siemens;
        return new Complex(g / (gain * follower), w * cascode.InputCapacitance.Farads) / g;
    }

    private static double Capacitance(SecondStage stage, double c, double v) =>
        SummingNode.Capacitance(ElectricCapacitance.FromFarads(c), stage.CapacitanceVoltage, ElectricPotential.FromVolts(v), stage.BuiltInVoltage, stage.Grading).Farads;

    private static double Base(SecondStage stage, double gain, double v) => stage.Current.Amperes / gain / (1 + (v / stage.EarlyVoltage.Volts));

    // The sum over equal instants of a smooth cycle converges faster than any power of their number.
    private static Complex Harmonic(double[] cycle, int n)
    {
        var sum = Complex.Zero;
        for (var i = 0; i < cycle.Length; i++)
            sum += cycle[i] * Complex.FromPolarCoordinates(2.0 / cycle.Length, -2 * Math.PI * n * i / cycle.Length);
        return sum;
    }

    // What is rounding beside the whole cycle is nothing.
    private static Ratio Fraction(Complex z) => Ratio.FromDecimalFractions(z.Magnitude < 1e-18 ? 0 : z.Magnitude);
}
