using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SecondStages;

/// <summary>Errors of the second stage that the loop gain does not reduce: currents into its input that hang on its output voltage.</summary>
/// <remarks>
/// The first stage must find these currents, i = g_m1·v, and the voltage it needs for them stands at the amplifier's input. So it appears at the output times the
/// closed-loop gain, however much loop gain there is. A follower in front divides the current by its gain; a cascode keeps the collector's voltage still, and leaves of its own what its transistor below needs at its base. All at once, with the
/// capacitance's own curve: <see cref="SecondStage.Errors"/>.
/// </remarks>
public static partial class SummingNode
{
    /// <summary>Collector-base capacitance at a voltage: C_0·((ψ + V)/(ψ + V_0))^(−m).</summary>
    /// <param name="C_0">As the sheet gives it, at V_0; greater than 0 F.</param>
    /// <param name="V_0">Collector-base voltage of that reading; 0 V or more.</param>
    /// <param name="V">The collector-base voltage asked for; 0 V or more.</param>
    /// <param name="psi">Built-in voltage of the junction, about 0.75 V; greater than 0 V.</param>
    /// <param name="m">Grading exponent, 0.33 of a graded junction, 0.5 of an abrupt one; 0 to 1.</param>
    /// <returns>The capacitance, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SummingNode.Capacitance(4.pF, 10.V, 46.V, 0.75.V, 0.33)   // 2.463 pF</code></example>
    [Formula("Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, 4th ed., ch. 1: depletion capacitance", Symbol = "C_cb")]
    [RecordName("summing-node.capacitance")]
    public static ElectricCapacitance Capacitance(ElectricCapacitance C_0, ElectricPotential V_0, ElectricPotential V, ElectricPotential psi, double m)
    {
        Guard.Positive(C_0);
        Guard.NotNegative(V_0);
        Guard.NotNegative(V, hint: "A saturated transistor has another capacitance.");
        Guard.Positive(psi);
        Guard.Between(m, 0, 1);
        var x = (psi + V) / (psi + V_0);
        return C_0 * Pow(x, -m);
    }

    /// <summary>A harmonic of the base current that the Early effect makes over a swing: exactly, 2·(I/h_FE)·(a − √(a² − b²))ⁿ/(bⁿ·√(a² − b²)).</summary>
    /// <remarks>The collector current is held by the current source, so the base current falls as the collector's voltage rises: I/(h_FE·(1 + v/V_A)).</remarks>
    /// <param name="n">The harmonic, 1 to 20.</param>
    /// <param name="I">Standing current; greater than 0 A.</param>
    /// <param name="h_FE">Current gain extrapolated to no collector voltage; greater than 0.</param>
    /// <param name="V_A">Early voltage; greater than 0 V.</param>
    /// <param name="V">Collector-emitter voltage at rest; at least V_p.</param>
    /// <param name="V_p">Peak of its swing (not rms); greater than 0 V.</param>
    /// <returns>The harmonic of the base current, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SummingNode.EarlyHarmonic(2, 10.mA, 100, 100.V, 46.V, 40.V)   // 2.778 µA</code></example>
    [Formula("Gray, Hurst, Lewis & Meyer, Analysis and Design of Analog Integrated Circuits, 4th ed., ch. 1: Early effect; derived, the Fourier series of 1/(a − b·sin θ)", Symbol = "i_n")]
    [RecordName("summing-node.early-harmonic")]
    public static ElectricCurrent EarlyHarmonic(int n, ElectricCurrent I, double h_FE, ElectricPotential V_A, ElectricPotential V, ElectricPotential V_p)
    {
        Guard.Between(n, 1, 20);
        Guard.Positive(I);
        Guard.Positive(h_FE);
        Guard.Positive(V_A);
        Guard.Positive(V_p);
        Guard.InReach(V);
        Guard.NotNegative((V - V_p).Volts, "V − V_p", "The collector would go past its emitter: less swing, or more rail.");
        var a = 1 + V / V_A;
        var b = V_p / V_A;
        var w = Sqrt(a * a - b * b);
        // (a − w)/b as b/(a + w), which keeps its digits with a small swing.
        var x = b / (a + w);
        return 2 / w * Pow(x, (double)n) * (I / h_FE);
    }

    /// <summary>An error current into the second stage's input, as it appears at the output of the amplifier, of that output: i·G/(g_m1·V_p).</summary>
    /// <param name="i">The current, peak; 0 A or more.</param>
    /// <param name="g_m1">Transconductance of the first stage, degeneration and mirror included; greater than 0 S.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <param name="V_p">Peak voltage at the amplifier's output (not rms); greater than 0 V.</param>
    /// <returns>The error, of the output, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>SummingNode.AtOutput(2.78.uA, 16.7.mS, 23.6.ratio, 40.V)   // 98.22 ppm</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8: an error beside the signal has the signal's gain", Symbol = "d")]
    [RecordName("summing-node.at-output")]
    public static Ratio AtOutput(ElectricCurrent i, ElectricConductance g_m1, Gain G, ElectricPotential V_p)
    {
        Guard.NotNegative(i);
        Guard.Positive(g_m1);
        Guard.Positive(G);
        Guard.Positive(V_p);
        var v = i / g_m1;
        return Ratio.FromDecimalFractions(G * v / V_p);
    }
}
