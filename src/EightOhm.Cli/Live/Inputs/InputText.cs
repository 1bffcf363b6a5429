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

    /// <summary>Of a value: as it is shown where that says all of it, else to the last digit.</summary>
    public static string Of(object value, QuantityKind kind)
    {
        var shown = QuantityFormat.Short(value);
        try
        {
            return kind.ToSi(QuantityText.Parse(shown, kind)).Equals(kind.ToSi(value)) ? shown : QuantityText.Exact(value);
        }
        catch (Exception e) when (e is FormatException or ArgumentException or OverflowException)
        {
            return QuantityText.Exact(value);
        }
    }
}
