using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>An input's value as a text that can be set again.</summary>
internal static class InputText
{
    /// <summary>Of an entry; the file of a part.</summary>
    public static string Of(Entry entry) => entry.Value switch
    {
        null => "",
        PartFile part => part.File,
        var value => Of(value, entry.Kind!),
    };

    /// <summary>Of a value: as it is shown where that says all of it, a gain that was given in decibels in those, else to the last digit.</summary>
    public static string Of(object value, QuantityKind kind)
    {
        var shown = QuantityFormat.Short(value);
        // A number read in another unit may differ in its last bit.
        return Says(shown, kind, 1e-15, kind.ToSi(value)) ? shown : InDecibels(kind, kind.ToSi(value)) ?? QuantityText.Exact(value);
    }

    /// <summary>Whether a value is a gain that is told in decibels.</summary>
    public static bool IsInDecibels(QuantityKind kind, double si) => kind.Style == FormatStyle.Gain && Of(kind.FromSi(si), kind).EndsWith(" dB", StringComparison.Ordinal);

    // With two places at most; null where that does not say all of it.
    private static string? InDecibels(QuantityKind kind, double si)
    {
        if (kind.Style != FormatStyle.Gain || !(si > 0))
            return null;
        var text = FormattableString.Invariant($"{Gain.FromRatio(si).Decibels:0.##} dB").Replace('-', '−');
        // The last digits are the logarithm's.
        return Says(text, kind, 1e-12, si) ? text : null;
    }

    private static bool Says(string text, QuantityKind kind, double tolerance, double si)
    {
        try
        {
            return kind.ToSi(QuantityText.Parse(text, kind)) is var read && (read.Equals(si) || Math.Abs(read - si) <= tolerance * Math.Abs(si));
        }
        catch (Exception e) when (e is FormatException or ArgumentException or OverflowException)
        {
            return false;
        }
    }
}
