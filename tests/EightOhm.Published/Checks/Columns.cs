using UnitsNet;

namespace EightOhm.Published.Checks;

/// <summary>Columns of computed values as quantities.</summary>
internal static class Columns
{
    public static ElectricPotential Volts(double x) => ElectricPotential.FromVolts(x);

    public static ElectricCurrent Amperes(double x) => ElectricCurrent.FromAmperes(x);

    public static ElectricResistance Ohms(double x) => ElectricResistance.FromOhms(x);

    public static Angle Degrees(double x) => Angle.FromDegrees(x);
}
