using System.Runtime.CompilerServices;

namespace EightOhm.Quantities;

/// <summary>Builds <c>$"{x}"</c> with quantities in engineering notation, in any culture; everything else as C# does.</summary>
/// <remarks>The package brings a few lines of source that make this the builder of a program's interpolated strings
/// (<c>EightOhmText</c> set to <c>false</c> in the project leaves them away). A method of your own may take it as a parameter.</remarks>
[InterpolatedStringHandler]
public ref struct QuantityStringHandler
{
    private DefaultInterpolatedStringHandler text;

    /// <summary>Begins a text.</summary>
    /// <param name="literalLength">Characters that are written out.</param>
    /// <param name="formattedCount">Values.</param>
    public QuantityStringHandler(int literalLength, int formattedCount) => text = new(literalLength, formattedCount);

    /// <summary>Adds characters that are written out.</summary>
    /// <param name="value">The characters.</param>
    public void AppendLiteral(string value) => text.AppendLiteral(value);

    /// <summary>Adds a value.</summary>
    /// <typeparam name="T">Its type.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="alignment">The least width; negative to the left.</param>
    /// <param name="format">A format; of a quantity its digits ("3") or unit ("mV").</param>
    public void AppendFormatted<T>(T value, int alignment = 0, string? format = null)
    {
        if (value is not null && InText.Text(value, format) is { } words)
            text.AppendFormatted(words, alignment);
        else
            text.AppendFormatted(value, alignment, format);
    }

    /// <summary>Adds a value.</summary>
    /// <typeparam name="T">Its type.</typeparam>
    /// <param name="value">The value.</param>
    /// <param name="format">A format; of a quantity its digits ("3") or unit ("mV").</param>
    public void AppendFormatted<T>(T value, string? format) => AppendFormatted(value, 0, format);

    /// <summary>Adds characters.</summary>
    /// <param name="value">The characters.</param>
    /// <param name="alignment">The least width; negative to the left.</param>
    /// <param name="format">Not used.</param>
    public void AppendFormatted(ReadOnlySpan<char> value, int alignment = 0, string? format = null) => text.AppendFormatted(value, alignment, format);

    /// <summary>The text, and an end of this builder.</summary>
    /// <returns>The text.</returns>
    public string ToStringAndClear() => text.ToStringAndClear();

    /// <summary>The text so far.</summary>
    public override string ToString() => text.ToString();
}
