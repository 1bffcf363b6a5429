using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A notebook as a page of the book.</summary>
/// <param name="Notebook">The notebook, with its outputs.</param>
/// <param name="Title">Its first heading, or its name where it has none.</param>
internal sealed record Chapter(NotebookFile Notebook, string Title)
{
    public string PageFile => PageOf(Notebook);

    /// <summary>The way from the page to the book's folder: empty or "../".</summary>
    public string Root => Notebook.Folder.Length > 0 ? "../" : "";

    public static string PageOf(NotebookFile notebook) => notebook.Label + ".html";

    public static Chapter Of(NotebookFile notebook) =>
        new(notebook, notebook.Cells.Where(c => c.IsMarkdown).Select(c => MarkdownText.FirstHeading(c.Source)).FirstOrDefault(h => h is not null) ?? notebook.Name);
}
