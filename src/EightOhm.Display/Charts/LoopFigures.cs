using System.Numerics;
using EightOhm.Display.Figures;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <content>What is drawn of a loop gain, whether it comes from a transfer function or from a circuit.</content>
public static partial class Charts
{
    // Farther from the circle of gain one the curve tells nothing of stability.
    private const double PlaneReach = 2.2;

    private static bool InPlane(Complex t) => t.Magnitude < PlaneReach;

    private static StackedFigures LoopFigures(
        string title, LineSeries[] magnitudes, LineSeries[] phases, bool isStable, IReadOnlyList<(Frequency At, Angle Phase, Angle? Margin)> crossovers, (Frequency At, Gain T)? at, params IReadOnlyList<Span> gainMargins)
    {
        Limit[] vertical = at is { } mark ? [Limit.Vertical(mark.At.Hertz, QuantityFormat.Short(mark.At))] : [];
        var magnitude = Figure.Line(title, Axis.Log("frequency", "Hz"), new Axis("magnitude", "dB"), magnitudes) with
        {
            Subtitle = isStable ? null : "unstable: the margins say nothing",
            Marks = [
                .. crossovers.Select(c => new Mark(c.At.Hertz, 0, $"crossover {QuantityFormat.Short(c.At, 3)}")),
                .. at is { } there ? [new Mark(there.At.Hertz, there.T.Decibels, $"{QuantityFormat.Short(there.T.Decibels, 3)} dB")] : Array.Empty<Mark>(),
            ],
            Limits = [Limit.Horizontal(0, "one"), .. vertical],
            Spans = isStable ? gainMargins : [],
        };
        var phase = Figure.Line("Its phase", Axis.Log("frequency", "Hz"), new Axis("phase", "°"), phases) with
        {
            Spans = isStable ? [.. crossovers.Where(c => c.Margin is not null).Select(c => Span.Vertical(c.At, c.Phase - c.Margin!.Value, c.Phase, $"margin {QuantityFormat.Short(c.Margin!.Value, 3)}"))] : [],
            Limits = [Limit.Horizontal(-180, "−180°"), .. vertical],
        };
        return new StackedFigures(magnitude, phase);
    }

    private static Figure LoopPlane(string title, IReadOnlyList<Complex> values, IReadOnlyList<Mark> crossings)
    {
        double[] around = Sweep.Linear(0, 2 * Math.PI, 121);
        return Figure.Line(
            title,
            new Axis("real part"),
            new Axis("imaginary part"),
            new LineSeries("T", values.Select(z => z.Real), values.Select(z => z.Imaginary)),
            new LineSeries("gain of one", around.Select(Math.Cos), around.Select(Math.Sin))) with
        {
            HasEqualScales = true,
            Marks = [new(-1, 0, "−1"), .. crossings],
        };
    }

    private static Mark Place(Complex t, Frequency f) => new(t.Real, t.Imaginary, QuantityFormat.Short(f, 3));
}
