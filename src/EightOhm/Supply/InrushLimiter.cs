using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Supply;

/// <summary>What stands in the primary while the capacitors charge: a resistor, or a thermistor that warms.</summary>
public sealed partial record InrushLimiter
{
    private InrushLimiter(double cold, double b, double heatCapacity, double lossPerKelvin) => (Cold, B, HeatCapacity, LossPerKelvin) = (cold, b, heatCapacity, lossPerKelvin);

    /// <summary>No limiter.</summary>
    public static InrushLimiter None { get; } = new(0, 0, 1, 0);

    // Ω, K, J/K and W/K.
    internal double Cold { get; }

    internal double B { get; }

    internal double HeatCapacity { get; }

    internal double LossPerKelvin { get; }

    internal bool Warms => B > 0;

    /// <summary>A resistor.</summary>
    /// <param name="resistance">Its resistance; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public static InrushLimiter Resistor(ElectricResistance resistance) => new(Guard.Positive(resistance).Ohms, 0, 1, 0);

    /// <summary>A thermistor whose resistance falls as it warms, taken as one temperature.</summary>
    /// <param name="at25">Resistance at 25 °C without load; greater than 0 Ω.</param>
    /// <param name="b">Its B value in kelvin, 2000 to 6000 as a rule; greater than 0.</param>
    /// <param name="heatCapacity">Its heat capacity; greater than 0 J/K.</param>
    /// <param name="toAir">Its thermal resistance to the air: one over the dissipation constant; greater than 0 K/W.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public static InrushLimiter Thermistor(ElectricResistance at25, double b, HeatCapacity heatCapacity, ThermalResistance toAir) =>
        new(Guard.Positive(at25).Ohms, Guard.Positive(b), Guard.Positive(heatCapacity).Si, 1 / Guard.Positive(toAir).Si);

    /// <summary>The resistance of a thermistor: R_25·e^(B·(1/T_n − 1/298.15 K)).</summary>
    /// <param name="R_25">Resistance at 25 °C without load; greater than 0 Ω.</param>
    /// <param name="B">Its B value in kelvin; 0 or more.</param>
    /// <param name="T_n">Its temperature; above 0 K.</param>
    /// <returns>The resistance of the thermistor, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("B-parameter equation of thermistor makers' datasheets (IEC 60539-1 defines B)", Symbol = "R_n")]
    [RecordName("inrush-limiter.thermistor-at")]
    public static ElectricResistance ThermistorAt(ElectricResistance R_25, double B, Temperature T_n)
    {
        Guard.Positive(R_25);
        Guard.NotNegative(B);
        Guard.Positive(T_n);
        return Exp(B * (1 / T_n.Kelvins - 1 / 298.15)) * R_25;
    }
}
