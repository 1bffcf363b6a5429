using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Published.Checks;

/// <summary>Columns of computed values as quantities; every check sees them by the project's own using. A literal cannot stand in the expression of a check.</summary>
internal static class Columns
{
    public static ElectricPotential Volts(double x) => ElectricPotential.FromVolts(x);

    public static ElectricCurrent Amperes(double x) => ElectricCurrent.FromAmperes(x);

    public static ElectricResistance Ohms(double x) => ElectricResistance.FromOhms(x);

    public static ElectricCapacitance Farads(double x) => ElectricCapacitance.FromFarads(x);

    public static Temperature Celsius(double x) => x.degC;

    public static Angle Degrees(double x) => Angle.FromDegrees(x);

    public static TemperatureDelta Rise(double x) => x.K;

    public static ThermalResistance PerWatt(double x) => x.K_per_W;

    public static VoltageNoiseDensity Density(double x) => VoltageNoiseDensity.FromSi(x);

    public static VoltageDrift Drift(double x) => (1e3 * x).mV_per_K;

    public static Frequency Cycles(double x) => x.Hz;
}
