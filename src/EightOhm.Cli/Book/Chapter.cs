using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Book;

/// <summary>A notebook as a page of the book.</summary>
/// <param name="Notebook">The notebook, with its outputs.</param>
/// <param name="Title">Its first heading, or its name where it has none.</param>
internal sealed record Chapter(NotebookFile Notebook, string Title)
{
    public string PageFile => PageOf(Notebook);

    public static string PageOf(NotebookFile notebook) => notebook.Name + ".html";

    public static Chapter Of(NotebookFile notebook) =>
        new(notebook, notebook.Cells.Where(c => c.IsMarkdown).Select(c => MarkdownText.FirstHeading(c.Source)).FirstOrDefault(h => h is not null) ?? notebook.Name);
}
