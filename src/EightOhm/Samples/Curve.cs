using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;

namespace EightOhm.Samples;

/// <summary>Values of one quantity over another, sampled: what a room gives to a table, a figure or the next room.</summary>
/// <remarks>Held as plain numbers in the units in which the kinds are kept (V, A, s, …; °C for a temperature), which figures take as they are; quantities at the edge.</remarks>
/// <typeparam name="TX">The quantity along the curve.</typeparam>
/// <typeparam name="TY">The quantity that is told.</typeparam>
public class Curve<TX, TY>
    where TX : struct
    where TY : struct
{
    private static readonly QuantityKind KindX = QuantityKinds.Of(typeof(TX)), KindY = QuantityKinds.Of(typeof(TY));

    private readonly double[] xs, ys;

    /// <summary>Makes a curve from its points.</summary>
    /// <param name="points">One or more, in the order in which the curve runs.</param>
    /// <exception cref="ArgumentException">There is no point.</exception>
    public Curve(IEnumerable<(TX X, TY Y)> points)
        : this(Numbers(points, p => KindX.ToSi(p.X)), Numbers(points, p => KindY.ToSi(p.Y)))
    {
    }

    /// <summary>A curve on arrays that are not copied, in the kinds' own units.</summary>
    internal Curve(double[] xs, double[] ys)
    {
        if (xs.Length == 0 || xs.Length != ys.Length)
            throw new ArgumentException($"A curve has one point or more, and as many values as places (were {ys.Length} and {xs.Length}).", nameof(xs));
        (this.xs, this.ys) = (xs, ys);
    }

    /// <summary>How many points.</summary>
    public int Count => xs.Length;

    /// <summary>The places as plain numbers, in the unit in which the kind is kept.</summary>
    public IReadOnlyList<double> X => xs;

    /// <summary>The values as plain numbers, in the unit in which the kind is kept.</summary>
    public IReadOnlyList<double> Y => ys;

    /// <summary>The first place.</summary>
    public TX First => FromX(xs[0]);

    /// <summary>The last place.</summary>
    public TX Last => FromX(xs[^1]);

    /// <summary>The greatest of the values.</summary>
    public TY Max => FromY(ys[HighestPlace()]);

    /// <summary>Where the greatest value stands; the first place of several.</summary>
    public TX MaxAt => FromX(xs[HighestPlace()]);

    /// <summary>The least of the values.</summary>
    public TY Min => FromY(ys.Min());

    /// <summary>A point.</summary>
    /// <param name="i">Its number, from 0.</param>
    public (TX X, TY Y) this[int i] => (FromX(xs[i]), FromY(ys[i]));

    /// <summary>The value at a place, straight between the points.</summary>
    /// <param name="x">From the first to the last place.</param>
    /// <returns>The value there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside the curve.</exception>
    /// <exception cref="InvalidOperationException">The places do not rise from point to point: such a curve has no one value at a place.</exception>
    [Worked("read from the points, straight between them")]
    public TY At(TX x)
    {
        for (var i = 1; i < xs.Length; i++)
            if (!(xs[i] > xs[i - 1]))
                throw new InvalidOperationException($"This curve turns back at {QuantityFormat.Short(FromX(xs[i - 1]))}: it has no one value at a place. Read its points instead.");
        var number = KindX.ToSi(x);
        if (!(number >= xs[0] && number <= xs[^1]))
            Guard.Refuse(nameof(x), x, $"from {QuantityFormat.Short(First)} to {QuantityFormat.Short(Last)}", "Outside its points the curve is not known.");
        return FromY(Interpolation.Linear(xs, ys, number));
    }

    private static TX FromX(double number) => (TX)KindX.FromSi(number);

    private static TY FromY(double number) => (TY)KindY.FromSi(number);

    private static double[] Numbers(IEnumerable<(TX X, TY Y)> points, Func<(TX X, TY Y), double> number)
    {
        ArgumentNullException.ThrowIfNull(points);
        return [.. points.Select(number)];
    }

    private int HighestPlace()
    {
        var best = 0;
        for (var i = 1; i < ys.Length; i++)
            best = ys[i] > ys[best] ? i : best;
        return best;
    }
}
