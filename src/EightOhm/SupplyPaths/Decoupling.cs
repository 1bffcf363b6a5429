using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.SupplyPaths;

/// <summary>A capacitor at the end of a rail's wire: above a frequency it is the rail, and where wire and capacitor ring it must be damped.</summary>
public static partial class Decoupling
{
    private const string Source = "Bird, Electrical Circuit Theory and Technology, ch. 28 and 29: resonance of an inductance and a capacitance";

    /// <summary>Where the wire's inductance and the capacitor ring: 1/(2π·√(L·C)).</summary>
    /// <param name="L">Inductance of the wire; greater than 0 H.</param>
    /// <param name="C">The capacitor at its end; greater than 0 F.</param>
    /// <returns>The resonance, in Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>Decoupling.Resonance(0.5.uH, 220.uF)   // 15.17 kHz</code></example>
    [Formula(Source, Symbol = "f_0")]
    [RecordName("decoupling.resonance")]
    public static Frequency Resonance(ElectricInductance L, ElectricCapacitance C)
    {
        Guard.Positive(L);
        Guard.Positive(C);
        return 1 / (2 * pi * Sqrt(C * L));
    }

    /// <summary>The resistance that it takes to damp it: √(L/C), in series with the capacitor (its ESR counts) or with the wire.</summary>
    /// <param name="L">Inductance of the wire; greater than 0 H.</param>
    /// <param name="C">The capacitor at its end; greater than 0 F.</param>
    /// <returns>For a Q of about one; twice it is without overshoot, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    /// <example><code>Decoupling.Damping(0.5.uH, 220.uF)   // 47.67 mΩ</code></example>
    [Formula(Source, Symbol = "R_d")]
    [RecordName("decoupling.damping")]
    public static ElectricResistance Damping(ElectricInductance L, ElectricCapacitance C)
    {
        Guard.Positive(L);
        Guard.Positive(C);
        return Sqrt(L / C);
    }

    /// <summary>What the circuit at the wire's end sees: the wire, with R and L, beside the capacitor with its ESR; the magnitude.</summary>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R">Resistance of the wire and what feeds it; 0 Ω or more.</param>
    /// <param name="L">Inductance of the wire; 0 H or more.</param>
    /// <param name="C">The capacitor; greater than 0 F.</param>
    /// <param name="ESR">Its resistance; 0 Ω or more.</param>
    /// <returns>The magnitude of the rail's impedance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or wire and capacitor ring without any resistance at that very frequency.</exception>
    [Worked("(R + jωL) beside (ESR + 1/jωC), in complex numbers", Source = Source)]
    [RecordName("decoupling.impedance")]
    public static ElectricResistance Impedance(Frequency f, ElectricResistance R, ElectricInductance L, ElectricCapacitance C, ElectricResistance ESR)
    {
        double w = 2 * Math.PI * Guard.Positive(f).Hertz;
        Complex wire = new(Guard.NotNegative(R).Ohms, w * Guard.NotNegative(L).Henries), capacitor = new(Guard.NotNegative(ESR).Ohms, -1 / w / Guard.Positive(C).Farads);
        var both = wire + capacitor;
        Guard.Positive(Complex.Abs(both), "what wire and capacitor have together", "They ring without any resistance at that frequency: give the wire or the capacitor its resistance.");
        return ElectricResistance.FromOhms(Complex.Abs(wire / both * capacitor));
    }

    /// <summary>The capacitor that holds a rail through a step of current until the wire follows: L/(dV/I)².</summary>
    /// <remarks>An undamped wire and capacitor swing by I·√(L/C) at a step; damping leaves less.</remarks>
    /// <param name="I">The step; greater than 0 A.</param>
    /// <param name="dV">What the rail may move; greater than 0 V.</param>
    /// <param name="L">Inductance of the wire; greater than 0 H.</param>
    /// <returns>The least capacitor, in F.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula(Source + "; its step response, I·√(L/C)", Symbol = "C")]
    [RecordName("decoupling.capacitor-for-step")]
    public static ElectricCapacitance CapacitorForStep(ElectricCurrent I, ElectricPotential dV, ElectricInductance L)
    {
        Guard.Positive(I);
        Guard.Positive(dV);
        Guard.Positive(L);
        Guard.Positive(dV / I, "dV over I");
        var Z = dV / I;
        return L / Z / Z;
    }
}
