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

/// <summary>A line through points, in SI units of the two axes.</summary>
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
