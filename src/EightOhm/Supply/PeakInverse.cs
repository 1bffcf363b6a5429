using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>The highest reverse voltage on a diode of a rectifier with a reservoir (PIV), by the kind of rectifier.</summary>
/// <remarks>Worst without load at high mains: give that peak, <see cref="Transformer.HighestPeak"/>. Spikes of the mains come on top: a diode's V_RRM is chosen at twice this or more
/// (common practice, no source). The same winding asks a diode of a centre tap for twice what it asks one of a bridge.</remarks>
public static partial class PeakInverse
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3: peak inverse voltage";
    private const string Exchanged = "A diode cannot take more than the winding's peak.";

    /// <summary>Half-wave into a reservoir: 2·V_m − V_D. Without a reservoir it would be V_m.</summary>
    /// <param name="V_m">Peak of the winding's emf; greater than 0 V.</param>
    /// <param name="V_D">Drop of the diode at almost no current; from 0 V, which is cautious, to the peak.</param>
    /// <returns>The peak inverse voltage of one diode, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + ", the reservoir holding the peak", Symbol = "PIV")]
    [RecordName("peak-inverse.half-wave")]
    public static ElectricPotential HalfWave(ElectricPotential V_m, ElectricPotential V_D)
    {
        Guard.Positive(V_m);
        Guard.Between(V_D, default, V_m, hint: Exchanged);
        return 2 * V_m - V_D;
    }

    /// <summary>Full-wave by two diodes on a centre tap: 2·V_m − V_D, V_m of one half.</summary>
    /// <param name="V_m">Peak of one half's emf; greater than 0 V.</param>
    /// <param name="V_D">Drop of a diode; from 0 V to the peak.</param>
    /// <returns>The peak inverse voltage of one diode, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "PIV")]
    [RecordName("peak-inverse.centre-tap")]
    public static ElectricPotential CentreTap(ElectricPotential V_m, ElectricPotential V_D)
    {
        Guard.Positive(V_m);
        Guard.Between(V_D, default, V_m, hint: Exchanged);
        return 2 * V_m - V_D;
    }

    /// <summary>A bridge on one winding, one rail: V_m − V_D.</summary>
    /// <param name="V_m">Peak of the winding's emf; greater than 0 V.</param>
    /// <param name="V_D">Drop of one diode (not of both); from 0 V to the peak.</param>
    /// <returns>The peak inverse voltage of one diode, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "PIV")]
    [RecordName("peak-inverse.bridge")]
    public static ElectricPotential Bridge(ElectricPotential V_m, ElectricPotential V_D)
    {
        Guard.Positive(V_m);
        Guard.Between(V_D, default, V_m, hint: Exchanged);
        return V_m - V_D;
    }

    /// <summary>A bridge on a centre-tapped winding, two rails: 2·V_m − V_D, V_m of one half. It is not the bridge's V_m: the whole winding stands on it.</summary>
    /// <param name="V_m">Peak of one half's emf; greater than 0 V.</param>
    /// <param name="V_D">Drop of one diode; from 0 V to the peak.</param>
    /// <returns>The peak inverse voltage of one diode, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>PeakInverse.DualRail(50.V, 1.V)   // 99 V</code></example>
    [Formula(Source + ", one rail held by its reservoir, the other half at its own peak", Symbol = "PIV")]
    [RecordName("peak-inverse.dual-rail")]
    public static ElectricPotential DualRail(ElectricPotential V_m, ElectricPotential V_D)
    {
        Guard.Positive(V_m);
        Guard.Between(V_D, default, V_m, hint: Exchanged);
        return 2 * V_m - V_D;
    }
}
