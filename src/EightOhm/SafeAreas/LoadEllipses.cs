using EightOhm.Explaining;
using EightOhm.Loads;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <summary>Load ellipses of loads whose impedance moves with frequency.</summary>
public static class LoadEllipses
{
    /// <summary>What one transistor of a class-B stage sees while it plays a sine of a frequency into this load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="V">One rail (not rail to rail); greater than 0 V.</param>
    /// <param name="V_p">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="f">Frequency; greater than 0 Hz.</param>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="n">Pairs in parallel; 1 or more.</param>
    /// <returns>The half-wave of one transistor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the rail is too low for the swing and the drop of the emitter resistors.</exception>
    [Worked("voltage across one transistor and its current over a cycle of the sine")]
    public static LoadEllipse Ellipse(this Load load, ElectricPotential V, ElectricPotential V_p, Frequency f, ElectricResistance R_E, int n)
    {
        ArgumentNullException.ThrowIfNull(load);
        return new(V, V_p, load.Magnitude(f), load.Phase(f), R_E, n);
    }
}
