using System.Net;

namespace EightOhm.Cli.Book;

/// <summary>The frame of every page of the book. It loads nothing but the files beside it.</summary>
internal static class PageTemplate
{
    /// <summary>Stands in every page, and tells a page of ours from any other.</summary>
    public const string Mark = "<meta name=\"generator\" content=\"EightOhm book\">";

    public const string IndexFile = "index.html";

    public const string SymbolsFile = "symbols.html";

    public const string GlossaryFile = "glossary.html";

    public const string StyleFile = "book.css";

    /// <summary>Search and the switch for code; a page without it is read all the same.</summary>
    public const string BookScriptFile = "book.js";

    /// <summary>Makes figures interactive; a page without it shows them all the same.</summary>
    public const string ScriptFile = "plotly.min.js";

    // Whatever a text smuggles in: nothing runs but the files beside the page, and nothing is asked of any other place.
    private const string Policy =
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; " +
        "img-src 'self' data: blob:; font-src 'self' data:; base-uri 'none'; form-action 'none'\">";

    public static string Page(PageParts page) => Frame(
        page.Title,
        $"<link rel=\"stylesheet\" href=\"{page.Root}{StyleFile}\">\n<script defer src=\"{page.Root}{BookScriptFile}\"></script>\n{Figures(page)}",
        $"""
        <body data-root="{page.Root}">
        <a class="skip" href="#text">Skip to the text</a>
        <header class="top">
        {(page.Book.Length > 0 ? $"<a class=\"home\" href=\"{page.Root}{IndexFile}\">{Escape(page.Book)}</a>" : "")}
        <div class="search" role="search" hidden>
        <input type="search" aria-label="Search the book" placeholder="Search the book" autocomplete="off">
        <div class="found" role="region" aria-label="Found" aria-live="polite" hidden></div>
        </div>
        <nav class="ways" aria-label="Book">
        <a href="{page.Root}{SymbolsFile}">Symbols</a>
        <a href="{page.Root}{GlossaryFile}">Glossary</a>
        <button type="button" class="all-code" aria-pressed="false" hidden>Show code</button>
        </nav>
        </header>
        {Turns(page, "Previous and next, above")}<div class="page{(page.Contents.Length > 0 ? " with-contents" : "")}">
        {Contents(page)}<main id="text">
        {page.Body}
        </main>
        </div>
        {Turns(page, "Previous and next, below")}</body>
        """);

    /// <summary>A page that needs no file beside it.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="body">Its text.</param>
    /// <param name="style">More style than the book's, or empty.</param>
    public static string Alone(string title, string body, string style = "") =>
        Frame(title, $"<style>\n{Style()}{style}</style>\n", $"<body class=\"alone\">\n<main>\n{body}\n</main>\n</body>");

    /// <summary>A sentence that stands at the top of every page; nothing for none.</summary>
    public static string Banner(string sentence) =>
        sentence.Length == 0 ? "" : $"<p class=\"what-if\" role=\"note\">{Escape(sentence)}</p>\n";

    /// <summary>A file of the book as a link says it.</summary>
    public static string Address(string file) => string.Join('/', file.Split('/').Select(Uri.EscapeDataString));

    public static string Escape(string text) => WebUtility.HtmlEncode(text);

    public static string Style() => Embedded.Text(StyleFile);

    private static string Frame(string title, string head, string body) => PlainText.Of(
        $"""
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        {Policy}
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        {Mark}
        <title>{Escape(title)}</title>
        <link rel="icon" href="data:,">
        {head}</head>
        {body}
        </html>

        """);

    private static string Turns(PageParts page, string label) =>
        page.Turns.Length == 0 ? "" : $"<nav class=\"turns\" aria-label=\"{label}\">\n{page.Turns}\n</nav>\n";

    // Twice, and one of them shown: beside the text where there is room, folded above it where there is none.
    private static string Contents(PageParts page) => page.Contents.Length == 0
        ? ""
        : $"""
        <details class="contents-folded"><summary>In this chapter</summary>
        <nav aria-label="In this chapter">
        {page.Contents}
        </nav>
        </details>
        <nav class="contents" aria-label="In this chapter">
        <p class="contents-title">In this chapter</p>
        {page.Contents}
        </nav>

        """;

    private static string Figures(PageParts page) =>
        page.Body.Contains("class=\"eo-figure\"", StringComparison.Ordinal) ? $"<script defer src=\"{page.Root}{ScriptFile}\"></script>\n" : "";
}
