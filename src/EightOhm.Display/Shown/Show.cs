namespace EightOhm.Display;

/// <summary>Any result as a person sees it, without any notebook: <c>Show.Print(budget)</c>.</summary>
public static class Show
{
    /// <summary>A value as plain text: a quantity in engineering notation, a result as a table in columns, a figure by its description.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>Text for a console; of a type that the register does not know, its own words.</returns>
    /// <example><code>File.WriteAllText("rating.txt", Show.Text(new OutputRating(100.W, 8.Ohm)));</code></example>
    public static string Text(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return DisplayRegister.Find(value.GetType()) is { } form ? form.Text(value) : value.ToString() ?? "";
    }

    /// <summary>A sentence with values in it: quantities in engineering notation, in any culture.</summary>
    /// <param name="sentence">An interpolated string; a number after a colon is the significant digits: <c>$"{T_j:3} at {P}"</c>.</param>
    /// <returns>The sentence.</returns>
    /// <example><code>Show.Text($"{4.7.kOhm} and {220.uF} at {25.degC}")   // 4.7 kΩ and 220 µF at 25 °C</code></example>
    public static string Text(FormattableString sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        return sentence.ToString(SentenceFormat.Instance);
    }

    /// <summary>Writes a value to the console, as <see cref="Text(object)"/> gives it, and ends the line.</summary>
    /// <param name="value">Any value.</param>
    /// <example><code>Show.Print(new OutputRating(100.W, 8.Ohm));</code></example>
    public static void Print(object value) => Console.WriteLine(Text(value));

    /// <summary>Writes a sentence to the console, as <see cref="Text(FormattableString)"/> gives it, and ends the line.</summary>
    /// <param name="sentence">An interpolated string with values in it.</param>
    public static void Print(FormattableString sentence) => Console.WriteLine(Text(sentence));

    /// <summary>A value as HTML that needs no script and fetches nothing.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>A fragment; of a type that the register does not know, its own words, encoded.</returns>
    public static string Html(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return DisplayRegister.Find(value.GetType()) is { } form ? form.Html(value) : ValueText.Words(value);
    }
}
