namespace EightOhm.Display.Figures;

/// <summary>Keeps NaN and infinity out of figures, and says where they came from.</summary>
internal static class Finite
{
    public static double Number(double value, string kind, string name, string what) =>
        double.IsFinite(value) ? value : throw new ArgumentException(
            $"The {what} of {kind} \"{name}\" must be a finite number (was {Word(value)}). Look for a division by zero or a root of a negative number before it.");

    public static double? Optional(double? value, string kind, string name, string what) =>
        value is { } number ? Number(number, kind, name, what) : null;

    /// <summary>A copy of the values, so that a figure cannot change after it was checked.</summary>
    public static IReadOnlyList<double> Copy(IEnumerable<double> values, string series, string what)
    {
        ArgumentNullException.ThrowIfNull(values);
        var copy = values.ToArray();
        var bad = Array.FindIndex(copy, value => !double.IsFinite(value));
        return bad < 0 ? Array.AsReadOnly(copy) : throw new ArgumentException(
            $"Series \"{series}\" holds {Word(copy[bad])} as {what} at index {bad}; every value must be a finite number. Leave the point out, or split the series there.");
    }

    private static string Word(double value) =>
        double.IsNaN(value) ? "not a number" : value > 0 ? "plus infinity" : "minus infinity";
}
