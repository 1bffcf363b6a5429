namespace EightOhm.Display;

/// <summary>Any result as a person sees it, without any notebook: <c>Console.WriteLine(Show.Text(budget))</c>.</summary>
public static class Show
{
    /// <summary>A value as plain text: a quantity in engineering notation, a result as a table in columns, a figure by its description.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>Text for a console; of a type that the register does not know, its own words.</returns>
    /// <example><code>Console.WriteLine(Show.Text(new OutputRating(100.W, 8.Ohm)));</code></example>
    public static string Text(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return DisplayRegister.Find(value.GetType()) is { } form ? form.Text(value) : value.ToString() ?? "";
    }

    /// <summary>A value as HTML that needs no script and fetches nothing.</summary>
    /// <param name="value">Any value.</param>
    /// <returns>A fragment; of a type that the register does not know, its own words, encoded.</returns>
    public static string Html(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return DisplayRegister.Find(value.GetType()) is { } form ? form.Html(value) : ValueText.Words(value);
    }
}
