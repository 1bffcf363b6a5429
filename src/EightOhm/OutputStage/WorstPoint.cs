namespace EightOhm.OutputStage;

/// <summary>The worst point of all half-waves up to full level: found by a scan over level and angle, then by ever finer scans around the best.</summary>
internal static class WorstPoint
{
    private const int Levels = 65;
    private const int Angles = 241;
    private const int Fine = 4;
    private const int Rounds = 60;
    private const double Shrink = 0.6;
    private const double LeastLevel = 0.01;

    /// <summary>The greatest value of a function of level (0.01 to 1) and angle (0 to π), and where it is.</summary>
    public static (double Value, double Level, double Angle) Of(Func<double, double, double> value)
    {
        var best = (Value: double.NegativeInfinity, Level: 1.0, Angle: Math.PI / 2);
        for (var i = 0; i < Levels; i++)
        {
            Work.Checkpoint();
            for (var j = 1; j < Angles; j++)
                Try(LeastLevel + ((1 - LeastLevel) * i / (Levels - 1)), Math.PI * j / Angles);
        }

        var (level, angle) = (2.0 / Levels, 2 * Math.PI / Angles);
        for (var round = 0; round < Rounds; round++, level *= Shrink, angle *= Shrink)
        {
            var (l, a) = (best.Level, best.Angle);
            for (var i = -Fine; i <= Fine; i++)
            {
                for (var j = -Fine; j <= Fine; j++)
                    Try(Math.Clamp(l + (level * i / Fine), LeastLevel, 1), Math.Clamp(a + (angle * j / Fine), 1e-9, Math.PI - 1e-9));
            }
        }

        return double.IsFinite(best.Value)
            ? best
            : throw new InvalidOperationException($"No worst point was found over levels from {LeastLevel} to 1: the last value was {best.Value}.");

        void Try(double l, double a)
        {
            var v = value(l, a);
            if (v > best.Value)
                best = (v, l, a);
        }
    }
}
