namespace EightOhm.Display.Figures;

/// <summary>How values are spread along an axis.</summary>
public enum AxisScale
{
    /// <summary>Equal differences take equal lengths.</summary>
    Linear,

    /// <summary>Equal ratios take equal lengths; every value must be above zero.</summary>
    Log,
}

/// <summary>One axis of a figure: what it shows, in which unit, and how.</summary>
/// <param name="Label">What is shown, e.g. "rated power"; the unit stands at the ticks.</param>
/// <param name="Unit">Symbol of the unit of the values, e.g. "W"; empty for a plain number.</param>
/// <param name="Scale">Linear or logarithmic.</param>
public sealed record Axis(string Label, string Unit = "", AxisScale Scale = AxisScale.Linear)
{
    /// <summary>Where the axis begins, in its unit; found from the data when not given.</summary>
    public double? Min { get; init => field = Finite.Optional(value, "axis", Label, "minimum"); }

    /// <summary>Where the axis ends, in its unit; found from the data when not given.</summary>
    public double? Max { get; init => field = Finite.Optional(value, "axis", Label, "maximum"); }

    /// <summary>A logarithmic axis.</summary>
    public static Axis Log(string label, string unit = "") => new(label, unit, AxisScale.Log);

    /// <summary>An axis of quantities, its unit from their kind: a gain in dB, a ratio in %.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="label">What is shown.</param>
    /// <exception cref="ArgumentException">The type is no quantity that EightOhm knows.</exception>
    public static Axis Of<T>(string label)
        where T : struct => new(label, Plotted.Unit<T>());

    /// <summary>A logarithmic axis of quantities, its unit from their kind.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="label">What is shown.</param>
    /// <exception cref="ArgumentException">The type is no quantity that EightOhm knows.</exception>
    public static Axis LogOf<T>(string label)
        where T : struct => Of<T>(label) with { Scale = AxisScale.Log };
}
