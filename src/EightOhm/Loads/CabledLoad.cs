using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>Any load at the end of a cable, seen from the amplifier.</summary>
public sealed class CabledLoad : Load
{
    private readonly Load _end;
    private readonly double _ohms;
    private readonly double _henries;

    internal CabledLoad(Load end, Cable cable)
    {
        ArgumentNullException.ThrowIfNull(cable);
        _end = end;
        _ohms = cable.LoopResistance.Ohms;
        _henries = cable.LoopInductance.Henries;
    }

    /// <summary>Resistance of the cable.</summary>
    [Symbol("R_c")]
    public ElectricResistance CableResistance => _ohms.Ohm;

    /// <summary>Inductance of the cable.</summary>
    [Symbol("L_c")]
    public ElectricInductance CableInductance => _henries.H;

    /// <inheritdoc/>
    protected internal override Complex Impedance(double hertz) => _end.Impedance(hertz) + new Complex(_ohms, 2 * Math.PI * hertz * _henries);
}
