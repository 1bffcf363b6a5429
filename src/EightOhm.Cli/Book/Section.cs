namespace EightOhm.Cli.Book;

/// <summary>A section of a chapter, for its contents and the search.</summary>
/// <param name="Level">1 for the chapter itself, 2 for a section, 3 for what is below.</param>
/// <param name="Number">"5.1"; empty where it has none.</param>
/// <param name="Title">Its heading as plain text.</param>
/// <param name="Anchor">Where it stands in the page.</param>
/// <param name="Text">Its words, without code and figures.</param>
internal sealed record Section(int Level, string Number, string Title, string Anchor, string Text)
{
    public string Heading => Number.Length > 0 ? $"{Number} {Title}" : Title;
}
