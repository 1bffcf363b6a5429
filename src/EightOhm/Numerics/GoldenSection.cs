namespace EightOhm.Numerics;

/// <summary>A curve that a search looks at; a struct, so that the looks of a hot loop are neither allocated nor called through a pointer.</summary>
internal interface ICurve
{
    /// <summary>The curve's value.</summary>
    double At(double x);
}

/// <summary>What a search has narrowed a top down to.</summary>
/// <param name="Low">Where the interval begins.</param>
/// <param name="High">Where it ends.</param>
/// <param name="At">The place of the highest value seen inside.</param>
/// <param name="Value">That value.</param>
internal readonly record struct Top(double Low, double High, double At, double Value);

/// <summary>Golden section: the top of a curve within an interval that holds one; it takes a corner as well as a curve.</summary>
/// <remarks>A smooth top is flat: its place is known to half the digits of its value. For the least of a curve, search its negative.
/// MathNet.Numerics has one (<c>GoldenSectionMinimizer</c>), which looks outside the interval where the top is at an end, refuses there, and allocates at each look.</remarks>
internal static class GoldenSection
{
    private const double Part = 0.6180339887498949;

    /// <summary>Narrows the interval around the top.</summary>
    /// <param name="curve">What is looked at.</param>
    /// <param name="low">Where the interval begins.</param>
    /// <param name="high">Where it ends.</param>
    /// <param name="steps">How often it is narrowed at most; each step leaves 0.618 of it.</param>
    /// <param name="width">How narrow is narrow enough.</param>
    /// <param name="enough">A value above this ends the search at once.</param>
    public static Top Highest<TCurve>(ref TCurve curve, double low, double high, int steps, double width = 0, double enough = double.PositiveInfinity)
        where TCurve : struct, ICurve, allows ref struct
    {
        double c = high - (Part * (high - low)), d = low + (Part * (high - low)), atC = curve.At(c), atD = curve.At(d);
        for (var i = 0; i < steps && high - low > width && !(atC > enough) && !(atD > enough); i++)
        {
            if (atC > atD)
            {
                (high, d, atD) = (d, c, atC);
                c = high - (Part * (high - low));
                atC = curve.At(c);
            }
            else
            {
                (low, c, atC) = (c, d, atD);
                d = low + (Part * (high - low));
                atD = curve.At(d);
            }
        }

        return atC > atD ? new(low, high, c, atC) : new(low, high, d, atD);
    }

    /// <summary>The same for a function.</summary>
    /// <param name="curve">What is looked at.</param>
    /// <param name="low">Where the interval begins.</param>
    /// <param name="high">Where it ends.</param>
    /// <param name="width">How narrow is narrow enough.</param>
    public static Top Highest(Func<double, double> curve, double low, double high, double width)
    {
        var called = new Called(curve);
        return Highest(ref called, low, high, 200, width);
    }

    private readonly struct Called(Func<double, double> curve) : ICurve
    {
        public double At(double x) => curve(x);
    }
}
