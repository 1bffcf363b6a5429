using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>What a transformer's nameplate says of the resistance behind a rectifier.</summary>
/// <remarks>
/// Regulation is (no load − full load)/full load, with every winding carrying its rated current into resistors. Copper is taken to be
/// shared equally between primary and secondaries, as a transformer is wound for; leakage inductance is left out.
/// </remarks>
public static partial class SourceResistance
{
    private const string Source = "Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15 (regulation); derived: no load − full load = I·R at rated current";

    /// <summary>One winding alone on its transformer: reg·V²/S, the reflected primary included.</summary>
    /// <param name="V">Rated voltage, rms; greater than 0 V.</param>
    /// <param name="reg">Regulation; 0 or more.</param>
    /// <param name="S">Rating of the transformer; greater than 0 VA.</param>
    /// <returns>The resistance of the source, referred to the winding, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; I = S/V", Symbol = "R_s")]
    [RecordName("source-resistance.of-winding")]
    public static ElectricResistance OfWinding(ElectricPotential V, Ratio reg, ElectricApparentPower S)
    {
        Guard.Positive(V);
        Guard.NotNegative(reg);
        Guard.Positive(S);
        return reg.DecimalFractions * (V * V / S);
    }

    /// <summary>Behind either rail of a dual supply, both rails loaded alike: 2·reg·V²/S, the reflected primary included.</summary>
    /// <remarks>Each half is rated for I = S/(2·V); both conduct at once, so the primary's share counts for both currents.</remarks>
    /// <param name="V">Rated voltage of one half, rms; greater than 0 V.</param>
    /// <param name="reg">Regulation; 0 or more.</param>
    /// <param name="S">Rating of the whole transformer; greater than 0 VA.</param>
    /// <returns>The resistance behind either rail, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; I = S/(2·V) in each half", Symbol = "R_s")]
    [RecordName("source-resistance.of-rail")]
    public static ElectricResistance OfRail(ElectricPotential V, Ratio reg, ElectricApparentPower S)
    {
        Guard.Positive(V);
        Guard.NotNegative(reg);
        Guard.Positive(S);
        return 2 * reg.DecimalFractions * (V * V / S);
    }

    /// <summary>The copper of one half-winding alone: half of <see cref="OfRail"/>.</summary>
    /// <param name="R_s">What stands behind a rail, both loaded alike; greater than 0 Ω.</param>
    /// <returns>The resistance of one half-winding, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Formula("derived: equal copper loss in primary and secondaries, R_half·I² twice = R_shared·(2·I)²", Symbol = "R_half")]
    [RecordName("source-resistance.of-half-alone")]
    public static ElectricResistance OfHalfAlone(ElectricResistance R_s)
    {
        Guard.Positive(R_s);
        return R_s / 2;
    }

    /// <summary>The primary as both halves see it together, in their common path: a quarter of <see cref="OfRail"/>.</summary>
    /// <param name="R_s">What stands behind a rail, both loaded alike; greater than 0 Ω.</param>
    /// <returns>The resistance of the common path, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive.</exception>
    [Formula("derived: equal copper loss in primary and secondaries; R_half + 2·R_shared = R_s", Symbol = "R_shared")]
    [RecordName("source-resistance.shared")]
    public static ElectricResistance Shared(ElectricResistance R_s)
    {
        Guard.Positive(R_s);
        return R_s / 4;
    }
}
