namespace EightOhm.Numerics;

/// <summary>A figure of a half-wave over level and angle; a struct, so that the looks of the scan are not called through a pointer.</summary>
/// <typeparam name="TInstant">What an angle alone decides: it is worked out once for all levels.</typeparam>
internal interface IHalfWaveFigure<TInstant>
{
    /// <summary>What the angle decides.</summary>
    TInstant Instant(double angle);

    /// <summary>The figure.</summary>
    double At(double level, in TInstant instant);
}

/// <summary>The worst point of all half-waves up to full level: found by a scan over level and angle, then by ever finer scans around the best.</summary>
internal static class WorstPoint
{
    private const int Levels = 65;
    private const int Angles = 241;
    private const int Fine = 4;
    private const int Rounds = 60;
    private const double Shrink = 0.6;
    private const double LeastLevel = 0.01;

    // Into a resistor the worst point is passed at many levels; then full level is the one to name.
    private const double Tie = 1e-9;

    /// <summary>The greatest value of a figure over level (0.01 to 1) and angle (0 to π), and where it is; full level where others are no worse.</summary>
    public static (double Value, double Level, double Angle) Of<TFigure, TInstant>(TFigure figure)
        where TFigure : struct, IHalfWaveFigure<TInstant>
    {
        var instants = new TInstant[Angles - 1];
        for (var j = 1; j < Angles; j++)
            instants[j - 1] = figure.Instant(Math.PI * j / Angles);
        var full = Search(figure, instants, 1);
        var any = Search(figure, instants, LeastLevel);
        return full.Value >= any.Value - (Tie * Math.Abs(any.Value)) ? full : any;
    }

    private static (double Value, double Level, double Angle) Search<TFigure, TInstant>(TFigure figure, TInstant[] instants, double least)
        where TFigure : struct, IHalfWaveFigure<TInstant>
    {
        var levels = least < 1 ? Levels : 1;
        var best = (Value: double.NegativeInfinity, Level: 1.0, Angle: Math.PI / 2);
        for (var i = 0; i < levels; i++)
        {
            Work.Checkpoint();
            var l = 1 - ((1 - least) * i / Levels);
            for (var j = 1; j < Angles; j++)
            {
                if (figure.At(l, instants[j - 1]) is var v && v > best.Value)
                    best = (v, l, Math.PI * j / Angles);
            }
        }

        var fine = least < 1 ? Fine : 0;
        var (level, angle) = (2.0 / Levels, 2 * Math.PI / Angles);
        var near = new (double Angle, TInstant Instant)[(2 * Fine) + 1];
        for (var round = 0; round < Rounds; round++, level *= Shrink, angle *= Shrink)
        {
            var (from, around) = (best.Level, best.Angle);
            for (var j = -Fine; j <= Fine; j++)
            {
                var a = Math.Clamp(around + (angle * j / Fine), 1e-9, Math.PI - 1e-9);
                near[j + Fine] = (a, figure.Instant(a));
            }

            for (var i = -fine; i <= fine; i++)
            {
                var l = Math.Clamp(from + (level * i / Fine), least, 1);
                foreach (var (a, instant) in near)
                {
                    if (figure.At(l, instant) is var v && v > best.Value)
                        best = (v, l, a);
                }
            }
        }

        return double.IsFinite(best.Value)
            ? best
            : throw new InvalidOperationException($"No worst point was found over levels from {least} to 1: the last value was {best.Value}.");
    }
}
