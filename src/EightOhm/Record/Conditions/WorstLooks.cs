using MathNet.Numerics;

namespace EightOhm.Record;

/// <summary>A value at one point of the conditions: its number, and the value itself.</summary>
internal readonly record struct Look(double Number, object Value);

/// <summary>The looks that a search has taken: each point once, and the highest and the lowest of them.</summary>
internal sealed class WorstLooks(Func<double[], Look> value)
{
    // Values that differ by rounding alone are the same: the earlier point stands.
    private const double Tie = 1e-12;

    private readonly Dictionary<double[], double> taken = new(SamePoint.Instance);

    /// <summary>How many points were evaluated.</summary>
    public int Count => taken.Count;

    /// <summary>The highest so far.</summary>
    public (double[] Point, Look Look) Highest { get; private set; }

    /// <summary>The lowest so far.</summary>
    public (double[] Point, Look Look) Lowest { get; private set; }

    /// <summary>The span of the values seen.</summary>
    public double Span => Highest.Look.Number - Lowest.Look.Number;

    /// <summary>Whether one number is above another by more than rounding.</summary>
    public static bool Above(double a, double b) => a > b && a - b > Tie * Math.Max(Math.Abs(a), Math.Abs(b));

    /// <summary>The number at a point.</summary>
    /// <exception cref="RefusedPointException">There is none.</exception>
    public double At(double[] point)
    {
        if (taken.TryGetValue(point, out var known))
            return known;
        Work.Checkpoint();
        var look = Evaluate(point);
        double[] kept = [.. point];
        taken.Add(kept, look.Number);
        if (taken.Count == 1 || Above(look.Number, Highest.Look.Number))
            Highest = (kept, look);
        if (taken.Count == 1 || Above(Lowest.Look.Number, look.Number))
            Lowest = (kept, look);
        return look.Number;
    }

    private Look Evaluate(double[] point)
    {
        Look look;
        try
        {
            look = value(point);
        }
        catch (Exception e) when (e is ArgumentException or ArithmeticException or InvalidOperationException or ShortfallException or NonConvergenceException)
        {
            throw new RefusedPointException(point, e.Message, e);
        }

        return double.IsFinite(look.Number) ? look : throw new RefusedPointException(point, "the value is not a finite number (a division by zero, or the root of a negative number).", null);
    }

    private sealed class SamePoint : IEqualityComparer<double[]>
    {
        public static readonly SamePoint Instance = new();

        public bool Equals(double[]? x, double[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(double[] point)
        {
            var hash = default(HashCode);
            foreach (var place in point)
                hash.Add(place);
            return hash.ToHashCode();
        }
    }
}

/// <summary>A point of the conditions where there is no value: the search ends there, since a worst that leaves it out would be none.</summary>
internal sealed class RefusedPointException(double[] point, string message, Exception? inner) : Exception(message, inner)
{
    /// <summary>The point.</summary>
    public double[] Point { get; } = [.. point];
}
