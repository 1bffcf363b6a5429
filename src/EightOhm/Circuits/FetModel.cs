using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What a circuit needs of a field-effect transistor for small signals, at the current at which it stands.</summary>
/// <remarks>Its operating point is not solved. Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., ch. 4.</remarks>
[Called("field-effect transistor model")]
public sealed record FetModel
{
    /// <summary>Makes a model.</summary>
    /// <param name="g_m">Transconductance; greater than 0 S.</param>
    /// <exception cref="ArgumentOutOfRangeException">The transconductance is not positive.</exception>
    public FetModel(ElectricConductance g_m) => Transconductance = Guard.Positive(g_m);

    /// <summary>Transconductance at its current.</summary>
    [Symbol("g_m")]
    public ElectricConductance Transconductance { get; }

    /// <summary>Output resistance, drain to source; greater than 0 Ω. Not given: infinite.</summary>
    [Symbol("r_o")]
    public ElectricResistance? OutputResistance { get; init => field = value is { } r ? Guard.Positive(r) : null; }

    /// <summary>Capacitance from gate to source; 0 F or more.</summary>
    [Symbol("C_gs")]
    public ElectricCapacitance GateSourceCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Capacitance from gate to drain; 0 F or more.</summary>
    [Symbol("C_gd")]
    public ElectricCapacitance GateDrainCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>The channel's noise over that of a resistor 1/g_m; 0 or more, two thirds when not given.</summary>
    [Symbol("gamma")]
    public double NoiseFactor { get; init => field = Guard.NotNegative(value); } = 2 / 3.0;

    /// <summary>Its temperature, for the noise; 25 °C when not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value); } = Temperature.FromDegreesCelsius(25);

    /// <summary>The frequency below which the 1/f noise of the channel exceeds its white noise; greater than 0 Hz. Not given: none.</summary>
    [Symbol("f_c")]
    public Frequency? FlickerCorner { get; init => field = value is { } f ? Guard.Positive(f) : null; }
}
