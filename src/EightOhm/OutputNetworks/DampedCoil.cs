using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.OutputNetworks;

/// <summary>The coil at the output with the resistor across it: what it costs in level and damping.</summary>
/// <remarks>Its impedance is nearly all reactance: it stands at a right angle to a resistive load. To add the magnitudes as if they were resistances gives a loss tens of times too high.</remarks>
public static partial class DampedCoil
{
    private const string Source = "C. K. Alexander & M. N. O. Sadiku, Fundamentals of Electric Circuits, 5th ed., ch. 9: impedances in parallel and the voltage divider, j·ω·L·R/(R + j·ω·L) in its parts";

    /// <summary>The resistive part of the coil with its resistor: R·x²/(1 + x²), with x = 2π·f·L/R.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="L">Inductance; greater than 0 H.</param>
    /// <param name="R">The resistor across it; greater than 0 Ω.</param>
    /// <returns>The resistance in series, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "R_s")]
    [RecordName("damped-coil.resistance")]
    public static ElectricResistance SeriesResistance(Frequency f, ElectricInductance L, ElectricResistance R)
    {
        Guard.NotNegative(f);
        Guard.Positive(L);
        Guard.Positive(R);
        var x = 2 * pi * f * L / R;
        return x * x / (1 + x * x) * R;
    }

    /// <summary>The reactance of the coil with its resistor: R·x/(1 + x²), with x = 2π·f·L/R.</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="L">Inductance; greater than 0 H.</param>
    /// <param name="R">The resistor across it; greater than 0 Ω.</param>
    /// <returns>The reactance in series, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "X_s")]
    [RecordName("damped-coil.reactance")]
    public static ElectricResistance SeriesReactance(Frequency f, ElectricInductance L, ElectricResistance R)
    {
        Guard.NotNegative(f);
        Guard.Positive(L);
        Guard.Positive(R);
        var x = 2 * pi * f * L / R;
        return x / (1 + x * x) * R;
    }

    /// <summary>What is left of the level at a resistive load: R_L/√((R_L + R_s)² + X_s²).</summary>
    /// <param name="f">Frequency; 0 Hz or more.</param>
    /// <param name="R_L">The load; greater than 0 Ω.</param>
    /// <param name="L">Inductance; greater than 0 H.</param>
    /// <param name="R">The resistor across it; greater than 0 Ω.</param>
    /// <returns>The gain of the divider, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DampedCoil.Level(20.kHz, 4.Ohm, 1.uH, 10.Ohm)   // 0.9991</code></example>
    [Formula(Source, Symbol = "A_L")]
    [RecordName("damped-coil.level")]
    public static Gain Level(Frequency f, ElectricResistance R_L, ElectricInductance L, ElectricResistance R)
    {
        Guard.Positive(R_L);
        var R_s = SeriesResistance(f, L, R);
        var X_s = SeriesReactance(f, L, R);
        return Gain.FromRatio(R_L / Sqrt((R_L + R_s) * (R_L + R_s) + X_s * X_s));
    }

    /// <summary>The damping factor that the coil alone leaves: R_L/√(R_s² + X_s²).</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_L">The load, nominal; greater than 0 Ω.</param>
    /// <param name="L">Inductance; greater than 0 H.</param>
    /// <param name="R">The resistor across it; greater than 0 Ω.</param>
    /// <returns>The damping factor, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DampedCoil.DampingFactor(20.kHz, 8.Ohm, 1.uH, 10.Ohm)   // 63.67</code></example>
    [Formula(Source + "; common practice: the load's nominal resistance over it", Symbol = "DF")]
    [RecordName("damped-coil.damping-factor")]
    public static double DampingFactor(Frequency f, ElectricResistance R_L, ElectricInductance L, ElectricResistance R)
    {
        Guard.Positive(f, hint: "At 0 Hz the ideal coil is no impedance at all: its wire's resistance decides.");
        Guard.Positive(R_L);
        var R_s = SeriesResistance(f, L, R);
        var X_s = SeriesReactance(f, L, R);
        return R_L / Sqrt(R_s * R_s + X_s * X_s);
    }
}
