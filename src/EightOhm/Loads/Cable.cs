using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Loads;

/// <summary>A loudspeaker cable of two copper conductors: its resistance and inductance, there and back.</summary>
/// <remarks>Lumped and without capacitance, which is right at audio frequencies. Equality is by value.</remarks>
public sealed record Cable
{
    private Cable(Length length, ElectricResistance perKilometre, Length diameter, Length? spacing, Temperature? temperature)
    {
        Length = Guard.Positive(length, hint: "Give the length one way, for example 5.m.");
        ResistancePerKilometre = perKilometre;
        Diameter = diameter;
        // A flat twin lead has about a conductor's width of insulation between its two.
        Spacing = spacing ?? 2 * diameter;
        Temperature = temperature ?? 20.degC;
        LoopResistance = CopperWire.LoopResistance(Length, ResistancePerKilometre, Temperature);
        LoopInductance = CopperWire.LoopInductance(Length, Diameter, Spacing);
    }

    /// <summary>A cable of an American gauge, its conductors of pure copper.</summary>
    /// <param name="length">Length one way; greater than 0 m.</param>
    /// <param name="gauge">American wire gauge, −3 (0000) to 40.</param>
    /// <param name="spacing">Distance of the conductors, centre to centre; twice their diameter when not given.</param>
    /// <param name="temperature">Temperature of the copper; 20 °C when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Cable Awg(Length length, int gauge, Length? spacing = null, Temperature? temperature = null)
    {
        var diameter = CopperWire.Diameter(gauge);
        return new(length, CopperWire.PerKilometre(diameter), diameter, spacing, temperature);
    }

    /// <summary>A cable of a nominal cross-section, with the greatest resistance that IEC 60228 allows.</summary>
    /// <param name="length">Length one way; greater than 0 m.</param>
    /// <param name="crossSection">Nominal cross-section of one conductor, such as 2.5.mm2.</param>
    /// <param name="make">Class of the conductors; flexible when not given.</param>
    /// <param name="spacing">Distance of the conductors, centre to centre; twice their diameter when not given.</param>
    /// <param name="temperature">Temperature of the copper; 20 °C when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the cross-section not in the standard's table.</exception>
    public static Cable Iec(Length length, Area crossSection, ConductorClass make = ConductorClass.Flexible, Length? spacing = null, Temperature? temperature = null)
    {
        var perKilometre = Iec60228.PerKilometre(crossSection, make);
        return new(length, perKilometre, Length.FromMeters(Math.Sqrt(4 * crossSection.SquareMeters / Math.PI)), spacing, temperature);
    }

    /// <summary>Length, one way.</summary>
    [Symbol("l")]
    public Length Length { get; }

    /// <summary>A kilometre of one conductor at 20 °C.</summary>
    [Symbol("R_km")]
    public ElectricResistance ResistancePerKilometre { get; }

    /// <summary>Diameter of each conductor's copper.</summary>
    [Symbol("d")]
    public Length Diameter { get; }

    /// <summary>Distance of the conductors, centre to centre.</summary>
    [Symbol("D")]
    public Length Spacing { get; }

    /// <summary>Temperature of the copper.</summary>
    [Symbol("T")]
    public Temperature Temperature { get; }

    /// <summary>Resistance of both conductors in series.</summary>
    [Symbol("R_c")]
    public ElectricResistance LoopResistance { get; }

    /// <summary>Inductance of the loop that they make.</summary>
    [Symbol("L_c")]
    public ElectricInductance LoopInductance { get; }
}
