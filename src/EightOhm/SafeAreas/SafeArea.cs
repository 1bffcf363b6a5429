using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.SafeAreas;

/// <summary>The safe operating area of one transistor, from its card: which voltage and current together it stands, for how long, how warm.</summary>
/// <remarks>A stage is inside only if every point of its load ellipse is. A pulse line holds for one pulse that starts from the case's temperature
/// (makers often say up to 10 % duty). A sine's half-waves are half of the time: give the average dissipation where it matters, and the pulse starts
/// from the junction that this dissipation has warmed. That is cautious, because the pulse's own share of the average is then counted twice.</remarks>
public sealed class SafeArea
{
    private readonly LogLine[] _lines;

    /// <summary>The area of a card.</summary>
    /// <param name="card">The card.</param>
    public SafeArea(Transistor card)
    {
        ArgumentNullException.ThrowIfNull(card);
        Card = card;
        _lines = [.. card.SafeAreaLines.Select(l => new LogLine(l))];
    }

    /// <summary>No pulse: the dc line.</summary>
    public static Duration? Dc => null;

    /// <summary>Below this frequency a sine is taken as dc: 20 Hz (common practice, no source).</summary>
    [RecordName("safe-area.lowest-pulse-frequency")]
    public static Frequency LowestPulseFrequency => Frequency.FromHertz(20);

    /// <summary>The card.</summary>
    public Transistor Card { get; }

    /// <summary>The pulse whose line a sine uses: half its period, or dc below <see cref="LowestPulseFrequency"/>.</summary>
    /// <param name="f">Frequency of the sine; greater than 0 Hz.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    public static Duration? PulseOf(Frequency f) => Guard.Positive(f) < LowestPulseFrequency ? Dc : SafeAreaLimits.HalfPeriod(f);

    /// <summary>The area at a case temperature, for a pulse.</summary>
    /// <param name="T_C">Case temperature; below the card's junction limit.</param>
    /// <param name="pulse">Pulse length, or <see cref="Dc"/>. Between two pulse lines the current is read straight over the logarithm of time;
    /// a pulse longer than the longest line is dc, one shorter than the shortest line gets that line.</param>
    /// <param name="averageDissipation">Average dissipation of this one transistor, on which a repeated pulse rides; none when not given. Not used for dc.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pulse is not positive, or the case or the junction at the average dissipation is too hot.</exception>
    [Worked("the lines of the device data for that pulse, derated to the case temperature")]
    public DeratedArea For(Temperature T_C, Duration? pulse, Power? averageDissipation = null)
    {
        if (pulse is { } t)
            Guard.Positive(t, nameof(pulse));
        var start = pulse is not null && averageDissipation is { } P
            ? HeatPath.Junction(T_C, Guard.NotNegative(P, nameof(averageDissipation)), [Card.JunctionToCase])
            : T_C;
        if (!(start < Card.MaxJunctionTemperature))
            Guard.Refuse(nameof(T_C), T_C, $"such that the junction starts below {QuantityFormat.Short(Card.MaxJunctionTemperature)}, and it would start at {QuantityFormat.Short(start)}", "Cool the case or share the dissipation among more pairs.");
        return new DeratedArea(Card, _lines, T_C, start, pulse);
    }

    /// <summary>The current allowed at a voltage.</summary>
    /// <param name="V_CE">Collector to emitter; greater than 0 V. Above V_CEO nothing is allowed.</param>
    /// <param name="pulse">Pulse length, or <see cref="Dc"/>.</param>
    /// <param name="T_C">Case temperature; below the card's junction limit.</param>
    /// <param name="averageDissipation">Average dissipation of this one transistor, on which a repeated pulse rides; none when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the least of the lines of the safe area at that voltage, derated to the case temperature")]
    public ElectricCurrent LimitAt(ElectricPotential V_CE, Duration? pulse, Temperature T_C, Power? averageDissipation = null) => For(T_C, pulse, averageDissipation).LimitAt(V_CE);

    /// <inheritdoc/>
    public override string ToString() => $"Safe area of {Card.Name}: {string.Join("; ", Card.SafeAreaLines)} at {QuantityFormat.Short(Card.ReferenceTemperature)}";
}
