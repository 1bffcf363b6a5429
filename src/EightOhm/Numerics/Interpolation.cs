namespace EightOhm.Numerics;

/// <summary>Straight lines between points: the one linear interpolation.</summary>
/// <remarks><c>LinearSpline</c> of MathNet.Numerics computes and keeps slopes of all its lines, and gives a point that stands in the table by them;
/// here nothing is allocated, spans do, and a point of the table comes out to the last bit.</remarks>
internal static class Interpolation
{
    /// <summary>The value at a place between the first and the last point; no allocation.</summary>
    /// <param name="xs">Places, rising; one or more.</param>
    /// <param name="ys">Values there.</param>
    /// <param name="x">Where; not below the first place and not above the last, which the caller has seen to: outside, the first or last line goes on.</param>
    public static double Linear(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double x)
    {
        if (xs.Length == 1)
            return ys[0];
        var i = xs.BinarySearch(x);
        if (i >= 0)
            return ys[i];
        i = Math.Clamp(~i, 1, xs.Length - 1);
        return ys[i - 1] + ((ys[i] - ys[i - 1]) * ((x - xs[i - 1]) / (xs[i] - xs[i - 1])));
    }
}
