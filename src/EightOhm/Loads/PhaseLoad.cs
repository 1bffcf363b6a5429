using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A load of one magnitude and one phase at every frequency: the "4 Ω at 45°" of a specification.</summary>
/// <remarks>No network is like this over a band, so it has no impulse response and no worst programme current.</remarks>
public sealed class PhaseLoad : Load
{
    private readonly Complex _impedance;

    /// <summary>Makes the load.</summary>
    /// <param name="Z">Magnitude; greater than 0 Ω.</param>
    /// <param name="phi">Phase, from −90° (a capacitor) to 90° (an inductor).</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public PhaseLoad(ElectricResistance Z, Angle phi)
    {
        this.Z = Guard.Positive(Z, hint: "Give the magnitude of the load, for example 4.Ohm.");
        Phi = Guard.Between(phi, (-90).deg, 90.deg, hint: EquivalentResistor.NotPassive);
        _impedance = Complex.FromPolarCoordinates(Z.Ohms, phi.Radians);
    }

    /// <summary>Magnitude.</summary>
    [Symbol("Z")]
    [Called("magnitude")]
    public ElectricResistance Z { get; }

    /// <summary>Phase; positive where the current lags.</summary>
    [Symbol("phi")]
    [Called("phase")]
    public Angle Phi { get; }

    /// <inheritdoc/>
    protected internal override Complex Impedance(double hertz) => _impedance;
}
