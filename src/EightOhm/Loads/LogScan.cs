namespace EightOhm.Loads;

/// <summary>The least value of a function over a band: many points equally far apart in the logarithm, then a search around the lowest.</summary>
internal static class LogScan
{
    private const int PerDecade = 1000;
    private static readonly double Section = (Math.Sqrt(5) - 1) / 2;

    /// <summary>Where the function is least, and how small it is there; the ends of the band count.</summary>
    public static (double At, double Least) Least(Func<double, double> function, double from, double to)
    {
        double a = Math.Log(from), b = Math.Log(to);
        var steps = Math.Max(8, (int)Math.Ceiling((b - a) / Math.Log(10) * PerDecade));
        double At(int i) => i == 0 ? from : i == steps ? to : Math.Exp(a + ((b - a) * i / steps));
        var (best, least) = (0, double.PositiveInfinity);
        for (var i = 0; i <= steps; i++)
        {
            if (i % 256 == 0)
                Work.Checkpoint();
            var value = function(At(i));
            if (value < least)
                (best, least) = (i, value);
        }

        var (x, y) = Golden(u => function(Math.Exp(u)), Math.Log(At(Math.Max(best - 1, 0))), Math.Log(At(Math.Min(best + 1, steps))));
        return y < least ? (Math.Exp(x), y) : (At(best), least);
    }

    /// <summary>The minimum within an interval that holds one; takes a corner as well as a curve.</summary>
    public static (double At, double Least) Golden(Func<double, double> function, double a, double b)
    {
        double x = b - (Section * (b - a)), y = a + (Section * (b - a)), fx = function(x), fy = function(y);
        for (var i = 0; i < 80 && b - a > 1e-12 * (1 + Math.Abs(a)); i++)
            if (fx < fy)
            {
                (b, y, fy) = (y, x, fx);
                x = b - (Section * (b - a));
                fx = function(x);
            }
            else
            {
                (a, x, fx) = (x, y, fy);
                y = a + (Section * (b - a));
                fy = function(y);
            }

        return fx < fy ? (x, fx) : (y, fy);
    }
}
