namespace EightOhm.Numerics;

/// <summary>The highest value of a curve that is seen panel by panel: of each short panel by three looks, and by a search where a top inside could be the highest.</summary>
internal sealed class PanelHighest
{
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>Sees a panel.</summary>
    /// <param name="a">Value at its beginning.</param>
    /// <param name="m">In its middle.</param>
    /// <param name="b">At its end.</param>
    /// <param name="curve">The curve, smooth over the piece.</param>
    /// <param name="from">Where the panel begins in the piece.</param>
    /// <param name="to">Where it ends; so near that there is one top between at most.</param>
    /// <param name="length">How long the piece is, from 0.</param>
    public void Panel<TCurve>(double a, double m, double b, ref TCurve curve, double from, double to, double length)
        where TCurve : struct, ICurve, allows ref struct
    {
        Value = Math.Max(Value, Math.Max(m, Math.Max(a, b)));
        // The parabola through three looks: where its vertex is, in halves of the panel from the middle, and how high.
        var bend = (2 * m) - a - b;
        var vertex = 0.5 * (b - a) / bend;
        // A top just outside by the parabola may be inside after all, and the other way round.
        if (bend > 0 && Math.Abs(vertex) < 1.6 && m + (0.5 * vertex * vertex * bend) >= Value - (0.1 * bend))
        {
            var reach = 0.3 * (to - from);
            Value = Math.Max(Value, GoldenSection.Highest(ref curve, Math.Max(0, from - reach), Math.Min(length, to + reach), 22).Value);
        }
        else if (from == 0 && curve.At(1e-3 * to) > a)
        {
            // What turns soon after a piece begins leaves no trace in the middle: only the slope at its beginning tells.
            Value = Math.Max(Value, GoldenSection.Highest(ref curve, 0, to, 22).Value);
        }
    }
}
