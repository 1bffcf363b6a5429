namespace EightOhm.Display.Figures;

/// <summary>Points along an axis, for the lines of a figure.</summary>
public static class Sweep
{
    /// <summary>Points evenly spread over a logarithmic axis, both ends included.</summary>
    /// <param name="from">The first; greater than 0.</param>
    /// <param name="to">The last; greater than the first.</param>
    /// <param name="perDecade">About how many points a factor of ten has; from 1 to 10 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite or not positive, the ends are not in order, or there are too few or too many points.</exception>
    public static double[] Log(double from, double to, int perDecade = 20)
    {
        if (!(from > 0) || !double.IsFinite(from))
            throw new ArgumentOutOfRangeException(nameof(from), "A logarithmic axis begins above 0: give the first point, for example 20 for 20 Hz.");
        if (!(to > from) || !double.IsFinite(to))
            throw new ArgumentOutOfRangeException(nameof(to), "The last point must lie above the first.");
        if (perDecade is < 1 or > 10_000)
            throw new ArgumentOutOfRangeException(nameof(perDecade), "Give from 1 to 10 000 points a decade; 20 draw a smooth line.");
        var decades = Math.Log10(to / from);
        var steps = Math.Max(1, (int)Math.Round(decades * perDecade));
        var points = new double[steps + 1];
        for (var i = 0; i <= steps; i++)
            points[i] = from * Math.Pow(10, decades * i / steps);
        points[^1] = to;
        return points;
    }
}
