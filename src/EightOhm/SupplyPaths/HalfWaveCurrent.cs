using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SupplyPaths;

/// <summary>The current that a class-B stage draws from one rail: half a sine, with its harmonics, in whatever impedance it meets.</summary>
/// <remarks>The amplifier's own current is a supply disturbance that keeps time with the signal: what leaks back is distortion, not hum.</remarks>
public static partial class HalfWaveCurrent
{
    /// <summary>A harmonic of the half-waves: I_p/π (mean), I_p/2, then 2·I_p/(π·(h² − 1)) for even h and nothing for the other odd ones.</summary>
    /// <param name="I_p">Peak of the half-waves, of the load's current (not rms); 0 A or more.</param>
    /// <param name="h">Harmonic of the signal, 0 for the mean; 0 to 1000.</param>
    /// <returns>The amplitude (peak; the mean for h = 0), in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>HalfWaveCurrent.Harmonic(5.A, 2)   // 1.061 A</code></example>
    [Formula("Bird, Electrical Circuit Theory and Technology, ch. 36: Fourier series of a half-wave rectified sine", Symbol = "I_h")]
    [RecordName("half-wave-current.harmonic")]
    public static ElectricCurrent Harmonic(ElectricCurrent I_p, int h)
    {
        Guard.NotNegative(I_p);
        Guard.Between(h, 0, 1000);
        if (h == 0)
            return I_p / pi;
        if (h == 1)
            return I_p / 2;
        if (h % 2 == 0)
            return 2 * I_p / (pi * (h * h - 1));
        return 0 * I_p;
    }

    /// <summary>What a current makes across a rail's resistance and inductance: I·√(R² + (2π·f·L)²).</summary>
    /// <param name="I">The current at the frequency, peak or rms; 0 A or more.</param>
    /// <param name="f">Its frequency, a harmonic's own; 0 Hz or more.</param>
    /// <param name="R">Resistance of rail, reservoir and wire; 0 Ω or more.</param>
    /// <param name="L">Inductance of the loop; 0 H or more.</param>
    /// <returns>On the rail, in the current's measure, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>HalfWaveCurrent.OnRail(1.061.A, 40.kHz, 20.mOhm, 0.25.uH)   // 69.96 mV</code></example>
    [Formula("Bird, Electrical Circuit Theory and Technology, ch. 24: resistance and inductance in series", Symbol = "V_h")]
    [RecordName("half-wave-current.on-rail")]
    public static ElectricPotential OnRail(ElectricCurrent I, Frequency f, ElectricResistance R, ElectricInductance L)
    {
        Guard.NotNegative(I);
        Guard.NotNegative(f);
        Guard.NotNegative(R);
        Guard.NotNegative(L);
        var X = 2 * pi * (f * L);
        return I * Sqrt(R * R + X * X);
    }
}
