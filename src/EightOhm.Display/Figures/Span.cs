namespace EightOhm.Display.Figures;

/// <summary>A distance that is read off a figure, such as a phase margin: a line between two places with a bar at each end and its name beside it.</summary>
public sealed record Span
{
    private Span(double fromX, double fromY, double toX, double toY, string label)
    {
        FromX = Finite.Number(fromX, "span", label, "beginning");
        FromY = Finite.Number(fromY, "span", label, "beginning");
        ToX = Finite.Number(toX, "span", label, "end");
        ToY = Finite.Number(toY, "span", label, "end");
        Label = label;
    }

    /// <summary>Where it begins, in the unit of the x axis.</summary>
    public double FromX { get; }

    /// <summary>Where it begins, in the unit of the y axis.</summary>
    public double FromY { get; }

    /// <summary>Where it ends, in the unit of the x axis.</summary>
    public double ToX { get; }

    /// <summary>Where it ends, in the unit of the y axis.</summary>
    public double ToY { get; }

    /// <summary>What it is, e.g. "phase margin 73°".</summary>
    public string Label { get; }

    /// <summary>True when it stands upright.</summary>
    public bool IsVertical => FromX == ToX;

    /// <summary>A distance along the y axis.</summary>
    /// <param name="x">Where it stands, in the unit of the x axis.</param>
    /// <param name="from">Its beginning, in the unit of the y axis.</param>
    /// <param name="to">Its end, in the unit of the y axis.</param>
    /// <param name="label">What it is.</param>
    /// <exception cref="ArgumentException">A value is not finite.</exception>
    public static Span Vertical(double x, double from, double to, string label) => new(x, from, x, to, label);

    /// <summary>A distance along the x axis.</summary>
    /// <param name="y">Where it lies, in the unit of the y axis.</param>
    /// <param name="from">Its beginning, in the unit of the x axis.</param>
    /// <param name="to">Its end, in the unit of the x axis.</param>
    /// <param name="label">What it is.</param>
    /// <exception cref="ArgumentException">A value is not finite.</exception>
    public static Span Horizontal(double y, double from, double to, string label) => new(from, y, to, y, label);

    /// <summary>A distance along the y axis, given by its quantities.</summary>
    /// <typeparam name="TX">The quantity along the x axis.</typeparam>
    /// <typeparam name="TY">The quantity along the y axis.</typeparam>
    /// <param name="x">Where it stands.</param>
    /// <param name="from">Its beginning.</param>
    /// <param name="to">Its end.</param>
    /// <param name="label">What it is.</param>
    /// <exception cref="ArgumentException">A value is not finite on its axis.</exception>
    public static Span Vertical<TX, TY>(TX x, TY from, TY to, string label)
        where TX : struct
        where TY : struct => Vertical(Plotted.Number<TX>()(x), Plotted.Number<TY>()(from), Plotted.Number<TY>()(to), label);
}
