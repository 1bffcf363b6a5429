using System.Security.Cryptography;
using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cli.Book;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Live;

/// <summary>A notebook that is open on the page.</summary>
internal sealed class LiveChapter
{
    private readonly List<LiveCell> cells;
    private readonly ChapterHistory history = new();
    private List<(string Source, string Outputs)> saved;
    private bool isOver;

    /// <param name="file">The notebook as it was read.</param>
    /// <param name="areCurrent">Whether its outputs are those of its code and of the record as it is kept.</param>
    public LiveChapter(NotebookFile file, bool areCurrent)
    {
        File = file;
        IsPaper = Chapter.IsPaper;
        cells = [.. Named(file).Select(c => new LiveCell(c.Id, c.Json))];
        foreach (var cell in cells)
            cell.IsCurrent = areCurrent;
        saved = [.. Now()];
    }

    /// <summary>The notebook with its cells as they are now.</summary>
    public NotebookFile File { get; private set; }

    /// <summary>Its name for the page: "05-rails", or "tern-100/05-rails" in a folder of folders.</summary>
    public string Id => File.Label;

    /// <summary>Its number and title.</summary>
    public Chapter Chapter => Chapter.Of(File);

    public IReadOnlyList<LiveCell> Cells => cells;

    /// <summary>Whether it is a design's paper, which shows its results first.</summary>
    public bool IsPaper { get; }

    /// <summary>Whether it is not as it is saved.</summary>
    public bool IsUnsaved => isOver || !Now().SequenceEqual(saved);

    /// <summary>What another program has put into its file meanwhile; null where it has not.</summary>
    public byte[]? Foreign { get; set; }

    /// <summary>A cell by its name.</summary>
    /// <exception cref="LiveRefusal">There is none.</exception>
    public LiveCell Cell(string id) => cells.FirstOrDefault(c => c.Id == id)
        ?? throw new LiveRefusal($"{Id} has no cell '{id}': it was deleted, perhaps in another window. Load the page again to see the chapter as it is.");

    /// <summary>Changes a cell's text.</summary>
    public void Edit(string id, string source)
    {
        var cell = Cell(id);
        if (cell.Source == source)
            return;
        cell.Write(source);
        Changed();
    }

    /// <summary>Adds an empty cell.</summary>
    /// <param name="after">The cell before it; null for the chapter's beginning.</param>
    /// <param name="kind">Code or text, as the page says it.</param>
    public LiveCell Add(string? after, string kind)
    {
        var at = after is null ? 0 : cells.IndexOf(Cell(after)) + 1;
        var cell = Make(CellKinds.InFile(kind), "");
        history.Do(new ChapterStep("a cell added", () => cells.Insert(Math.Min(at, cells.Count), cell), () => cells.Remove(cell)));
        Changed();
        return cell;
    }

    /// <summary>Moves a cell before another, or to the end.</summary>
    public void Move(string id, string? before)
    {
        var cell = Cell(id);
        var target = before is null ? null : Cell(before);
        if (cell == target)
            return;
        var from = cells.IndexOf(cell);
        history.Do(new ChapterStep(
            "a cell moved",
            () =>
            {
                cells.Remove(cell);
                cells.Insert(target is not null && cells.IndexOf(target) is >= 0 and var at ? at : cells.Count, cell);
            },
            () =>
            {
                cells.Remove(cell);
                cells.Insert(Math.Min(from, cells.Count), cell);
            }));
        Changed();
    }

    /// <summary>Deletes a cell; undone, it is back with its text and outputs.</summary>
    public void Delete(string id)
    {
        var cell = Cell(id);
        var at = cells.IndexOf(cell);
        history.Do(new ChapterStep("a cell deleted", () => cells.Remove(cell), () => cells.Insert(Math.Min(at, cells.Count), cell)));
        Changed();
    }

    /// <summary>Splits a cell in two.</summary>
    /// <param name="id">The cell.</param>
    /// <param name="at">How many characters stay in it.</param>
    /// <returns>The new cell, which has the rest.</returns>
    public LiveCell Split(string id, int at)
    {
        var cell = Cell(id);
        if (at <= 0 || at >= cell.Source.Length)
            throw new LiveRefusal($"A cell is split within its text: after 1 to {Math.Max(1, cell.Source.Length - 1)} characters (was {at}). Put the cursor where the second cell is to begin.");
        var (head, tail) = (cell.Source[..at].TrimEnd('\n'), cell.Source[at..].TrimStart('\n'));
        var whole = cell.Source;
        var second = Make(NbFormat.Text(cell.Json["cell_type"]), tail);
        history.Do(new ChapterStep(
            "a cell split",
            () =>
            {
                cell.Write(head);
                cells.Insert(cells.IndexOf(cell) + 1, second);
            },
            () =>
            {
                // What was typed into the two since is kept.
                cell.Write(cell.Source == head && second.Source == tail ? whole : $"{cell.Source}\n{second.Source}");
                cells.Remove(second);
            }));
        Changed();
        return second;
    }

    /// <summary>Takes the last step with cells back.</summary>
    public string Undo()
    {
        var words = history.Undo();
        Changed();
        return words;
    }

    /// <summary>Does the step again that was taken back.</summary>
    public string Redo()
    {
        var words = history.Redo();
        Changed();
        return words;
    }

    /// <summary>Says that what stands on the disk is what is open.</summary>
    public void Saved(byte[] bytes)
    {
        File = File.With([.. cells.Select(c => c.Json)], bytes);
        (isOver, Foreign, saved) = (false, null, [.. Now()]);
    }

    /// <summary>Says that the next save writes over what another program has put there.</summary>
    public void KeepOver(byte[] there)
    {
        File = File.With([.. cells.Select(c => c.Json)], there);
        (isOver, Foreign) = (true, null);
    }

    /// <summary>Whether all its outputs belong to its text and to the design as it stands, and each cell had its answer.</summary>
    public bool IsCurrent => cells.Where(c => c.HasCode).All(c => c.State == CellState.Current);

    private void Changed() => File = File.With([.. cells.Select(c => c.Json)], File.Read);

    private IEnumerable<(string Source, string Outputs)> Now() => cells.Select(c => (c.Source, c.Fingerprint));

    private LiveCell Make(string type, string source)
    {
        var id = NewId();
        var json = new JsonObject { ["cell_type"] = type };
        if (type == CellKinds.Code)
            json["execution_count"] = null;
        if (File.NamesCells)
            json["id"] = id;
        json["metadata"] = new JsonObject();
        if (type == CellKinds.Code)
            json["outputs"] = new JsonArray();
        json["source"] = NbFormat.Lines(source);
        var cell = new LiveCell(id, json);
        // It was never calculated: whatever text it has is a change.
        return cell;
    }

    private string NewId()
    {
        while (true)
        {
            var id = RandomNumberGenerator.GetHexString(8, lowercase: true);
            if (cells.All(c => c.Id != id))
                return id;
        }
    }

    // A file of an older minor version names no cells, and one made by hand may name two alike.
    private static IEnumerable<(string Id, JsonObject Json)> Named(NotebookFile file)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var cell in file.Cells)
        {
            var id = NbFormat.Text(cell.Json["id"]);
            for (var n = cell.Number; id.Length == 0 || !seen.Add(id); n += file.Cells.Count)
                id = FormattableString.Invariant($"cell-{n}");
            yield return (id, cell.Json);
        }
    }
}
