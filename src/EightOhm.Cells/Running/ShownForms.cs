using System.Collections;
using System.Globalization;
using System.Net;
using EightOhm.Display;

namespace EightOhm.Cells.Running;

/// <summary>How a value is shown below its cell, by MIME type: what Display's register says; of what it does not know, its own words.</summary>
public static class ShownForms
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";
    private const string Tex = "text/latex";

    // A list without end is not shown to its end.
    private const int MostItems = 100;

    /// <summary>The forms of a value.</summary>
    /// <param name="value">Any value; null too.</param>
    /// <returns>Texts by MIME type.</returns>
    public static IReadOnlyList<KeyValuePair<string, string>> Of(object? value) => value switch
    {
        null => [new(Plain, "null")],
        RawHtml html => [new(Html, html.Text)],
        _ when DisplayRegister.Find(value.GetType()) is { } form => Registered(form, value),
        string text => [new(Plain, text)],
        _ => Words(WordsOf(value)),
    };

    private static List<KeyValuePair<string, string>> Registered(DisplayForm form, object value)
    {
        var forms = new List<KeyValuePair<string, string>> { new(Html, form.Html(value)), new(Plain, form.Text(value)) };
        if (form.Latex is { } latex)
            forms.Add(new(Tex, latex(value)));
        return forms;
    }

    private static List<KeyValuePair<string, string>> Words(string words) =>
        [new(Html, $"<pre class=\"eo-words\" style=\"white-space:pre-wrap\">{WebUtility.HtmlEncode(words)}</pre>"), new(Plain, words)];

    private static string WordsOf(object? value) => value switch
    {
        null => "null",
        string text => text,
        IEnumerable list => List(list),
        _ when DisplayRegister.Find(value.GetType()) is { } form => form.Text(value),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private static string List(IEnumerable list)
    {
        var first = list.Cast<object?>().Take(MostItems + 1).Select(WordsOf).ToList();
        return first.Count == 0 ? "(nothing in it)"
            : first.Count > MostItems ? string.Join(", ", first.Take(MostItems)) + ", …"
            : string.Join(", ", first);
    }
}

/// <summary>HTML as it stands.</summary>
/// <param name="Text">A fragment.</param>
public sealed record RawHtml(string Text);
