using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>Dry air at 1 atm, as natural convection needs it at the film temperature (midway between surface and air).</summary>
/// <remarks>Source: Y. A. Çengel, Heat and Mass Transfer, table A-15. Straight between its rows. High up, air is thinner: at 2000 m its
/// kinematic viscosity is about a quarter greater and a sink about a tenth worse than calculated here (common practice, no source).</remarks>
public static class Air
{
    // °C, W/(m·K), m²/s, 1
    private static readonly double[] Celsius = [0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120];
    private static readonly double[] Conductivities = [0.02364, 0.02401, 0.02439, 0.02476, 0.02514, 0.02551, 0.02588, 0.02625, 0.02662, 0.02699, 0.02735, 0.02808, 0.02881, 0.02953, 0.03024, 0.03095, 0.03235];
    private static readonly double[] Viscosities = [1.338e-5, 1.382e-5, 1.426e-5, 1.470e-5, 1.516e-5, 1.562e-5, 1.608e-5, 1.655e-5, 1.702e-5, 1.750e-5, 1.798e-5, 1.896e-5, 1.995e-5, 2.097e-5, 2.201e-5, 2.306e-5, 2.522e-5];
    private static readonly double[] Prandtls = [0.7362, 0.7350, 0.7336, 0.7323, 0.7309, 0.7296, 0.7282, 0.7268, 0.7255, 0.7241, 0.7228, 0.7202, 0.7177, 0.7154, 0.7132, 0.7111, 0.7073];

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

    internal static AirProperties AtCelsius(double t) => new(
        ThermalConductivity.FromWattsPerMeterKelvin(Interpolation.Linear(Celsius, Conductivities, t)),
        KinematicViscosity.FromSquareMetersPerSecond(Interpolation.Linear(Celsius, Viscosities, t)),
        Interpolation.Linear(Celsius, Prandtls, t));
}

/// <summary>Properties of air at one temperature.</summary>
/// <param name="Conductivity">Thermal conductivity.</param>
/// <param name="Viscosity">Kinematic viscosity.</param>
/// <param name="Prandtl">Prandtl number.</param>
public readonly record struct AirProperties([property: Explaining.Symbol("k")] ThermalConductivity Conductivity, [property: Explaining.Symbol("nu")] KinematicViscosity Viscosity, [property: Explaining.Symbol("Pr")] double Prandtl);
