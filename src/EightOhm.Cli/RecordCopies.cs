using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Record;

namespace EightOhm.Cli;

/// <summary>The records of a run, those of each folder copied to that folder's place in the book.</summary>
internal sealed class RecordCopies
{
    private readonly IReadOnlyList<RecordCopy> copies;

    private RecordCopies(IReadOnlyList<RecordCopy> copies) => this.copies = copies;

    /// <summary>One for each folder of notebooks, in their order.</summary>
    public IReadOnlyList<RecordCopy> All => copies;

    /// <summary>The copied records as they are now.</summary>
    public IReadOnlyList<DesignRecord> Records => [.. copies.SelectMany(c => c.Records)];

    /// <summary>Copies the records, or refuses one that is damaged.</summary>
    /// <param name="tree">The folders of notebooks.</param>
    /// <param name="book">The folder in which the book is made.</param>
    public static RecordCopies Make(NotebookTree tree, string book) =>
        new([.. tree.Folders.Select(folder => RecordCopy.Make(folder, Directory.CreateDirectory(Path.Combine(book, folder.Name)).FullName))]);

    /// <summary>Some copies that were made.</summary>
    public static RecordCopies Of(IReadOnlyList<RecordCopy> copies) => new(copies);

    public RecordCopy Of(NotebookFile notebook) => copies.First(c => c.Home.Notebooks.Contains(notebook));

    /// <summary>Keeps of what a cell was to write that it has no answer, in the record of its own folder.</summary>
    /// <param name="end">The cell.</param>
    public void Lose(CellEnd end) => Of(end.Place.Notebook).Lose(end);

    /// <summary>Puts the cards beside the records that name them.</summary>
    public void BringCards()
    {
        foreach (var copy in copies)
            copy.BringCards();
    }

    /// <summary>Hands over the records that the run changed.</summary>
    public void AddTo(SavedFiles saved)
    {
        foreach (var copy in copies)
            copy.AddTo(saved);
    }
}
