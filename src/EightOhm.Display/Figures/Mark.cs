namespace EightOhm.Display.Figures;

/// <summary>A point of a line chart that deserves a name, e.g. "100 W, 8 Ω → 28.3 V".</summary>
/// <param name="X">Where, in the unit of the x axis.</param>
/// <param name="Y">Where, in the unit of the y axis.</param>
/// <param name="Label">What stands beside the point.</param>
public sealed record Mark(double X, double Y, string Label)
{
    /// <summary>Where, in the unit of the x axis.</summary>
    public double X { get; init => field = Finite.Number(value, "mark", Label, "x"); } = Finite.Number(X, "mark", Label, "x");

    /// <summary>Where, in the unit of the y axis.</summary>
    public double Y { get; init => field = Finite.Number(value, "mark", Label, "y"); } = Finite.Number(Y, "mark", Label, "y");

    /// <summary>A point given by its quantities.</summary>
    /// <typeparam name="TX">The quantity along the x axis.</typeparam>
    /// <typeparam name="TY">The quantity along the y axis.</typeparam>
    /// <param name="x">Where along the x axis.</param>
    /// <param name="y">Where along the y axis.</param>
    /// <param name="label">What stands beside the point; its two values when not given.</param>
    /// <exception cref="ArgumentException">A value is not finite on its axis, such as a gain of zero in dB.</exception>
    public static Mark At<TX, TY>(TX x, TY y, string? label = null)
        where TX : struct
        where TY : struct => new(Plotted.Number<TX>()(x), Plotted.Number<TY>()(y), label ?? $"{Plotted.Text(x)}, {Plotted.Text(y)}");
}

/// <summary>A line that must not, or is not, crossed: a rail, a bound, a target.</summary>
public sealed record Limit
{
    private Limit(double value, string label, bool isVertical) =>
        (Value, Label, IsVertical) = (Finite.Number(value, "limit", label, "value"), label, isVertical);

    /// <summary>Where it lies, in the unit of the axis that it crosses.</summary>
    public double Value { get; }

    /// <summary>What it is.</summary>
    public string Label { get; }

    /// <summary>True when it stands at an x value, false when it lies at a y value.</summary>
    public bool IsVertical { get; }

    /// <summary>A limit at a y value.</summary>
    public static Limit Horizontal(double y, string label) => new(y, label, false);

    /// <summary>A limit at an x value.</summary>
    public static Limit Vertical(double x, string label) => new(x, label, true);

    /// <summary>A limit at a quantity of the y axis.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="y">Where.</param>
    /// <param name="label">What it is; its value when not given.</param>
    public static Limit Horizontal<T>(T y, string? label = null)
        where T : struct => new(Plotted.Number<T>()(y), label ?? Plotted.Text(y), false);

    /// <summary>A limit at a quantity of the x axis.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="x">Where.</param>
    /// <param name="label">What it is; its value when not given.</param>
    public static Limit Vertical<T>(T x, string? label = null)
        where T : struct => new(Plotted.Number<T>()(x), label ?? Plotted.Text(x), true);
}
