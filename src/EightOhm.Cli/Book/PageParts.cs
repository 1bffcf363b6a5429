namespace EightOhm.Cli.Book;

/// <summary>What stands in a page of the book.</summary>
/// <param name="Title">The page's title.</param>
/// <param name="Book">The book's title, which leads to the index; empty on the index itself.</param>
/// <param name="Root">The way to the book's folder: empty or "../".</param>
/// <param name="Body">The text.</param>
internal sealed record PageParts(string Title, string Book, string Root, string Body)
{
    /// <summary>The links to the neighbours; may be empty.</summary>
    public string Turns { get; init; } = "";

    /// <summary>The contents of the page as a list; may be empty.</summary>
    public string Contents { get; init; } = "";
}
