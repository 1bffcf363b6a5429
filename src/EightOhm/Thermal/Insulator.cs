using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A flat layer that heat crosses, and the joint between two surfaces.</summary>
public static partial class Insulator
{
    /// <summary>Resistance of a layer: t/(k·A). The joints on its two sides come on top, see <see cref="Joint"/>.</summary>
    /// <param name="t">Thickness; greater than 0 m.</param>
    /// <param name="k">Conductivity of the material; greater than 0 W/(m·K).</param>
    /// <param name="A">Area that the heat crosses, the device's metal and not the insulator's; greater than 0 m².</param>
    /// <returns>The resistance of the layer, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    [Formula("Y. A. Çengel, Heat and Mass Transfer, sec. 3-1", Symbol = "theta_CS")]
    [RecordName("insulator.layer")]
    public static ThermalResistance Layer(Length t, ThermalConductivity k, Area A)
    {
        Guard.Positive(t);
        Guard.Positive(k);
        Guard.Positive(A);
        return t / k / A;
    }

    /// <summary>Resistance of a joint: 1/(h_c·A), from the contact conductance of the two surfaces under their pressure.</summary>
    /// <param name="r_c">One over the contact conductance: resistance of a unit of area; 0 m²·K/W or more.</param>
    /// <param name="A">Area; greater than 0 m².</param>
    /// <returns>The resistance of one joint, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Formula("Y. A. Çengel, Heat and Mass Transfer, sec. 3-2: thermal contact resistance", Symbol = "theta_joint")]
    [RecordName("insulator.joint")]
    public static ThermalResistance Joint(SurfaceThermalResistance r_c, Area A)
    {
        Guard.NotNegative(r_c);
        Guard.Positive(A);
        return r_c / A;
    }
}

/// <summary>Conductivities of what lies between a transistor and the air.</summary>
/// <remarks>Source: Power Electronics Handbook (probably that edited by F. F. Mazda), table 2.1, which prints resistivities (°C·cm/W), rounded to the safe side.</remarks>
public static class HeatMaterials
{
    /// <summary>Copper: 0.3 °C·cm/W.</summary>
    [RecordName("heat-materials.copper")]
    public static ThermalConductivity Copper { get; } = Of(0.3);

    /// <summary>Aluminium: 0.5 °C·cm/W.</summary>
    [RecordName("heat-materials.aluminium")]
    public static ThermalConductivity Aluminium { get; } = Of(0.5);

    /// <summary>Solder: 2.0 °C·cm/W.</summary>
    [RecordName("heat-materials.solder")]
    public static ThermalConductivity Solder { get; } = Of(2.0);

    /// <summary>Thermal grease: 130 °C·cm/W.</summary>
    [RecordName("heat-materials.grease")]
    public static ThermalConductivity Grease { get; } = Of(130);

    /// <summary>Mica: 150 °C·cm/W.</summary>
    [RecordName("heat-materials.mica")]
    public static ThermalConductivity Mica { get; } = Of(150);

    /// <summary>Polyester film: 400 °C·cm/W.</summary>
    [RecordName("heat-materials.polyester-film")]
    public static ThermalConductivity PolyesterFilm { get; } = Of(400);

    /// <summary>Still air, the gap of a dry joint: 3000 °C·cm/W.</summary>
    [RecordName("heat-materials.still-air")]
    public static ThermalConductivity StillAir { get; } = Of(3000);

    private static ThermalConductivity Of(double degreeCentimetrePerWatt) => ThermalConductivity.FromWattsPerMeterKelvin(100 / degreeCentimetrePerWatt);
}
