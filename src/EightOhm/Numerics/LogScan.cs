namespace EightOhm.Numerics;

/// <summary>The least value of a function over a band of frequencies, which are looked at in equal ratios.</summary>
internal static class LogScan
{
    private const int PerDecade = 1000;

    /// <summary>Where the function is least, and how small it is there; the ends of the band count. Of equal values the lowest frequency is taken.</summary>
    public static (double At, double Least) Least(Func<double, double> function, double from, double to)
    {
        double a = Math.Log(from), b = Math.Log(to);
        var steps = Math.Max(8, (int)Math.Ceiling((b - a) / Math.Log(10) * PerDecade));
        // The ends themselves, not what a logarithm and back makes of them.
        double At(double logarithm) => logarithm <= a ? from : logarithm >= b ? to : Math.Exp(logarithm);
        var (x, value) = Scan.Highest(u => -function(At(u)), b, a, steps, 1e-12 * (1 + Math.Abs(a)));
        return (At(x), -value);
    }
}
