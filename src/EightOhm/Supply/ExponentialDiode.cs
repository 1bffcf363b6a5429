using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>Rectifier diodes by the exponential law, i = I_s·(exp(v/(n·V_T)) − 1), alike in series.</summary>
public sealed record ExponentialDiode
{
    /// <summary>Makes a law.</summary>
    /// <param name="saturation">Saturation current; greater than 0 A.</param>
    /// <param name="emission">Emission coefficient n, 1 to 2 for silicon; from 0.5 to 4.</param>
    /// <param name="junction">Junction temperature; above 0 K.</param>
    /// <param name="inSeries">How many conduct one after the other: 2 in a bridge on one winding, 1 a rail in a dual supply; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public ExponentialDiode(ElectricCurrent saturation, double emission, Temperature junction, int inSeries = 1)
    {
        Saturation = Guard.Positive(saturation, nameof(saturation));
        Emission = Guard.Between(emission, 0.5, 4, nameof(emission));
        Junction = Guard.Positive(junction, nameof(junction));
        InSeries = Guard.Positive(inSeries, nameof(inSeries));
    }

    /// <summary>Saturation current.</summary>
    [Symbol("I_s")]
    public ElectricCurrent Saturation { get; }

    /// <summary>Emission coefficient.</summary>
    [Symbol("n")]
    public double Emission { get; }

    /// <summary>Junction temperature.</summary>
    [Symbol("T_j")]
    public Temperature Junction { get; }

    /// <summary>How many conduct one after the other.</summary>
    public int InSeries { get; }

    /// <summary>n·k·T/q of all in series: the voltage that a tenfold current adds, over ln 10.</summary>
    internal double Slope => InSeries * Emission * Devices.Junction.ThermalVoltage(Junction).Volts;

    /// <summary>The voltage of all in series at a current.</summary>
    /// <param name="current">0 A or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative.</exception>
    [Worked("n·V_T·ln(I/I_s + 1), times the number in series", Source = "Sedra & Smith, Microelectronic Circuits, 5th ed., ch. 3")]
    public ElectricPotential At(ElectricCurrent current) =>
        ElectricPotential.FromVolts(Slope * Exponential.Log1p(Guard.NotNegative(current, nameof(current)) / Saturation));
}
