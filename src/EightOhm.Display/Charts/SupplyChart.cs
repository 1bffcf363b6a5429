using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Display;

/// <summary>The charts of the trade.</summary>
public static partial class Charts
{
    /// <summary>Rail and winding current on one time axis, with levels across the rail: the voltage-swing budget's, or any other.</summary>
    /// <param name="wave">The rail over time.</param>
    /// <param name="levels">Name and level of each line, such as ("peak output", 40.V); none when left away.</param>
    /// <param name="title">What the figure says; made from the rail when not given.</param>
    [Shows]
    public static StackedFigures Supply(RailWaveform wave, IReadOnlyList<(string Name, ElectricPotential Level)>? levels = null, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(wave);
        double low = wave.Rail.Min(), high = wave.Rail.Max();
        var time = new Axis("time", "s");
        // A level that would lie on the frame is lost in it: leave some air below the lowest.
        var lowest = (levels ?? []).Select(l => l.Level.Volts).Where(v => v < low).DefaultIfEmpty(double.NaN).Min();
        double? floor = double.IsNaN(lowest) ? null : Math.Floor(lowest - (0.1 * (high - lowest)));
        return new StackedFigures(
            Figure.Line(title ?? $"The rail: {QuantityFormat.Short(ElectricPotential.FromVolts(low), 3)} at its minimum, {QuantityFormat.Short(ElectricPotential.FromVolts(high), 3)} at its peak", time, new Axis("rail", "V") { Min = floor }, new LineSeries("rail", wave.Time, wave.Rail)) with
            {
                Limits = [.. (levels ?? []).Select(l => Limit.Horizontal(l.Level.Volts, $"{l.Name}, {QuantityFormat.Short(l.Level, 3)}"))],
            },
            Figure.Line($"The winding feeds it in pulses of {QuantityFormat.Short(ElectricCurrent.FromAmperes(wave.Winding.Max()), 3)}", time, new Axis("current", "A"),
                new LineSeries("winding", wave.Time, wave.Winding), new LineSeries("load", wave.Time, wave.Load)));
    }

    /// <summary>Rail and winding current of a solved rail over one cycle, with levels across the rail.</summary>
    /// <param name="at">The rail in its steady state.</param>
    /// <param name="levels">Name and level of each line; none when left away.</param>
    /// <param name="title">What the figure says; made from the rail when not given.</param>
    public static StackedFigures Supply(RailFigures at, IReadOnlyList<(string Name, ElectricPotential Level)>? levels = null, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(at);
        return Supply(at.OverOneCycle(401), levels, title);
    }
}
