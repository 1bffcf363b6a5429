using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>What a cable takes from a resistive load. Three figures that are easily confused, each under its own name.</summary>
public static partial class CableLoss
{
    private const string Divider = "Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., voltage divider";

    /// <summary>Cable over load, R_c/R_L: the figure that makers of cable and loudspeakers print as loss.</summary>
    /// <remarks>It is the power in the cable over the power in the load, and so a little more than the true share of the amplifier's power.</remarks>
    /// <param name="R_c">Cable, both conductors; 0 Ω or more.</param>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <returns>The loss as printed, resistance over resistance, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("D.A.S. Audio, Energy series manual, p. 21", Symbol = "p_n")]
    [RecordName("cable-loss.nominal")]
    public static Ratio Nominal(ElectricResistance R_c, ElectricResistance R_L)
    {
        Guard.NotNegative(R_c);
        Guard.Positive(R_L);
        return Ratio.FromDecimalFractions(R_c / R_L);
    }

    /// <summary>The share of the amplifier's power that heats the cable: R_c/(R_c + R_L).</summary>
    /// <param name="R_c">Cable, both conductors; 0 Ω or more.</param>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <returns>The share of the power, 0 to 1, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>CableLoss.Share(0.1.Ohm, 8.Ohm)   // 1.235 %</code></example>
    [Formula(Divider, Symbol = "p_c")]
    [RecordName("cable-loss.share")]
    public static Ratio Share(ElectricResistance R_c, ElectricResistance R_L)
    {
        Guard.NotNegative(R_c);
        Guard.Positive(R_L);
        return Ratio.FromDecimalFractions(R_c / (R_c + R_L));
    }

    /// <summary>What is left of the voltage at the load: R_L/(R_c + R_L).</summary>
    /// <param name="R_c">Cable, both conductors; 0 Ω or more.</param>
    /// <param name="R_L">Load; greater than 0 Ω.</param>
    /// <returns>The gain of the divider, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Divider, Symbol = "A_c")]
    [RecordName("cable-loss.level")]
    public static Gain Level(ElectricResistance R_c, ElectricResistance R_L)
    {
        Guard.NotNegative(R_c);
        Guard.Positive(R_L);
        return Gain.FromRatio(R_L / (R_c + R_L));
    }
}
