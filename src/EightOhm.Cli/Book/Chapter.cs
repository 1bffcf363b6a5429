using System.Text.RegularExpressions;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A notebook as a page of the book.</summary>
/// <param name="Notebook">The notebook, with its outputs.</param>
/// <param name="Number">Its number, "5" or "5a", from the file's name; empty where that begins with none.</param>
/// <param name="Title">Its first heading without the number, or its name where it has none.</param>
/// <param name="Opening">The question that it opens with, or its first sentence; may be empty.</param>
internal sealed partial record Chapter(NotebookFile Notebook, string Number, string Title, string Opening)
{
    // Pages of the book's own: a notebook of such a name steps aside.
    private static readonly string[] Reserved = ["index", "symbols", "glossary"];

    /// <summary>Number and title, as links to it say.</summary>
    public string Heading => Number.Length > 0 ? $"{Number} {Title}" : Title;

    /// <summary>Whether it is a design's paper, whose reader wants the results first: it works on the record of its folder.</summary>
    public bool IsPaper => Notebook.Cells.Any(c => c.IsCode && c.Source.Contains("DesignRecord.Open(\"record.json\")", StringComparison.Ordinal));

    public string PageFile => PageOf(Notebook);

    /// <summary>The way from the page to the book's folder: empty or "../".</summary>
    public string Root => Notebook.Folder.Length > 0 ? "../" : "";

    public static string PageOf(NotebookFile notebook) =>
        notebook.Folder.Length == 0 && Reserved.Contains(notebook.Name, StringComparer.OrdinalIgnoreCase)
            ? $"notebook-{notebook.Name}.html"
            : notebook.Label + ".html";

    public static Chapter Of(NotebookFile notebook)
    {
        var number = Numbered().Match(notebook.Name) is { Success: true } m ? m.Groups[1].Value : "";
        var prose = notebook.Cells.Where(c => c.IsMarkdown).Select(c => c.Source).ToList();
        var title = prose.Select(MarkdownText.FirstHeading).FirstOrDefault(h => h is not null) ?? notebook.Name;
        return new Chapter(notebook, number, WithoutNumber(title, number), prose.Select(MarkdownText.Opening).FirstOrDefault(o => o.Length > 0) ?? "");
    }

    /// <summary>A heading without the chapter's own number at its beginning.</summary>
    public static string WithoutNumber(string heading, string number) =>
        number.Length > 0 && Typed().Match(heading) is { Success: true } typed && typed.Groups[1].Value == number && typed.Length < heading.Length
            ? heading[typed.Length..]
            : heading;

    [GeneratedRegex("^0*([0-9]+[a-z]?)(?![0-9A-Za-z])")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^(?:[Cc]hapter )?0*([0-9]+[a-z]?)[.:]?\s+")]
    private static partial Regex Typed();
}
