using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>The greatest current that a load can ask for.</summary>
public static partial class OutputCurrent
{
    /// <summary>Peak current of a sine: V_p/|Z|.</summary>
    /// <param name="V_p">Peak voltage (not rms); 0 V or more.</param>
    /// <param name="Z">Magnitude of the load at the sine's frequency; greater than 0 Ω.</param>
    /// <returns>The current, peak, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <example><code>OutputCurrent.Sine(40.V, 4.Ohm)   // 10 A</code></example>
    [Formula("Ohm's law for peak values; Boylestad & Nashelsky, Electronic Devices and Circuit Theory, 11th ed., ch. 12", Symbol = "I_p")]
    [RecordName("output-current.sine")]
    public static ElectricCurrent Sine(ElectricPotential V_p, ElectricResistance Z)
    {
        Guard.NotNegative(V_p);
        Guard.Positive(Z);
        return V_p / Z;
    }

    /// <summary>The greatest current that any signal of bounded voltage drives: V_max·∫|y(t)|dt, y being the load's admittance as an impulse response.</summary>
    /// <remarks>It is reached by a signal that is at plus or minus V_max at every instant, in the sign of y reversed in time: a bound for programme, far above a sine's.</remarks>
    /// <param name="V_max">The greatest voltage of either sign; 0 V or more.</param>
    /// <param name="G_abs">∫|y(t)|dt of the load, from <see cref="NetworkLoad.AbsoluteArea"/>; greater than 0 S.</param>
    /// <returns>The current, an instantaneous maximum, in A.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("derived: i(t) = ∫y(τ)·v(t − τ)dτ with |v| ≤ V_max; the peak gain of a linear system, A. V. Oppenheim & A. S. Willsky, Signals and Systems, 2nd ed., sec. 2.3 (bounded input, bounded output)", Symbol = "I_max")]
    [RecordName("output-current.music-dissipation")]
    public static ElectricCurrent WorstProgramme(ElectricPotential V_max, ElectricConductance G_abs)
    {
        Guard.NotNegative(V_max);
        Guard.Positive(G_abs);
        return V_max * G_abs;
    }
}
