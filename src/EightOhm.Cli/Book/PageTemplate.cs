using System.Net;

namespace EightOhm.Cli.Book;

/// <summary>The frame of every page of the book. It loads nothing but the files beside it.</summary>
internal static class PageTemplate
{
    /// <summary>Stands in every page, and tells a book of ours from any other folder.</summary>
    public const string Mark = "<meta name=\"generator\" content=\"EightOhm book\">";

    public const string IndexFile = "index.html";

    public const string StyleFile = "book.css";

    /// <summary>Makes figures interactive; a page without it shows them all the same.</summary>
    public const string ScriptFile = "plotly.min.js";

    public static string Page(string title, string root, string navigation, string body) =>
        Frame(title, $"<link rel=\"stylesheet\" href=\"{root}{StyleFile}\">\n{Scripts(root, body)}", navigation, body);

    /// <summary>A page that needs no file beside it.</summary>
    public static string Alone(string title, string body) => Frame(title, $"<style>\n{Style()}</style>\n", "", body);

    private static string Frame(string title, string style, string navigation, string body) =>
        $"""
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        {Mark}
        <title>{Escape(title)}</title>
        <link rel="icon" href="data:,">
        {style}</head>
        <body>
        {navigation}
        <main>
        {body}
        </main>
        {navigation}
        </body>
        </html>

        """;

    /// <summary>A sentence that stands at the top of every page; nothing for none.</summary>
    public static string Banner(string sentence) =>
        sentence.Length == 0 ? "" : $"<p class=\"what-if\" role=\"note\">{Escape(sentence)}</p>\n";

    private static string Scripts(string root, string body) =>
        body.Contains("class=\"eo-figure\"", StringComparison.Ordinal) ? $"<script defer src=\"{root}{ScriptFile}\"></script>\n" : "";

    /// <summary>A file of the book as a link says it.</summary>
    public static string Address(string file) => string.Join('/', file.Split('/').Select(Uri.EscapeDataString));

    public static string Escape(string text) => WebUtility.HtmlEncode(text);

    public static string Style()
    {
        using var stream = typeof(PageTemplate).Assembly.GetManifestResourceStream(StyleFile)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
