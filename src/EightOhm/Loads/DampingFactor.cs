using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>The load's nominal resistance over what is in front of it.</summary>
/// <remarks>A figure of sheets, at one frequency. What it does to a loudspeaker is <see cref="DriverNetwork.ElectricalQ"/>.</remarks>
public static partial class DampingFactor
{
    private const string Source = "common practice, no source: the load's nominal resistance over the source's";

    /// <summary>Damping factor of an amplifier at its terminals: R_L/R_o.</summary>
    /// <param name="R_L">Load, nominal; greater than 0 Ω.</param>
    /// <param name="R_o">Output resistance; greater than 0 Ω.</param>
    /// <returns>The damping factor, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>DampingFactor.Of(8.Ohm, 0.04.Ohm)   // 200</code></example>
    [Formula(Source, Symbol = "DF")]
    [RecordName("damping-factor.of")]
    public static double Of(ElectricResistance R_L, ElectricResistance R_o)
    {
        Guard.Positive(R_L);
        Guard.Positive(R_o, hint: "No output resistance at all has no damping factor; give what the sheet or the loop gain leaves.");
        return R_L / R_o;
    }

    /// <summary>Damping factor at the loudspeaker, the cable included: R_L/(R_o + R_c).</summary>
    /// <param name="R_L">Load, nominal; greater than 0 Ω.</param>
    /// <param name="R_o">Output resistance of the amplifier; 0 Ω or more.</param>
    /// <param name="R_c">Cable, both conductors; 0 Ω or more, and not both 0 Ω.</param>
    /// <returns>The damping factor, a plain number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>DampingFactor.WithCable(8.Ohm, 0.04.Ohm, 0.06.Ohm)   // 80</code></example>
    [Formula(Source + ", cable included", Symbol = "DF_sys")]
    [RecordName("damping-factor.with-cable")]
    public static double WithCable(ElectricResistance R_L, ElectricResistance R_o, ElectricResistance R_c)
    {
        Guard.Positive(R_L);
        Guard.NotNegative(R_o);
        Guard.NotNegative(R_c);
        Guard.Positive(R_o + R_c);
        return R_L / (R_o + R_c);
    }

    /// <summary>The output resistance that a damping factor claims: R_L/DF.</summary>
    /// <param name="R_L">The load it is stated for; greater than 0 Ω.</param>
    /// <param name="DF">Damping factor; greater than 0.</param>
    /// <returns>The output resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula(Source, Symbol = "R_o")]
    [RecordName("damping-factor.output-resistance")]
    public static ElectricResistance OutputResistance(ElectricResistance R_L, double DF)
    {
        Guard.Positive(R_L);
        Guard.Positive(DF);
        return R_L / DF;
    }
}
