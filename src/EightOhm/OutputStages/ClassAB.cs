using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Heat of a class-AB stage: as class B, with both sides' currents from the <see cref="SideCurrents"/> law.</summary>
/// <remarks>It is not class B plus the idle heat: the current that one side still carries as it lets go soon vanishes, and a stage that idles at 28.6 W
/// is at its worst 1 W hotter than without bias.</remarks>
public static partial class ClassAB
{
    /// <summary>The heat of all 2·n transistors together at a level of a sine: V times the mean of both sides' currents, less the load's and the emitter resistors' power.</summary>
    /// <param name="V">One rail (not rail to rail) at this level; greater than 0 V.</param>
    /// <param name="V_p">Peak voltage at the load; from 0 V (idle) to full swing.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="R_E">Emitter resistor of one transistor, whose heat is not in the result; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <param name="I_q">Idle current of one pair; greater than 0 A.</param>
    /// <param name="r_int">The transistor's own series resistance, whose heat is the transistor's; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage at the junction temperature; greater than 0 V.</param>
    /// <returns>The power dissipation of all 2·n transistors together, average, in W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: supply less load; the currents of both sides by the loop of the bias, averaged by quadrature", Symbol = "P_D")]
    [RecordName("class-ab.heat")]
    public static Power Heat(ElectricPotential V, ElectricPotential V_p, ElectricResistance Z, Angle phi, ElectricResistance R_E, int n, ElectricCurrent I_q, ElectricResistance r_int, ElectricPotential V_T)
    {
        Guard.Between(V_p, default, ClassB.FullSwing(V, Z, phi, R_E, n) * (1 + 1e-12), hint: "The output, its emitter resistors' drop included, cannot swing past the rail.");
        Guard.Positive(I_q);
        Guard.NotNegative(r_int);
        Guard.Positive(V_T);
        var I_p = V_p / Z;
        var I_Q = n * I_q;
        var R = (R_E + r_int) / n;
        var I_both = MeanOfBoth(I_p, I_Q, R, V_T);
        var I_sq = MeanOfSquares(I_p, I_Q, R, V_T);
        var P_L = ClassB.LoadPower(V_p, Z, phi);
        return V * I_both - P_L - R_E / n * I_sq;
    }

    /// <summary>The mean of both sides' currents added, over a sine: each rail delivers half of it.</summary>
    /// <param name="I_p">The load's peak current; 0 A or more.</param>
    /// <param name="I_Q">Idle current of a side, all its transistors together; greater than 0 A.</param>
    /// <param name="R">Emitter resistance of a side: (R_E + r_int)/n; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The law was not solved; the message gives the last state.</exception>
    [RecordName("class-ab.mean-of-both")]
    [Worked("the mean over a quarter of the sine of both sides' currents, by Gauss-Legendre quadrature of the SideCurrents law")]
    public static ElectricCurrent MeanOfBoth(ElectricCurrent I_p, ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T) =>
        ElectricCurrent.FromAmperes(Law(I_Q, R, V_T).OverSine(Guard.NotNegative(I_p).Amperes).Sum);

    /// <summary>The mean of both sides' squared currents added, over a sine: what the emitter resistors heat with.</summary>
    /// <param name="I_p">The load's peak current; 0 A or more.</param>
    /// <param name="I_Q">Idle current of a side, all its transistors together; greater than 0 A.</param>
    /// <param name="R">Emitter resistance of a side: (R_E + r_int)/n; 0 Ω or more.</param>
    /// <param name="V_T">Thermal voltage; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The law was not solved; the message gives the last state.</exception>
    [RecordName("class-ab.mean-of-squares")]
    [Worked("the mean over a quarter of the sine of both sides' squared currents, by Gauss-Legendre quadrature of the SideCurrents law")]
    public static SquaredCurrent MeanOfSquares(ElectricCurrent I_p, ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T) =>
        new(Law(I_Q, R, V_T).OverSine(Guard.NotNegative(I_p).Amperes).Squares);

    private static SideCurrentLaw Law(ElectricCurrent I_Q, ElectricResistance R, ElectricPotential V_T)
    {
        return new SideCurrentLaw(Guard.Positive(I_Q).Amperes, Guard.NotNegative(R).Ohms, Guard.Positive(V_T).Volts);
    }
}
