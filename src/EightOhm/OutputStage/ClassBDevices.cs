using EightOhm.Quantities;
using EightOhm.Working;
using UnitsNet;
using static EightOhm.Quantities.Constants;

namespace EightOhm.OutputStage;

/// <summary>Worst heat of the transistors alone, their emitter resistors taking a share: class B, a resistive load.</summary>
/// <remarks>Pairs in parallel share the current equally; each transistor has its own emitter resistor. Without the bias's own heat.</remarks>
public static partial class ClassBDevices
{
    private const string Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14, with R_E in series with the load: 2·V·I_p/π − I_p²·(R + R_E/n)/2 maximised over I_p";

    /// <summary>The worst heat of all transistors together over all sine levels: 2·V²/(π²·(R + R_E/n)).</summary>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "P_D")]
    public static Power Worst(ElectricPotential V, ElectricResistance R, ElectricResistance R_E, int n)
    {
        Guard.Positive(V);
        Guard.Positive(R);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        return 2 / (pi * pi) * (V * V / (R + R_E / n));
    }

    /// <summary>The worst heat of one transistor: that of all, over 2·n.</summary>
    /// <param name="V">One rail (not rail to rail), at high mains if that is what counts; greater than 0 V.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; 2·n transistors", Symbol = "P_one")]
    public static Power WorstOfOne(ElectricPotential V, ElectricResistance R, ElectricResistance R_E, int n)
    {
        Guard.Positive(n);
        return Worst(V, R, R_E, n) / (2 * n);
    }

    /// <summary>The load's peak voltage at which the transistors are hottest: 2/π of the rail, less the drop of the emitter resistors.</summary>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source, Symbol = "V_p")]
    public static ElectricPotential WorstLevel(ElectricPotential V, ElectricResistance R, ElectricResistance R_E, int n)
    {
        Guard.Positive(V);
        Guard.Positive(R);
        Guard.NotNegative(R_E);
        Guard.Positive(n);
        return 2 / pi * V * (R / (R + R_E / n));
    }

    /// <summary>Worst heat when the mains is high: it goes with the square of the rail, P·(1 + x)².</summary>
    /// <param name="P">Worst heat at nominal mains; 0 W or more.</param>
    /// <param name="x">How far the mains may be above nominal, such as 10.percent; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is negative.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 14: the worst heat goes with V²", Symbol = "P_hi")]
    public static Power AtHighMains(Power P, Ratio x)
    {
        Guard.NotNegative(P);
        Guard.NotNegative(x, hint: "Low mains is cooler; give the tolerance upwards, for example 10.percent.");
        var m = 1 + x.DecimalFractions;
        return m * m * P;
    }
}
