using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Ratings;

/// <summary>Levels in decibels against a fixed reference: dBV (1 V), dBu (√0.6 V), dBW (1 W), dBm (1 mW). Voltages are rms, powers average.</summary>
/// <remarks>A level is a plain number of decibels, named for its reference; a ratio of two voltages is a <see cref="Gain"/>.</remarks>
public static partial class Levels
{
    private const string Book = "J. Fiore, Op Amps and Linear Integrated Circuits, ch. 1";
    private const string Milliwatt = "common practice, no source: 0 dBu is the voltage of 1 mW in 600 Ω";

    /// <summary>A voltage in dBV: 20·log₁₀(V/1 V).</summary>
    /// <param name="V_rms">Voltage, rms; greater than 0 V.</param>
    /// <returns>The level in dBV, a plain number of decibels.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    /// <example><code>Levels.InDbV(2.V)   // 6.021</code></example>
    [Formula(Book, Symbol = "L_dBV")]
    [RecordName("levels.in-db-v")]
    public static double InDbV(ElectricPotential V_rms)
    {
        Guard.Positive(V_rms, hint: "Silence has no level in decibels.");
        return 20 * Log10(V_rms / 1.V);
    }

    /// <summary>The voltage, rms, of a level in dBV: 1 V·10^(L/20).</summary>
    /// <param name="L_dBV">Level in dBV; from −400 to 400.</param>
    /// <returns>The voltage, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is out of range.</exception>
    [Formula(Book, Symbol = "V_rms")]
    [RecordName("levels.voltage-of-db-v")]
    public static ElectricPotential VoltageOfDbV(double L_dBV)
    {
        Guard.Between(L_dBV, -400, 400);
        return 1.V * PowerOfTen(L_dBV / 20);
    }

    /// <summary>The reference of dBu, rms: √(1 mW·600 Ω) = √0.6 V, 0.7746 V (not 0.775 V).</summary>
    [Formula(Milliwatt, Symbol = "V_0")]
    [RecordName("levels.db-u-reference")]
    public static ElectricPotential DbUReference => Sqrt(1.mW * 600.Ohm);

    /// <summary>A voltage in dBu: 20·log₁₀(V/√0.6 V), whatever the impedance.</summary>
    /// <param name="V_rms">Voltage, rms; greater than 0 V.</param>
    /// <returns>The level in dBu, a plain number of decibels.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    [Formula(Milliwatt, Symbol = "L_dBu")]
    [RecordName("levels.in-db-u")]
    public static double InDbU(ElectricPotential V_rms)
    {
        Guard.Positive(V_rms, hint: "Silence has no level in decibels.");
        return 20 * Log10(V_rms / DbUReference);
    }

    /// <summary>The voltage, rms, of a level in dBu: √0.6 V·10^(L/20).</summary>
    /// <param name="L_dBu">Level in dBu; from −400 to 400.</param>
    /// <returns>The voltage, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is out of range.</exception>
    /// <example><code>Levels.VoltageOfDbU(4)   // 1.228 V</code></example>
    [Formula(Milliwatt, Symbol = "V_rms")]
    [RecordName("levels.voltage-of-db-u")]
    public static ElectricPotential VoltageOfDbU(double L_dBu)
    {
        Guard.Between(L_dBu, -400, 400);
        return DbUReference * PowerOfTen(L_dBu / 20);
    }

    /// <summary>A power in dBW: 10·log₁₀(P/1 W).</summary>
    /// <param name="P">Average power; greater than 0 W.</param>
    /// <returns>The level in dBW, a plain number of decibels.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive.</exception>
    /// <example><code>Levels.InDbW(100.W)   // 20</code></example>
    [Formula(Book, Symbol = "L_dBW")]
    [RecordName("levels.in-db-w")]
    public static double InDbW(Power P)
    {
        Guard.Positive(P, hint: "No power has no level in decibels.");
        return 10 * Log10((double)(P / 1.W));
    }

    /// <summary>The power of a level in dBW: 1 W·10^(L/10).</summary>
    /// <param name="L_dBW">Level in dBW; from −120 to 120.</param>
    /// <returns>The power, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is out of range.</exception>
    [Formula(Book, Symbol = "P")]
    [RecordName("levels.power-of-db-w")]
    public static Power PowerOfDbW(double L_dBW)
    {
        Guard.Between(L_dBW, -120, 120);
        return 1.W * PowerOfTen(L_dBW / 10);
    }

    /// <summary>A power in dBm: 10·log₁₀(P/1 mW).</summary>
    /// <param name="P">Average power; greater than 0 W.</param>
    /// <returns>The level in dBm, a plain number of decibels.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is not positive.</exception>
    [Formula(Book, Symbol = "L_dBm")]
    [RecordName("levels.in-db-m")]
    public static double InDbM(Power P)
    {
        Guard.Positive(P, hint: "No power has no level in decibels.");
        return 10 * Log10((double)(P / 1.mW));
    }

    /// <summary>The power of a level in dBm: 1 mW·10^(L/10).</summary>
    /// <param name="L_dBm">Level in dBm; from −90 to 150.</param>
    /// <returns>The power, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is out of range.</exception>
    [Formula(Book, Symbol = "P")]
    [RecordName("levels.power-of-db-m")]
    public static Power PowerOfDbM(double L_dBm)
    {
        Guard.Between(L_dBm, -90, 150);
        return 1.mW * PowerOfTen(L_dBm / 10);
    }
}
