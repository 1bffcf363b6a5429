using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A load that is a network of resistance, inductance and at most one resonance: it has an impulse response, and so a worst programme current.</summary>
public abstract class NetworkLoad : Load
{
    private protected NetworkLoad(SeriesNetwork network) => Network = network;

    internal SeriesNetwork Network { get; }

    /// <summary>∫|y(t)|dt, y being the admittance as an impulse response: current per volt of a signal that is always at its bound.</summary>
    /// <remarks>From the poles and residues of the admittance, between the zeros of y; good to 1 in 10⁷. Without series inductance y begins with an
    /// impulse of 1/R, which is in the area.</remarks>
    [Symbol("G_abs")]
    public ElectricConductance AbsoluteArea => ImpulseArea.PerVolt(Network).S;

    /// <summary>The greatest current that any signal of bounded voltage drives, in either direction.</summary>
    /// <param name="V_max">The greatest voltage of either sign; 0 V or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is negative.</exception>
    [Worked("the bound of the voltage times ∫|y(t)|dt, y the admittance as an impulse response", Source = "A. V. Oppenheim & A. S. Willsky, Signals and Systems, 2nd ed., sec. 2.3 (bounded input, bounded output)")]
    public ElectricCurrent WorstProgrammeCurrent(ElectricPotential V_max) => OutputCurrent.WorstProgramme(V_max, AbsoluteArea);

    /// <summary>The current after a step of the voltage from 0 V, with nothing stored before.</summary>
    /// <remarks>All its climbs and falls added are the worst programme current: a voltage that reverses where this curve turns makes them all add.</remarks>
    /// <param name="V">The step; either sign.</param>
    /// <param name="t">Time since the step; 0 s or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    [Worked("the step response of the network, from its poles")]
    public ElectricCurrent StepCurrent(ElectricPotential V, Duration t) => V * ImpulseArea.StepPerVolt(Network, Guard.NotNegative(t).Seconds).S;

    /// <summary>This load at the end of a cable.</summary>
    /// <param name="cable">The cable.</param>
    public override NetworkLoad Through(Cable cable) => new CabledNetwork(this, cable);

    /// <inheritdoc/>
    protected internal override Complex Impedance(double hertz) => Network.Impedance(hertz);
}

/// <summary>Resistance and inductance in series with one parallel resonance, in plain SI numbers.</summary>
/// <param name="R">Series resistance, Ω; above 0.</param>
/// <param name="L">Series inductance, H; 0 or more.</param>
/// <param name="W">Angular frequency of the resonance, rad/s; above 0.</param>
/// <param name="B">1/Q of the resonance by itself; above 0.</param>
/// <param name="Z">Characteristic impedance of the resonance, √(L/C), Ω; 0 when there is none.</param>
internal readonly record struct SeriesNetwork(double R, double L, double W, double B, double Z)
{
    public Complex Impedance(double hertz)
    {
        var w = 2 * Math.PI * hertz;
        var series = new Complex(R, w * L);
        if (Z == 0)
            return series;
        var p = new Complex(0, w / W);
        return series + (Z * p / (1 + (B * p) + (p * p)));
    }

    public SeriesNetwork With(Cable cable) => this with { R = R + cable.LoopResistance.Ohms, L = L + cable.LoopInductance.Henries };
}
