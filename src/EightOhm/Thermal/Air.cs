using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Dry air at 1 atm, as natural convection needs it at the film temperature (midway between surface and air).</summary>
/// <remarks>Source: Y. A. Çengel, Heat and Mass Transfer, table A-15. Straight between its rows. High up, air is thinner: at 2000 m its
/// kinematic viscosity is about a quarter greater and a sink about a tenth worse than calculated here (common practice, no source).</remarks>
public static class Air
{
    // °C, W/(m·K), m²/s, 1
    private static readonly double[][] Rows =
    [
        [0, 0.02364, 1.338e-5, 0.7362],
        [5, 0.02401, 1.382e-5, 0.7350],
        [10, 0.02439, 1.426e-5, 0.7336],
        [15, 0.02476, 1.470e-5, 0.7323],
        [20, 0.02514, 1.516e-5, 0.7309],
        [25, 0.02551, 1.562e-5, 0.7296],
        [30, 0.02588, 1.608e-5, 0.7282],
        [35, 0.02625, 1.655e-5, 0.7268],
        [40, 0.02662, 1.702e-5, 0.7255],
        [45, 0.02699, 1.750e-5, 0.7241],
        [50, 0.02735, 1.798e-5, 0.7228],
        [60, 0.02808, 1.896e-5, 0.7202],
        [70, 0.02881, 1.995e-5, 0.7177],
        [80, 0.02953, 2.097e-5, 0.7154],
        [90, 0.03024, 2.201e-5, 0.7132],
        [100, 0.03095, 2.306e-5, 0.7111],
        [120, 0.03235, 2.522e-5, 0.7073],
    ];

    /// <summary>The coolest film temperature of the table.</summary>
    [RecordName("air.coolest")]
    public static Temperature Coolest { get; } = Temperature.FromKelvins(Constants.ZeroCelsius);

    /// <summary>The hottest film temperature of the table.</summary>
    [RecordName("air.hottest")]
    public static Temperature Hottest { get; } = Temperature.FromKelvins(Constants.ZeroCelsius + 120);

    /// <summary>The air's properties at a film temperature.</summary>
    /// <param name="film">From 0 to 120 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the table.</exception>
    [Worked("read from the table of air at atmospheric pressure, straight between its rows")]
    public static AirProperties At(Temperature film)
    {
        Guard.Between(film, Coolest, Hottest, "the film temperature", "It is midway between surface and air.");
        return AtCelsius(film.Kelvins - Constants.ZeroCelsius);
    }

    internal static AirProperties AtCelsius(double t)
    {
        var i = 1;
        while (i < Rows.Length - 1 && t > Rows[i][0])
            i++;
        double[] a = Rows[i - 1], b = Rows[i];
        var x = (t - a[0]) / (b[0] - a[0]);
        return new(a[1] + (x * (b[1] - a[1])), a[2] + (x * (b[2] - a[2])), a[3] + (x * (b[3] - a[3])));
    }
}

/// <summary>Properties of air at one temperature.</summary>
/// <param name="Conductivity">Thermal conductivity, W/(m·K).</param>
/// <param name="Viscosity">Kinematic viscosity, m²/s.</param>
/// <param name="Prandtl">Prandtl number.</param>
public readonly record struct AirProperties(double Conductivity, double Viscosity, double Prandtl);
