using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SupplyPaths;

/// <summary>How much of a rail's disturbance reaches the output, by the path that it takes; output-referred: disturbance over what is left at the output.</summary>
/// <remarks>A rejection referred to the input is larger by the closed-loop gain (<see cref="EightOhm.Ratings.Rejection"/>). Rejections of one path in a row multiply; paths beside each other add their leaks.</remarks>
public static partial class RailRejection
{
    /// <summary>Of the rail that the second stage with its Miller capacitor is referred to: |1 + T| = √(1 + (f_x/f)²), output-referred.</summary>
    /// <remarks>The stage's integrator holds its output to that rail: the rail appears whole at its output, and only the loop divides it. A loop with one pole far below, T = f_x/(j·f).</remarks>
    /// <param name="f">Frequency of the disturbance, a harmonic's own; greater than 0 Hz.</param>
    /// <param name="f_x">The frequency at which the loop gain is one; greater than 0 Hz.</param>
    /// <returns>The output-referred rejection, a ratio above one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>RailRejection.OfMillerRail(100.Hz, 1.11.MHz)   // 11100</code></example>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 8: a disturbance after the input stage is divided by 1 + T, here T = −j·f_x/f", Symbol = "R_out")]
    [RecordName("rail-rejection.of-miller-rail")]
    public static Gain OfMillerRail(Frequency f, Frequency f_x)
    {
        Guard.Positive(f);
        Guard.Positive(f_x);
        var T = f_x / f;
        return Gain.FromRatio(Sqrt(1 + T * T));
    }

    /// <summary>Of a rail that leaks a current past an output resistance into the compensation node: R_o/((r_e + R_deg)·G), output-referred.</summary>
    /// <remarks>The pair must undo the current, so an input of I·(r_e + R_deg) appears, times the gain: no loop gain reduces it. For the current source of the second stage, or the mirror's collector.</remarks>
    /// <param name="R_o">What the rail's ripple sees towards the node; greater than 0 Ω.</param>
    /// <param name="r_e">Emitter resistance of one device of the pair; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>The output-referred rejection, a ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7 and 8: a current at the pair's output over its transconductance has the signal's gain", Symbol = "R_out")]
    [RecordName("rail-rejection.of-leak")]
    public static Gain OfLeak(ElectricResistance R_o, ElectricResistance r_e, ElectricResistance R_deg, Gain G)
    {
        Guard.Positive(R_o);
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        Guard.Positive(G);
        return Gain.FromRatio(R_o / (r_e + R_deg) / G.Ratio);
    }

    /// <summary>What a ripple of the tail current leaves at the output of an unbalanced pair: I_r·(s + m/2)·(r_e + R_deg)·G.</summary>
    /// <param name="I_r">Ripple of the tail current; 0 A or more.</param>
    /// <param name="s">Share of it that the pair divides unequally: δ·r_e/(r_e + R_deg·(1 − δ²)); 0 to 1.</param>
    /// <param name="m">Error of the mirror, as a magnitude; 0 to 1.</param>
    /// <param name="r_e">Emitter resistance of one device of the pair; greater than 0 Ω.</param>
    /// <param name="R_deg">Resistor in each emitter; 0 Ω or more.</param>
    /// <param name="G">Closed-loop gain; greater than 0.</param>
    /// <returns>At the output, in the measure of I_r, in V.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 7: an unbalanced pair divides its tail current unequally", Symbol = "V_left")]
    [RecordName("rail-rejection.left-by-tail")]
    public static ElectricPotential LeftByTail(ElectricCurrent I_r, Ratio s, Ratio m, ElectricResistance r_e, ElectricResistance R_deg, Gain G)
    {
        Guard.NotNegative(I_r);
        Guard.Between(s.DecimalFractions, 0, 1, nameof(s));
        Guard.Between(m.DecimalFractions, 0, 1, nameof(m));
        Guard.Positive(r_e);
        Guard.NotNegative(R_deg);
        Guard.Positive(G);
        return G * (I_r * (r_e + R_deg) * (s + m / 2).DecimalFractions);
    }

    /// <summary>A rail's disturbance at the output over the output's peak: V_h/(R_out·V_p).</summary>
    /// <param name="V_h">The disturbance on the rail, peak; 0 V or more.</param>
    /// <param name="R_out">Output-referred rejection at its frequency; greater than 0.</param>
    /// <param name="V_p">Peak of the output; greater than 0 V.</param>
    /// <returns>The harmonic over the fundamental, as a fraction.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("definition of a harmonic's share", Symbol = "H")]
    [RecordName("rail-rejection.share-of-output")]
    public static Ratio ShareOfOutput(ElectricPotential V_h, Gain R_out, ElectricPotential V_p)
    {
        Guard.NotNegative(V_h);
        Guard.Positive(R_out);
        Guard.Positive(V_p);
        return Ratio.FromDecimalFractions(V_h / V_p / R_out.Ratio);
    }
}
