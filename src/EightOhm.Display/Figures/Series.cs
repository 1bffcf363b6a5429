using EightOhm.Samples;

namespace EightOhm.Display.Figures;

/// <summary>One set of values in a figure.</summary>
public abstract record Series
{
    private protected Series(string name) => Name = name;

    /// <summary>What the values are, e.g. "into 8 Ω".</summary>
    public string Name { get; init; }

    /// <summary>Which colour, dash or hatch, and marker shape it wears (0, 1, 2 …); its place in the figure when not given.</summary>
    public int? Style { get; init; }
}

/// <summary>A line through points, in the units of the two axes; it may be filled down to another line.</summary>
public sealed record LineSeries : Series
{
    /// <summary>A line through the points (x, y), in the order given.</summary>
    /// <exception cref="ArgumentException">A value is not finite, there is no point, or the lists differ in length.</exception>
    public LineSeries(string name, IEnumerable<double> x, IEnumerable<double> y) : base(name)
    {
        X = Finite.Copy(x, name, "x");
        Y = Finite.Copy(y, name, "y");
        if (X.Count == 0 || X.Count != Y.Count)
            throw new ArgumentException($"Series \"{name}\" needs as many x as y values and at least one (had {X.Count} and {Y.Count}).");
    }

    /// <summary>The values along the x axis.</summary>
    public IReadOnlyList<double> X { get; }

    /// <summary>The values along the y axis.</summary>
    public IReadOnlyList<double> Y { get; }

    /// <summary>The lower edge of what is filled below the line, a value for each point; null for a line alone.</summary>
    /// <exception cref="ArgumentException">A value is not finite, or there are not as many as points.</exception>
    public IReadOnlyList<double>? FilledTo
    {
        get;
        init
        {
            field = value is null ? null : Finite.Copy(value, Name, "lower edge");
            if (field is not null && field.Count != X.Count)
                throw new ArgumentException($"Series \"{Name}\" has {X.Count} points and {field.Count} values of a lower edge; each point needs one.");
        }
    }

    /// <summary>A line through quantities, in the units that <see cref="Axis.Of{T}"/> gives their axes.</summary>
    /// <typeparam name="TX">The quantity along the x axis.</typeparam>
    /// <typeparam name="TY">The quantity along the y axis.</typeparam>
    /// <param name="name">What the values are.</param>
    /// <param name="x">The places.</param>
    /// <param name="y">The values.</param>
    /// <exception cref="ArgumentException">A value is not finite on its axis (a gain of zero has no dB), there is no point, or the lists differ in length.</exception>
    public static LineSeries Of<TX, TY>(string name, IEnumerable<TX> x, IEnumerable<TY> y)
        where TX : struct
        where TY : struct
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        return new(name, x.Select(Plotted.Number<TX>()), y.Select(Plotted.Number<TY>()));
    }

    /// <summary>A line through the points of a sampled curve.</summary>
    /// <typeparam name="TX">The quantity along the curve.</typeparam>
    /// <typeparam name="TY">The quantity that is told.</typeparam>
    /// <param name="name">What the values are.</param>
    /// <param name="curve">The curve.</param>
    /// <exception cref="ArgumentException">A value is not finite on its axis.</exception>
    public static LineSeries Of<TX, TY>(string name, Curve<TX, TY> curve)
        where TX : struct
        where TY : struct
    {
        ArgumentNullException.ThrowIfNull(curve);
        var points = Enumerable.Range(0, curve.Count).Select(i => curve[i]).ToArray();
        return Of(name, points.Select(p => p.X), points.Select(p => p.Y));
    }

    /// <summary>What lies between two lines, such as the least and the most of a spread; its upper edge is drawn.</summary>
    /// <typeparam name="TX">The quantity along the x axis.</typeparam>
    /// <typeparam name="TY">The quantity along the y axis.</typeparam>
    /// <param name="name">What the band is.</param>
    /// <param name="x">The places.</param>
    /// <param name="low">The lower edge.</param>
    /// <param name="high">The upper edge.</param>
    /// <exception cref="ArgumentException">A value is not finite on its axis, there is no point, or the lists differ in length.</exception>
    public static LineSeries Band<TX, TY>(string name, IEnumerable<TX> x, IEnumerable<TY> low, IEnumerable<TY> high)
        where TX : struct
        where TY : struct
    {
        ArgumentNullException.ThrowIfNull(low);
        return Of(name, x, high) with { FilledTo = [.. low.Select(Plotted.Number<TY>())] };
    }
}

/// <summary>A bar for each label, from zero to its value.</summary>
public sealed record BarSeries : Series
{
    /// <summary>A bar of height <paramref name="values"/> over each of <paramref name="labels"/>.</summary>
    /// <exception cref="ArgumentException">A value is not finite, there is no bar, or the lists differ in length.</exception>
    public BarSeries(string name, IEnumerable<string> labels, IEnumerable<double> values) : base(name)
    {
        ArgumentNullException.ThrowIfNull(labels);
        Labels = Array.AsReadOnly(labels.ToArray());
        Values = Finite.Copy(values, name, "value");
        if (Values.Count == 0 || Labels.Count != Values.Count)
            throw new ArgumentException($"Series \"{name}\" needs a label for each value and at least one (had {Labels.Count} and {Values.Count}).");
    }

    /// <summary>What stands below each bar.</summary>
    public IReadOnlyList<string> Labels { get; }

    /// <summary>The height of each bar, in the unit of the y axis.</summary>
    public IReadOnlyList<double> Values { get; }
}
