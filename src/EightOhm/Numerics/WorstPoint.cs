namespace EightOhm.Numerics;

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

    /// <summary>The greatest value of a function of level (0.01 to 1) and angle (0 to π), and where it is; full level where others are no worse.</summary>
    public static (double Value, double Level, double Angle) Of(Func<double, double, double> value)
    {
        var full = Search(value, 1);
        var any = Search(value, LeastLevel);
        return full.Value >= any.Value - (Tie * Math.Abs(any.Value)) ? full : any;
    }

    private static (double Value, double Level, double Angle) Search(Func<double, double, double> value, double least)
    {
        var levels = least < 1 ? Levels : 1;
        var best = (Value: double.NegativeInfinity, Level: 1.0, Angle: Math.PI / 2);
        for (var i = 0; i < levels; i++)
        {
            Work.Checkpoint();
            for (var j = 1; j < Angles; j++)
                Try(1 - ((1 - least) * i / Levels), Math.PI * j / Angles);
        }

        var fine = least < 1 ? Fine : 0;
        var (level, angle) = (2.0 / Levels, 2 * Math.PI / Angles);
        for (var round = 0; round < Rounds; round++, level *= Shrink, angle *= Shrink)
        {
            var (l, a) = (best.Level, best.Angle);
            for (var i = -fine; i <= fine; i++)
            {
                for (var j = -Fine; j <= Fine; j++)
                    Try(Math.Clamp(l + (level * i / Fine), least, 1), Math.Clamp(a + (angle * j / Fine), 1e-9, Math.PI - 1e-9));
            }
        }

        return double.IsFinite(best.Value)
            ? best
            : throw new InvalidOperationException($"No worst point was found over levels from {least} to 1: the last value was {best.Value}.");

        void Try(double l, double a)
        {
            var v = value(l, a);
            if (v > best.Value)
                best = (v, l, a);
        }
    }
}
