using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A network at the end of a cable, seen from the amplifier: the cable's resistance and inductance add to its own.</summary>
public sealed class CabledNetwork : NetworkLoad
{
    internal CabledNetwork(NetworkLoad end, Cable cable)
        : base(end.Network.With(cable ?? throw new ArgumentNullException(nameof(cable)))) => Cable = cable;

    /// <summary>The cable.</summary>
    public Cable Cable { get; }

    /// <summary>Resistance in series, the cable's with the load's own.</summary>
    [Symbol("R")]
    public ElectricResistance SeriesResistance => Network.R.Ohm;

    /// <summary>Inductance in series, the cable's with the load's own.</summary>
    [Symbol("L")]
    public ElectricInductance SeriesInductance => Network.L.H;
}
