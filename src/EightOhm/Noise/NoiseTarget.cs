using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>From a noise target to the feedback network that it allows, and back.</summary>
public static partial class NoiseTarget
{
    private const string Source = "S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7";

    /// <summary>The resistance that a target leaves when other noises have taken theirs: (e_max² − e_n²)/(4·k·T).</summary>
    /// <param name="e_max">The target at the input; not below e_n.</param>
    /// <param name="e_n">All other noise at the input together; 0 V/√Hz or more.</param>
    /// <param name="T">Temperature of the resistance; above 0 K.</param>
    /// <returns>The resistance that is left, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The others take all of it already, or an input is out of range.</exception>
    [Formula(Source, Symbol = "R_left")]
    [RecordName("noise-target.resistance-left")]
    public static ElectricResistance ResistanceLeft(VoltageNoiseDensity e_max, VoltageNoiseDensity e_n, Temperature T)
    {
        Guard.NotNegative(e_max);
        Guard.NotNegative(e_n);
        Guard.Positive(T);
        Guard.NotNegative(e_max - e_n, "e_max less e_n", "The other noises take all of the target already: look for the largest of them.");
        return (e_max * e_max - e_n * e_n) / (4 * k * T);
    }

    /// <summary>The lower resistor of a divider that makes a gain with a noise resistance: R_fb·G/(G − 1).</summary>
    /// <param name="R_fb">The two resistors of the divider in parallel; greater than 0 Ω.</param>
    /// <param name="G">Gain; greater than 1.</param>
    /// <returns>The lower resistor, from the inverting input to ground, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R_g")]
    [RecordName("noise-target.lower-resistor")]
    public static ElectricResistance LowerResistor(ElectricResistance R_fb, Gain G)
    {
        Guard.Positive(R_fb);
        Guard.Positive(G.Ratio - 1, "G less 1", "A gain of one has no resistor to ground.");
        return R_fb * (G.Ratio / (G.Ratio - 1));
    }

    /// <summary>The upper resistor of that divider: R_fb·G.</summary>
    /// <param name="R_fb">The two resistors of the divider in parallel; greater than 0 Ω.</param>
    /// <param name="G">Gain; greater than 1.</param>
    /// <returns>The upper resistor, from the output to the inverting input, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R_f")]
    [RecordName("noise-target.upper-resistor")]
    public static ElectricResistance UpperResistor(ElectricResistance R_fb, Gain G)
    {
        Guard.Positive(R_fb);
        Guard.Positive(G.Ratio - 1, "G less 1", "A gain of one has no resistor to ground.");
        return R_fb * G.Ratio;
    }

    /// <summary>The noise of a divider at the inverting input: √(4·k·T·R_f·R_g/(R_f + R_g)).</summary>
    /// <param name="R_f">From the output to the inverting input; greater than 0 Ω.</param>
    /// <param name="R_g">From the inverting input to ground; greater than 0 Ω.</param>
    /// <param name="T">Temperature of both; above 0 K.</param>
    /// <returns>The density at the input, rms, in V/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "e_fb")]
    [RecordName("noise-target.of-divider")]
    public static VoltageNoiseDensity OfDivider(ElectricResistance R_f, ElectricResistance R_g, Temperature T)
    {
        Guard.Positive(R_f);
        Guard.Positive(R_g);
        return ThermalNoise.VoltageDensity(Parallel(R_f, R_g), T);
    }
}
