using EightOhm.Display.Figures;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>Charts of the trade, one file each.</summary>
public static partial class Charts
{
    private const double LeastVoltage = 2;
    private const double LeastCurrent = 0.1;
    private const int LocusStyle = 5;
    private const int MarkAt = 12;

    /// <summary>The safe area of one transistor: its derated lines for dc and for a pulse, the half-waves of loads, and the band of a limiter's locus between a cold and a hot sense junction.</summary>
    /// <remarks>All of one transistor, over its own collector-emitter voltage, both axes logarithmic. A load is safe while its curve is below a line, a limiter while it is between loads and line.</remarks>
    /// <param name="area">The safe area.</param>
    /// <param name="T_C">Case temperature.</param>
    /// <param name="pulse">The pulse whose line is drawn beside the dc line; none for <see cref="EightOhm.SafeAreas.SafeArea.Dc"/>.</param>
    /// <param name="loads">The loads, at full level.</param>
    /// <param name="limiter">The limiter; none when not given.</param>
    /// <param name="coldest">Coldest sense junction; 25 °C when not given.</param>
    /// <param name="hottest">Hottest sense junction; 85 °C when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The case or a sense junction is too hot.</exception>
    public static Figure SafeArea(SafeArea area, Temperature T_C, Duration? pulse, IReadOnlyList<LoadEllipse> loads, VoltageCurrentLimiter? limiter = null, Temperature? coldest = null, Temperature? hottest = null)
    {
        ArgumentNullException.ThrowIfNull(area);
        ArgumentNullException.ThrowIfNull(loads);
        var lines = new List<LineSeries> { Area(area.For(T_C, EightOhm.SafeAreas.SafeArea.Dc), "dc") with { Style = 0 } };
        if (pulse is { } t)
            lines.Add(Area(area.For(T_C, t), QuantityFormat.Short(t)) with { Style = 1 });
        lines.AddRange(loads.Select((load, i) => Load(load) with { Style = 2 + (i % 3) }));
        var marks = new List<Mark>();
        if (limiter is not null)
        {
            // The band is its two edges: what lies between them is where the locus wanders as the sense junction warms.
            Temperature cold = coldest ?? VoltageCurrentLimiter.RoomTemperature, hot = hottest ?? Temperature.FromKelvins(358.15);
            lines.Add(Locus(area, limiter, cold) with { Style = LocusStyle });
            if (hot > cold)
                lines.Add(Locus(area, limiter, hot) with { Style = LocusStyle });
            // Both edges wear one style: their names stand at them.
            marks.AddRange(lines.Where(l => l.Style == LocusStyle).Zip([cold, hot], (line, T) => new Mark(line.X[MarkAt], line.Y[MarkAt], QuantityFormat.Short(T))));
        }

        return Figure.Line(
            $"Safe area of {area.Card.Name}, case at {QuantityFormat.Short(T_C)}",
            Axis.Log("collector to emitter", "V") with { Min = LeastVoltage, Max = area.Card.MaxCollectorEmitterVoltage.Volts },
            Axis.Log("current of one transistor", "A") with { Min = LeastCurrent, Max = 2 * area.Card.SafeAreaLines.Max(l => l.Points[0].Current.Amperes) },
            [.. lines]) with
        {
            Subtitle = loads.Count > 0 ? $"{QuantityFormat.Short(loads[0].Rail)} rail, {QuantityFormat.Short(loads[0].PeakVoltage)} peak, {loads[0].Pairs} {(loads[0].Pairs == 1 ? "pair" : "pairs")}" : null,
            Marks = marks,
            Note = area.Card.Invented ? "The transistor is invented." : null,
        };
    }

    private static LineSeries Area(DeratedArea area, string name)
    {
        var line = area.Curve(ElectricPotential.FromVolts(LeastVoltage), 161);
        return Visible(name, line.X, line.Y);
    }

    private static LineSeries Load(LoadEllipse load)
    {
        const int points = 361;
        var trace = load.Trace(points);
        // A resistor's half-wave goes back the way it came; drawn twice its dots would run together.
        var once = load.Phase.Degrees == 0 ? (points / 2) + 1 : points;
        return Visible(load.Name, trace.X.Take(once), trace.Y.Take(once));
    }

    private static LineSeries Locus(SafeArea area, VoltageCurrentLimiter limiter, Temperature T)
    {
        var ratio = area.Card.MaxCollectorEmitterVoltage.Volts / LeastVoltage;
        double[] v = [.. Enumerable.Range(0, 161).Select(k => LeastVoltage * Math.Pow(ratio, k / 160.0))];
        return Visible($"limiter, {QuantityFormat.Short(T)}", v, v.Select(x => limiter.CurrentAtTransistor(ElectricPotential.FromVolts(x), T).Amperes), MarkAt);
    }

    // A logarithmic chart has no zero: the ends of a half-wave and of a locus run down to the frame's edge and stop there.
    private static LineSeries Visible(string name, IEnumerable<double> v, IEnumerable<double> i, int least = 0)
    {
        var seen = v.Zip(i).Where(p => p.First >= LeastVoltage && p.Second >= LeastCurrent / 2).ToArray();
        return seen.Length > least
            ? new(name, seen.Select(p => p.First), seen.Select(p => p.Second))
            : throw new RefusedValueException(name, $"{name} must come above {LeastVoltage} V and {LeastCurrent} A somewhere to be seen on this chart.");
    }
}
