using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>The make of a conductor, by the classes of IEC 60228.</summary>
public enum ConductorClass
{
    /// <summary>Classes 1 and 2: solid, or stranded for fixed laying.</summary>
    Fixed,

    /// <summary>Classes 5 and 6: flexible.</summary>
    Flexible,
}

/// <summary>The greatest dc resistance that IEC 60228 allows a plain copper conductor at 20 °C.</summary>
/// <remarks>A maximum: copper of the nominal area has 5 to 16 % less.</remarks>
public static class Iec60228
{
    private static readonly (double Area, double Fixed, double Flexible)[] Table =
    [
        (0.5, 36.0, 39.0), (0.75, 24.5, 26.0), (1, 18.1, 19.5), (1.5, 12.1, 13.3), (2.5, 7.41, 7.98),
        (4, 4.61, 4.95), (6, 3.08, 3.30), (10, 1.83, 1.91), (16, 1.15, 1.21),
    ];

    /// <summary>The nominal cross-sections that the table has here.</summary>
    [RecordName("iec60228.cross-sections")]
    public static IReadOnlyList<Area> CrossSections { get; } = [.. Table.Select(row => row.Area.mm2)];

    /// <summary>The greatest resistance of a kilometre of one conductor at 20 °C.</summary>
    /// <param name="A">Nominal cross-section, one of <see cref="CrossSections"/>.</param>
    /// <param name="make">Class of the conductor.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cross-section is not in the table.</exception>
    [Worked("the highest resistance of the conductor class and area, read from the standard's table", Source = "IEC 60228")]
    public static ElectricResistance PerKilometre(Area A, ConductorClass make)
    {
        foreach (var row in Table)
            if (Math.Abs((A.SquareMeters * 1e6 / row.Area) - 1) < 1e-9)
                return (make == ConductorClass.Fixed ? row.Fixed : row.Flexible).Ohm;
        Guard.Refuse(nameof(A), A, "a nominal cross-section of IEC 60228: " + string.Join(", ", Table.Select(row => QuantityFormat.Short(row.Area))) + " mm²", "Take the next smaller one to be safe.");
        return default;
    }
}
