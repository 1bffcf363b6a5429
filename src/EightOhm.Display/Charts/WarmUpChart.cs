using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Thermal;

namespace EightOhm.Display;

/// <summary>Charts ready made, each from one line in a cell.</summary>
public static partial class Charts
{
    private const double LeastInMinutes = 300;

    /// <summary>Temperatures of a network over time: the junction is hot before the sink knows.</summary>
    /// <param name="run">The temperatures.</param>
    /// <param name="scale">Linear time, in minutes from 5 min on, or logarithmic from the first instant after 0 s on.</param>
    /// <param name="nodes">The names of the nodes to show; all when none is given.</param>
    /// <exception cref="ArgumentException">There is no node of a name.</exception>
    public static Figure WarmUp(ThermalTransient run, AxisScale scale = AxisScale.Linear, params string[] nodes)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(nodes);
        string[] names = nodes.Length > 0 ? nodes : [.. run.Last.Nodes.Select(n => n.Name)];
        var seconds = run.Of(names[0]).Seconds;
        var from = First(seconds, scale);
        var hottest = names.MaxBy(n => run.Peak(n).Kelvins)!;
        return Figure.Line(
            $"{hottest} reaches {QuantityFormat.Short(run.Peak(hottest), 3)}",
            Time(seconds, scale, out var one),
            new Axis("temperature", "°C"),
            [.. names.Select(n => new LineSeries(n, seconds.Skip(from).Select(t => t / one), run.Of(n).Y.Skip(from)))]);
    }

    /// <summary>Temperatures of junction, sink and sensor over time, for an idle current that is followed: put <see cref="IdleCurrent"/> beneath it.</summary>
    /// <param name="run">The stage over time.</param>
    /// <param name="scale">Linear time, in minutes from 5 min on, or logarithmic from the first instant after 0 s on.</param>
    /// <param name="nodes">The names of the nodes to show; the first junction and the sensor when none is given.</param>
    /// <exception cref="ArgumentException">There is no node of a name.</exception>
    public static Figure WarmUp(BiasOverTime run, AxisScale scale = AxisScale.Linear, params string[] nodes)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(nodes);
        return WarmUp(run.Temperatures, scale, nodes.Length > 0 ? nodes : [run.Of.Junctions[0].Name, run.Of.Sensor.Name]);
    }

    /// <summary>The idle current of one transistor over time, with the current that it was set to.</summary>
    /// <param name="run">The stage over time.</param>
    /// <param name="scale">Linear time, in minutes from 5 min on, or logarithmic from the first instant after 0 s on.</param>
    public static Figure IdleCurrent(BiasOverTime run, AxisScale scale = AxisScale.Linear)
    {
        ArgumentNullException.ThrowIfNull(run);
        var seconds = run.IdleCurrent.Seconds;
        var from = First(seconds, scale);
        var set = run.Of.IdleCurrent;
        return Figure.Line(
            run.RanAwayAt is { } t ? $"The idle current runs away after {QuantityFormat.Short(t, 3)}" : $"Idle current between {QuantityFormat.Short(run.Least, 3)} and {QuantityFormat.Short(run.Greatest, 3)} a transistor",
            Time(seconds, scale, out var one),
            new Axis("idle current", "A"),
            new LineSeries("idle current", seconds.Skip(from).Select(t => t / one), run.IdleCurrent.Y.Skip(from))) with
        {
            Limits = [Limit.Horizontal(set.Amperes, $"set to {QuantityFormat.Short(set, 3)}")],
            Note = "While music plays: what the transistor would draw if it stopped at that instant.",
        };
    }

    // A sink takes minutes; a logarithmic axis begins at milliseconds and stays in seconds.
    private static Axis Time(IReadOnlyList<double> seconds, AxisScale scale, out double one)
    {
        var minutes = scale == AxisScale.Linear && seconds[^1] >= LeastInMinutes;
        one = minutes ? 60 : 1;
        return new("time", minutes ? "min" : "s", scale);
    }

    private static int First(IReadOnlyList<double> seconds, AxisScale scale) =>
        scale == AxisScale.Linear ? 0 : Enumerable.Range(0, seconds.Count).First(i => seconds[i] > 0);
}
