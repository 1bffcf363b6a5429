using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>First estimates around a rail: the largest it may reach, and what an RC section after the reservoir leaves.</summary>
public static partial class RailEstimates
{
    /// <summary>The largest rail, unloaded and at high mains: (V_p + V_od)·(1 + reg)·(1 + x).</summary>
    /// <param name="V_p">Peak output voltage; greater than 0 V.</param>
    /// <param name="V_od">What the output stage loses of the rail at that peak; 0 V or more.</param>
    /// <param name="reg">Regulation of the supply, such as 15.percent; 0 or more.</param>
    /// <param name="x">How far the mains may be above nominal, such as 10.percent; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("National Semiconductor, LM3876 datasheet, application section, eq. 7", Symbol = "V_max")]
    public static ElectricPotential LargestRail(ElectricPotential V_p, ElectricPotential V_od, Ratio reg, Ratio x)
    {
        Guard.Positive(V_p);
        Guard.NotNegative(V_od);
        Guard.NotNegative(reg);
        Guard.NotNegative(x);
        return (V_p + V_od) * (1 + reg.DecimalFractions) * (1 + x.DecimalFractions);
    }

    /// <summary>Dc after an RC section: V_dc·R_L/(R + R_L).</summary>
    /// <param name="V_dc">Dc before it; greater than 0 V.</param>
    /// <param name="R">The section's resistor; 0 Ω or more.</param>
    /// <param name="R_L">What the section feeds; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15: RC filter", Symbol = "V_dc2")]
    public static ElectricPotential AfterRc(ElectricPotential V_dc, ElectricResistance R, ElectricResistance R_L)
    {
        Guard.Positive(V_dc);
        Guard.NotNegative(R);
        Guard.Positive(R_L);
        return V_dc * (R_L / (R + R_L));
    }

    /// <summary>Ripple after an RC section, where R is far above the capacitor's reactance: V_r·X_C/√(R² + X_C²), X_C at the ripple's frequency 2·f.</summary>
    /// <param name="V_r">Ripple before it; 0 V or more.</param>
    /// <param name="R">The section's resistor; greater than 0 Ω.</param>
    /// <param name="C">The section's capacitor; greater than 0 F.</param>
    /// <param name="f">Mains frequency, full-wave; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 15: RC filter", Symbol = "V_r2")]
    public static ElectricPotential RippleAfterRc(ElectricPotential V_r, ElectricResistance R, ElectricCapacitance C, Frequency f)
    {
        Guard.NotNegative(V_r);
        Guard.Positive(R);
        Guard.Positive(C);
        Guard.Positive(f);
        var X_C = 1 / (4 * pi * (C * f));
        return V_r * (X_C / Sqrt(R * R + X_C * X_C));
    }
}
