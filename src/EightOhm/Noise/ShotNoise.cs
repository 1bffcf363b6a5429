using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Noise;

/// <summary>The noise of a direct current whose charges cross a junction one by one, single-sided.</summary>
/// <remarks>Of a junction, not of a resistor: a current through a metal film or a wire has none.</remarks>
public static partial class ShotNoise
{
    /// <summary>Noise current density of a direct current through a junction, rms: √(2·q·I).</summary>
    /// <param name="I">The direct current (its magnitude); 0 A or more.</param>
    /// <returns>The density, rms, in A/√Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    /// <example><code>ShotNoise.CurrentDensity(1.mA)   // 17.9 pA/√Hz</code></example>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "i_n")]
    [RecordName("shot-noise.current-density")]
    public static CurrentNoiseDensity CurrentDensity(ElectricCurrent I)
    {
        Guard.NotNegative(I, hint: "Give the magnitude of the direct current.");
        return Sqrt(2 * q * I);
    }

    /// <summary>Noise current of a direct current over a noise bandwidth, rms: i·√B.</summary>
    /// <param name="I">The direct current (its magnitude); 0 A or more.</param>
    /// <param name="B">The noise bandwidth (of a one-pole response π/2 times its corner); 0 Hz or more.</param>
    /// <returns>The noise current, rms, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ch. 7", Symbol = "I_n")]
    [RecordName("shot-noise.current")]
    public static ElectricCurrent Current(ElectricCurrent I, Frequency B) => CurrentDensity(I) * Sqrt(B);
}
