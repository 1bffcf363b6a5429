using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>What a mains transformer's nameplate says, and what it means off full load.</summary>
/// <remarks>Nameplate volts are at full load. The core, an electrostatic screen where there is one, and the chassis belong to protective earth by a
/// connection that is made for nothing else; local codes say how, and licensed practice does it.</remarks>
public static partial class Transformer
{
    private const string Regulated = "R. L. Boylestad & L. Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15: regulation over the full-load voltage";

    /// <summary>Regulation: (V_NL − V_FL)/V_FL.</summary>
    /// <remarks>Over the full-load voltage. A maker that divides by the no-load voltage prints a smaller figure.</remarks>
    /// <param name="V_NL">Voltage without load; at least V_FL.</param>
    /// <param name="V_FL">Voltage at full load; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Regulated, Symbol = "r_T")]
    [RecordName("transformer.regulation")]
    public static Ratio Regulation(ElectricPotential V_NL, ElectricPotential V_FL)
    {
        Guard.InReach(V_NL);
        Guard.Positive(V_FL);
        Guard.Between(V_FL, default, V_NL, hint: "A transformer gives more without load; were the two exchanged?");
        return Ratio.FromDecimalFractions((V_NL - V_FL) / V_FL);
    }

    /// <summary>The voltage without load: V_FL·(1 + r_T).</summary>
    /// <param name="V_FL">Nameplate voltage, at full load, rms; greater than 0 V.</param>
    /// <param name="r_T">Regulation, such as 6.percent; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Regulated, Symbol = "V_NL")]
    [RecordName("transformer.no-load-voltage")]
    public static ElectricPotential NoLoadVoltage(ElectricPotential V_FL, Ratio r_T)
    {
        Guard.Positive(V_FL);
        Guard.NotNegative(r_T);
        return (1 + r_T.DecimalFractions) * V_FL;
    }

    /// <summary>The rail without load: √2·V_FL·(1 + r_T)·(1 + x) − V_D.</summary>
    /// <remarks>A reservoir without load charges to the peak of the winding; the diode then carries little and drops less than when the amplifier plays. A flat-topped
    /// mains gives less, a light load with spikes more.</remarks>
    /// <param name="V_FL">Nameplate voltage of one half of the winding, at full load, rms; greater than 0 V.</param>
    /// <param name="r_T">Regulation; 0 or more.</param>
    /// <param name="x">How far the mains is from nominal: 10.percent above, (−10).percent below; above −100 %.</param>
    /// <param name="V_D">Drop of the diode at almost no current; 0 V or more, below the peak of the winding.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [RecordName("transformer.no-load-rail")]
    [Formula(Regulated + "; peak of a sine", Symbol = "V_0")]
    public static ElectricPotential NoLoadRail(ElectricPotential V_FL, Ratio r_T, Ratio x, ElectricPotential V_D)
    {
        Guard.Positive(1 + x.DecimalFractions, nameof(x), "Write 10.percent for a tenth above nominal, (−10).percent for a tenth below.");
        Guard.NotNegative(V_D);
        var V_NL = NoLoadVoltage(V_FL, r_T);
        return Sqrt(2) * (1 + x.DecimalFractions) * V_NL - V_D;
    }

    /// <summary>The highest peak of one half's emf: √2·V_FL·(1 + r_T)·(1 + x), what the diodes and reservoirs see without load.</summary>
    /// <param name="V_FL">Nameplate voltage of one half of the winding, at full load, rms; greater than 0 V.</param>
    /// <param name="r_T">Regulation; 0 or more.</param>
    /// <param name="x">How far the mains may be above nominal, such as 10.percent; above −100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [RecordName("transformer.highest-peak")]
    [Formula(Regulated + "; peak of a sine", Symbol = "V_m")]
    public static ElectricPotential HighestPeak(ElectricPotential V_FL, Ratio r_T, Ratio x)
    {
        Guard.Positive(1 + x.DecimalFractions, nameof(x), "Write 10.percent for a tenth above nominal, (−10).percent for a tenth below.");
        var V_NL = NoLoadVoltage(V_FL, r_T);
        return Sqrt(2) * (1 + x.DecimalFractions) * V_NL;
    }

    /// <summary>The rail that a part must bear for an amplifier of a peak and its own drop: (V_p + V_od)·(1 + r_T)·(1 + x).</summary>
    /// <remarks>An amplifier IC maker's estimate, one rail. It takes all of the regulation as sag and ignores ripple.</remarks>
    /// <param name="V_p">Peak output voltage (not rms); 0 V or more.</param>
    /// <param name="V_od">What the amplifier drops at that peak; 0 V or more.</param>
    /// <param name="r_T">Regulation; 0 or more.</param>
    /// <param name="x">How far the mains may be above nominal; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("National Semiconductor, LM3876 datasheet, eq. 7", Symbol = "V_max")]
    [RecordName("transformer.greatest-rail")]
    public static ElectricPotential GreatestRail(ElectricPotential V_p, ElectricPotential V_od, Ratio r_T, Ratio x)
    {
        Guard.NotNegative(V_p);
        Guard.NotNegative(V_od);
        Guard.NotNegative(r_T);
        Guard.NotNegative(x);
        return (1 + r_T.DecimalFractions) * (1 + x.DecimalFractions) * (V_p + V_od);
    }

    /// <summary>The rms current of the primary: S/V_m, losses and magnetising current left out.</summary>
    /// <param name="S">What the secondary delivers, apparent: its rms current times its rms voltage; 0 VA or more.</param>
    /// <param name="V_m">Mains, rms; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("ideal transformer: the same volt-amperes on both sides", Symbol = "I_m")]
    [RecordName("transformer.primary-current")]
    public static ElectricCurrent PrimaryCurrent(ElectricApparentPower S, ElectricPotential V_m)
    {
        Guard.NotNegative(S);
        Guard.Positive(V_m);
        return S / V_m;
    }
}
