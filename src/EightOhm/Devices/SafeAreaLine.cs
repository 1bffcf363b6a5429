using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Devices;

/// <summary>One line of a safe operating area: its corners for dc or for one pulse length, and where second breakdown begins.</summary>
/// <remarks>Straight between corners on a log-log chart. Up to the voltage where second breakdown begins the line is one of constant heat (slope −1);
/// beyond it, it falls faster. All at the card's reference case temperature.</remarks>
public sealed class SafeAreaLine
{
    // Corners read off a printed chart are good to a few percent.
    internal const double ReadingTolerance = 0.1;

    /// <summary>Makes a line and checks that it is one.</summary>
    /// <param name="pulse">The pulse length; null for dc.</param>
    /// <param name="secondBreakdownFrom">The voltage, one of the points', from which second breakdown sets the line.</param>
    /// <param name="points">At least two corners: rising voltage, falling current.</param>
    /// <exception cref="ArgumentOutOfRangeException">The points do not descend, the part of constant heat is none, or the part of second breakdown falls no faster than it.</exception>
    public SafeAreaLine(Duration? pulse, ElectricPotential secondBreakdownFrom, IReadOnlyList<SafeAreaPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (pulse is { } length)
            Guard.Positive(length, nameof(pulse));
        if (points.Count < 2)
            throw new RefusedValueException(nameof(points), $"points must be two or more (was {points.Count}): a line has two ends.");
        foreach (var point in points)
        {
            Guard.Positive(point.Voltage, nameof(points));
            Guard.Positive(point.Current, nameof(points));
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (!(points[i].Voltage > points[i - 1].Voltage && points[i].Current < points[i - 1].Current))
            {
                throw new RefusedValueException(
                    nameof(points),
                    $"points must descend: each has a higher voltage and a lower current than the one before ({Words(points[i - 1])} is followed by {Words(points[i])}). Put them in the order of their voltages and look for a misread one.");
            }
        }

        Pulse = pulse;
        SecondBreakdownFrom = secondBreakdownFrom;
        Points = [.. points];
        Break = Points.ToList().FindIndex(p => p.Voltage.Volts == secondBreakdownFrom.Volts);
        if (Break < 0)
            throw new RefusedValueException(nameof(secondBreakdownFrom), $"secondBreakdownFrom must be the voltage of one of the points, {string.Join(", ", points.Select(p => QuantityFormat.Short(p.Voltage)))} (was {QuantityFormat.Short(secondBreakdownFrom)}). Give the last voltage if second breakdown does not show.");
        CheckParts();
    }

    /// <summary>The pulse length; null for dc.</summary>
    public Duration? Pulse { get; }

    /// <summary>The voltage from which second breakdown sets the line.</summary>
    public ElectricPotential SecondBreakdownFrom { get; }

    /// <summary>The corners.</summary>
    public IReadOnlyList<SafeAreaPoint> Points { get; }

    /// <summary>The corner at which second breakdown begins.</summary>
    internal int Break { get; }

    /// <inheritdoc/>
    public override string ToString() => $"{(Pulse is { } t ? QuantityFormat.Short(t) : "dc")}: {string.Join(", ", Points.Select(Words))}";

    private static string Words(SafeAreaPoint p) => $"{QuantityFormat.Short(p.Voltage)}/{QuantityFormat.Short(p.Current)}";

    private static double Heat(SafeAreaPoint p) => p.Voltage.Volts * p.Current.Amperes;

    private void CheckParts()
    {
        for (var i = 1; i < Points.Count; i++)
        {
            var step = Heat(Points[i]) / Heat(Points[i - 1]);
            if (i <= Break && Math.Abs(step - 1) > ReadingTolerance)
                throw new RefusedValueException("points", $"points below second breakdown must lie on one heat, within {ReadingTolerance:0%} ({Words(Points[i - 1])} is {QuantityFormat.Short(Power.FromWatts(Heat(Points[i - 1])))}, {Words(Points[i])} is {QuantityFormat.Short(Power.FromWatts(Heat(Points[i])))}). Set secondBreakdownFrom lower, or look for a misread point.");
            if (i > Break && step >= 1)
                throw new RefusedValueException("points", $"points of second breakdown must fall faster than those of constant heat ({Words(Points[i - 1])} is followed by {Words(Points[i])}). Set secondBreakdownFrom higher.");
        }
    }
}
