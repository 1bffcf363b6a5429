using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Makers' rules for the rms current of a winding that feeds a reservoir. They differ, and both are low for a stiff supply.</summary>
/// <remarks>
/// For one winding and a bridge, or each half of a dual supply, both halves of which conduct in every half-cycle. The makers' factor for
/// a centre-tapped winding (1.0 or 0.8) is for a single rail, where each half conducts every other half-cycle: not for a dual supply.
/// </remarks>
public static partial class WindingGuides
{
    private const string Hammond = "Hammond Manufacturing, Design Guide for Rectifier Use";
    private const string Petra = "Petra, toroidal transformers, application notes";

    /// <summary>Bridge into a reservoir, one maker: I_dc/0.62, which is 1.61·I_dc.</summary>
    /// <param name="I_dc">Load current; 0 A or more.</param>
    /// <returns>The current of the winding, rms, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    /// <example><code>WindingGuides.BridgeLow(3.A)   // 4.839 A</code></example>
    [Formula(Hammond, Symbol = "I_ac")]
    [RecordName("winding-guides.bridge-low")]
    public static ElectricCurrent BridgeLow(ElectricCurrent I_dc)
    {
        Guard.NotNegative(I_dc);
        return I_dc / 0.62;
    }

    /// <summary>Bridge into a reservoir, another maker: 1.8·I_dc.</summary>
    /// <param name="I_dc">Load current; 0 A or more.</param>
    /// <returns>The current of the winding, rms, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Formula(Petra, Symbol = "I_ac")]
    [RecordName("winding-guides.bridge-high")]
    public static ElectricCurrent BridgeHigh(ElectricCurrent I_dc)
    {
        Guard.NotNegative(I_dc);
        return 1.8 * I_dc;
    }

    /// <summary>Bridge into a reservoir, the voltage of the winding: 0.8·(V_dc + 2 V).</summary>
    /// <param name="V_dc">Mean of the rail; greater than 0 V.</param>
    /// <returns>The voltage of the winding, rms, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Formula(Petra, Symbol = "V_ac")]
    [RecordName("winding-guides.bridge-voltage")]
    public static ElectricPotential BridgeVoltage(ElectricPotential V_dc)
    {
        Guard.Positive(V_dc);
        return 0.8 * (V_dc + 2.V);
    }

    /// <summary>Bridge into a reservoir, the transformer: 1.4·(P + 2 V·I_dc).</summary>
    /// <param name="P">What the rail delivers; 0 W or more.</param>
    /// <param name="I_dc">Load current; 0 A or more.</param>
    /// <returns>The rating of the transformer, in VA.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula(Petra, Symbol = "S")]
    [RecordName("winding-guides.bridge-rating")]
    public static ElectricApparentPower BridgeRating(Power P, ElectricCurrent I_dc)
    {
        Guard.NotNegative(P);
        Guard.NotNegative(I_dc);
        return ElectricApparentPower.FromVoltamperes(1.4 * ((double)P.Watts + 2 * I_dc.Amperes));
    }
}
