using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputNetworks;

/// <summary>A coil as it is wound: a wire, turn beside turn in one layer on a former.</summary>
public sealed record CoilWinding
{
    // Beyond it a coil is no output coil any more, and the search would not end.
    private const int MostTurns = 1000;

    /// <summary>Makes a winding.</summary>
    /// <param name="turns">How many turns; 1 to 1000.</param>
    /// <param name="former">Diameter of what it is wound on; greater than 0 m.</param>
    /// <param name="wire">Diameter of the wire's copper; greater than 0 m.</param>
    /// <param name="pitch">From turn to turn, with the insulation; at least the wire, and 5 % more than it when not given.</param>
    /// <param name="leads">Both leads together; 60 mm when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the winding too flat to be calculated.</exception>
    public CoilWinding(int turns, Length former, Length wire, Length? pitch = null, Length? leads = null)
    {
        Turns = Guard.Between(turns, 1, MostTurns);
        Former = Guard.Positive(former);
        Wire = Guard.Positive(wire);
        Pitch = PitchOf(pitch, wire);
        Guard.NotNegative(Pitch - Wire, "pitch − wire", "The turns would overlap.");
        Leads = Guard.NotNegative(leads ?? Length.FromMillimeters(60), nameof(leads));
        Inductance = AirCoil.Inductance(Turns, MeanDiameter, WindingLength);
    }

    /// <summary>Turns.</summary>
    [Symbol("n")]
    public int Turns { get; }

    /// <summary>Diameter of the former.</summary>
    [Symbol("d_f")]
    public Length Former { get; }

    /// <summary>Diameter of the wire's copper.</summary>
    [Symbol("d_w")]
    public Length Wire { get; }

    /// <summary>From turn to turn.</summary>
    [Symbol("p")]
    public Length Pitch { get; }

    /// <summary>Both leads together.</summary>
    [Symbol("l_l")]
    public Length Leads { get; }

    /// <summary>Middle of the wire to middle of the wire.</summary>
    [Symbol("D")]
    public Length MeanDiameter => Former + Pitch;

    /// <summary>Turns times pitch.</summary>
    [Symbol("l")]
    public Length WindingLength => Turns * Pitch;

    /// <summary>Inductance.</summary>
    [Symbol("L")]
    public ElectricInductance Inductance { get; }

    /// <summary>Length of the wire, leads included.</summary>
    [Symbol("l_w")]
    public Length WireLength => AirCoil.WireLength(Turns, MeanDiameter, Leads);

    /// <summary>Resistance at a temperature.</summary>
    /// <param name="T">Temperature of the copper, from −200 to 250 °C.</param>
    /// <returns>The resistance, in Ω.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of range.</exception>
    [Worked("AirCoil.Resistance of the wire's length and diameter at that temperature")]
    public ElectricResistance ResistanceAt(Temperature T) => AirCoil.Resistance(WireLength, Wire, T);

    /// <summary>The winding of the fewest turns that has an inductance at least.</summary>
    /// <param name="L">The inductance wanted; greater than 0 H.</param>
    /// <param name="former">Diameter of what it is wound on; greater than 0 m.</param>
    /// <param name="wire">Diameter of the wire's copper; greater than 0 m.</param>
    /// <param name="pitch">From turn to turn, with the insulation; 5 % more than the wire when not given.</param>
    /// <param name="leads">Both leads together; 60 mm when not given.</param>
    /// <returns>The winding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">Not even a thousand turns have it.</exception>
    /// <example><code>CoilWinding.For(1.uH, 10.mm, 1.25.mm)</code></example>
    public static CoilWinding For(ElectricInductance L, Length former, Length wire, Length? pitch = null, Length? leads = null)
    {
        Guard.Positive(L);
        Guard.Positive(former);
        Guard.Positive(wire);
        var apart = PitchOf(pitch, wire);
        // So many turns at least that the winding is as long as the formula wants it.
        var first = Math.Ceiling(0.4 * (former + apart).Meters / apart.Meters * (1 + 1e-12));
        for (var n = (int)Math.Clamp(first, 1, MostTurns + 1.0); n <= MostTurns; n++)
            if (new CoilWinding(n, former, wire, pitch, leads) is var coil && coil.Inductance >= L)
                return coil;
        throw new InvalidOperationException($"Not even {MostTurns} turns on {QuantityFormat.Short(former)} have {QuantityFormat.Short(L)}. Wind it on a larger former.");
    }

    // Enamelled wire lies so far apart when it is wound by hand (common practice, no source).
    private static Length PitchOf(Length? pitch, Length wire) => Guard.Positive(pitch ?? 1.05 * wire, nameof(pitch));
}
