using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SecondStages;

/// <summary>After clipping: how long the saturated second stage sticks to its rail.</summary>
/// <remarks>In clipping the loop drives it with all that the first stage has, tens of times the base current it needs. The stored charge must go before it leaves the rail. A diode that
/// holds the collector off saturation avoids it at the cost of its own leakage and capacitance.</remarks>
public static partial class Recovery
{
    /// <summary>How long it stays saturated: τ_s·ln(I_f/I_n).</summary>
    /// <param name="tau_s">Storage time constant of the transistor; greater than 0 s.</param>
    /// <param name="I_f">Base current forced on it while it clips; at least I_n.</param>
    /// <param name="I_n">Base current that its collector current needs; greater than 0 A.</param>
    /// <returns>The time, in s; 0 s where the drive is no more than needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>Recovery.Time(1.us, 1.mA, 0.1.mA)   // 2.303 µs</code></example>
    [Formula("J. Millman & H. Taub, Pulse, Digital, and Switching Waveforms, ch. 20: storage time, with the drive simply gone", Symbol = "t_s")]
    [RecordName("recovery.time")]
    public static Duration Time(Duration tau_s, ElectricCurrent I_f, ElectricCurrent I_n)
    {
        Guard.Positive(tau_s);
        Guard.Positive(I_n);
        Guard.Positive(I_f);
        Guard.NotNegative(I_f - I_n, nameof(I_f), "With less base current than it needs the transistor does not saturate.");
        return tau_s * Ln(I_f / I_n);
    }

    /// <summary>That time as a share of a cycle: t·f.</summary>
    /// <param name="t_s">The time; 0 s or more.</param>
    /// <param name="f">Frequency of the sine; 0 Hz or more.</param>
    /// <returns>The share, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    /// <example><code>Recovery.ShareOfCycle(2.3.us, 20.kHz)   // 4.6 %</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 1: period and frequency", Symbol = "x_s")]
    [RecordName("recovery.share-of-cycle")]
    public static Ratio ShareOfCycle(Duration t_s, Frequency f)
    {
        Guard.NotNegative(t_s);
        Guard.NotNegative(f);
        return Ratio.FromDecimalFractions(f * t_s);
    }
}
