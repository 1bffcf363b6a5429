using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>The words of an exercise: an interpolated string whose values read as everywhere in the house, <c>$"The peak of {P} in {R}"</c>.</summary>
/// <remarks>After a colon stands the number of significant digits, <c>{I:3}</c>, or <c>{A:dB}</c> for a ratio of voltages in decibels.</remarks>
[InterpolatedStringHandler]
public readonly struct ExerciseText
{
    private readonly StringBuilder _text;

    /// <summary>Begins a text; called by the compiler.</summary>
    /// <param name="literalLength">The letters outside the braces.</param>
    /// <param name="formattedCount">The values.</param>
    public ExerciseText(int literalLength, int formattedCount) => _text = new StringBuilder(literalLength + (8 * formattedCount));

    private ExerciseText(string text) => _text = new StringBuilder(text);

    /// <summary>Plain words.</summary>
    /// <param name="text">The words.</param>
    public static implicit operator ExerciseText(string text) => new(text);

    /// <summary>Adds words; called by the compiler.</summary>
    /// <param name="text">The words.</param>
    public void AppendLiteral(string text) => _text.Append(text);

    /// <summary>Adds a value; called by the compiler.</summary>
    /// <typeparam name="T">The value's type.</typeparam>
    /// <param name="value">A quantity, a number or words.</param>
    public void AppendFormatted<T>(T value) => AppendFormatted(value, "");

    /// <summary>Adds a value; called by the compiler.</summary>
    /// <typeparam name="T">The value's type.</typeparam>
    /// <param name="value">A quantity, a number or words.</param>
    /// <param name="format">Significant digits, or "dB".</param>
    /// <exception cref="FormatException">The format is neither.</exception>
    public void AppendFormatted<T>(T value, string format)
    {
        if (value is null)
            return;
        if (QuantityKinds.Find(value.GetType()) is not { } kind)
            _text.Append(value is IFormattable other ? other.ToString(format, CultureInfo.InvariantCulture) : value.ToString());
        else if (format.Length == 0)
            _text.Append(QuantityFormat.Short(value));
        else if (format == "dB")
            _text.Append(Decibels(kind.ToSi(value)));
        else if (int.TryParse(format, NumberStyles.None, CultureInfo.InvariantCulture, out var digits))
            _text.Append(QuantityFormat.Short(value, digits));
        else
            throw new FormatException($"'{format}' after a colon is not a format of an exercise's text; write a number of digits, or dB.");
    }

    /// <summary>The text.</summary>
    public override string ToString() => _text?.ToString() ?? "";

    internal static string Decibels(double ratio) => $"{QuantityFormat.Short(Math.Round(20 * Math.Log10(Math.Abs(ratio)), 9))} dB";
}
