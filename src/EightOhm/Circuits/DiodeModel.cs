using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What a circuit needs of a diode: I = I_S·(e^(V/(n·V_T)) − 1), a series resistance, a capacitance.</summary>
/// <remarks>Source: Sedra &amp; Smith, Microelectronic Circuits, 5th ed., ch. 3.</remarks>
[Called("diode model")]
public sealed record DiodeModel
{
    /// <summary>Saturation current at its temperature; greater than 0 A.</summary>
    [Symbol("I_S")]
    public ElectricCurrent SaturationCurrent { get; init => field = Guard.Positive(value); } = ElectricCurrent.FromAmperes(1e-14);

    /// <summary>Emission coefficient n; 1 to 10.</summary>
    [Symbol("n")]
    public double EmissionCoefficient { get; init => field = Guard.Between(value, 1, 10); } = 1;

    /// <summary>Series resistance; 0 Ω or more.</summary>
    [Symbol("R_S")]
    public ElectricResistance SeriesResistance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Capacitance across the junction; 0 F or more.</summary>
    [Symbol("C_j")]
    public ElectricCapacitance Capacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Junction temperature; 25 °C when not given.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; init => field = Guard.Positive(value); } = Temperature.FromDegreesCelsius(25);
}
