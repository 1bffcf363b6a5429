using EightOhm.Numerics;

namespace EightOhm.Supply;

/// <summary>What is looked at; a low is looked at upside down.</summary>
internal enum Look
{
    LowRail1,
    LowRail2,
    HighRail1,
    HighRail2,
    Current1,
    Current2,
}

/// <summary>The highest value of a march: of each short panel by three looks, and by a search where a top inside could be the highest.</summary>
internal sealed class Highest
{
    public double Value { get; private set; } = double.NegativeInfinity;

    /// <summary>Sees a panel of a piece.</summary>
    /// <param name="a">Value at its beginning.</param>
    /// <param name="m">In its middle.</param>
    /// <param name="b">At its end.</param>
    /// <param name="segment">The piece.</param>
    /// <param name="look">What is looked at.</param>
    /// <param name="from">Where the panel begins in the piece, s.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="length">How long the piece is.</param>
    public void Panel(double a, double m, double b, ref RailSegment segment, Look look, double from, double to, double length)
    {
        Value = Math.Max(Value, Math.Max(m, Math.Max(a, b)));
        // The parabola through three looks: where its vertex is, in halves of the panel from the middle, and how high.
        var bend = (2 * m) - a - b;
        if (!(bend > 0))
            return;
        var vertex = 0.5 * (b - a) / bend;
        // A top just outside by the parabola may be inside after all, and the other way round.
        if (!(Math.Abs(vertex) < 1.6) || m + (0.5 * vertex * vertex * bend) < Value - (0.1 * bend))
            return;
        var reach = 0.3 * (to - from);
        Search(ref segment, look, Math.Max(0, from - reach), Math.Min(length, to + reach));
    }

    // The panel is short enough for one top.
    private void Search(ref RailSegment segment, Look look, double a, double b)
    {
        var curve = new Looked(ref segment, look);
        Value = Math.Max(Value, GoldenSection.Highest(ref curve, a, b, 22).Value);
    }

    private readonly ref struct Looked(ref RailSegment segment, Look look) : ICurve
    {
        private readonly ref RailSegment segment = ref segment;

        public double At(double x)
        {
            segment.At(x);
            return look switch
            {
                Look.LowRail1 => -segment.V1,
                Look.LowRail2 => -segment.V2,
                Look.HighRail1 => segment.V1,
                Look.HighRail2 => segment.V2,
                Look.Current1 => segment.I1,
                _ => segment.I2,
            };
        }
    }
}
