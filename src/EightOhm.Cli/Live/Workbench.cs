using System.Text.Json.Nodes;
using EightOhm.Cli.Book;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Live.Inputs;
using EightOhm.Cli.Live.Sheet;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Cli.Running;
using EightOhm.Record;
using EightOhm.Teaching;

namespace EightOhm.Cli.Live;

/// <summary>A folder of notebooks at work: its chapters, its records, what is tried, what is calculated. It knows nothing of how a page reaches it; several pages see one state.</summary>
internal sealed partial class Workbench : IAsyncDisposable
{
    private readonly Lock gate = new();
    private readonly string path;
    private readonly WorkingFolder temporary = WorkingFolder.Make();
    private readonly Disk disk;
    private readonly CellHtml html = new();
    private readonly HashSet<string> looked = new(StringComparer.Ordinal);
    private readonly Calculator calculator;
    private List<LiveFolder> folders = [];
    private ILookup<string, string> made = Enumerable.Empty<string>().ToLookup(s => s), asked = Enumerable.Empty<string>().ToLookup(s => s);
    private string root = "";
    private LiveChapter? inHand;

    private Workbench(string path, Func<RecordCopy, ICellProcess> start, bool isTrusted, Disk disk)
    {
        this.path = path;
        this.disk = disk;
        IsTrusted = isTrusted;
        calculator = new Calculator(this, start);
    }

    /// <summary>Told of everything that changes; called from whatever thread.</summary>
    public event Action<JsonObject>? News;

    /// <summary>Whether cells of this folder may run.</summary>
    public bool IsTrusted { get; private set; }

    /// <summary>Opens a folder; nothing runs.</summary>
    /// <param name="path">The folder, or one notebook.</param>
    /// <param name="start">Gives a folder of notebooks the process of its cells.</param>
    /// <param name="isTrusted">Whether its cells may run.</param>
    /// <param name="disk">Where saved files go.</param>
    /// <exception cref="RunFailure">There are no notebooks, or one or a record is damaged.</exception>
    public static Workbench Open(string path, Func<RecordCopy, ICellProcess> start, bool isTrusted, Disk disk)
    {
        var bench = new Workbench(path, start, isTrusted, disk);
        try
        {
            bench.Read();
            bench.calculator.Start();
            return bench;
        }
        catch
        {
            bench.temporary.Dispose();
            throw;
        }
    }

    /// <summary>The folder that is open.</summary>
    public string Root => root;

    /// <summary>All that a page has to know at first.</summary>
    public IReadOnlyList<JsonObject> All()
    {
        lock (gate)
            return [FolderNews(), SheetOf(isPreview: false), InputsOf(), new JsonObject { ["type"] = "kernel", ["state"] = "ready", ["words"] = "" }];
    }

    /// <summary>A chapter with its cells, which is in hand from now on: it is calculated before the others.</summary>
    public JsonObject Chapter(string id)
    {
        lock (gate)
        {
            inHand = ChapterOf(id).Chapter;
            looked.Add(id);
            return ChapterNews(inHand);
        }
    }

    /// <summary>Lets the folder's cells run from now on.</summary>
    public void Trust()
    {
        lock (gate)
        {
            IsTrusted = true;
            if (folders.Any(f => f.Moves.Count > 0))
                calculator.Move();
        }

        TellFolder();
    }

    /// <summary>The code before a cell, for whoever helps with it.</summary>
    public IReadOnlyList<string> CodeBefore(string chapter, string cell)
    {
        lock (gate)
        {
            var (open, _) = ChapterOf(chapter);
            var at = open.Cell(cell);
            return [.. open.Cells.TakeWhile(c => c != at).Where(c => c.HasCode).Select(c => c.Source)];
        }
    }

    public async ValueTask DisposeAsync()
    {
        await calculator.DisposeAsync();
        foreach (var process in folders.Select(f => f.Process).OfType<ICellProcess>())
            await process.DisposeAsync();
        temporary.Dispose();
    }

    private void Read()
    {
        foreach (var said in SaveRecovery.Around(path, disk))
            Say(said);
        var tree = NotebookTree.Open(path);
        foreach (var notebook in tree.Notebooks)
        {
            PackageDirectives.Check(notebook);
            MarkdownText.Check(notebook);
        }

        var place = Directory.CreateDirectory(Path.Combine(temporary.Path, FormattableString.Invariant($"{++readings}"))).FullName;
        folders = [.. RecordCopies.Make(tree, place).All.Select(copy => new LiveFolder(copy))];
        root = tree.Path;
        Index();
    }

    private int readings;

    // Which chapter makes which entry and asks which requirement, as their texts alone tell.
    private void Index()
    {
        var names = Chapters.SelectMany(c => c.Cells.Where(cell => cell.HasCode).Select(cell => (c.Id, Names: NamesOf(cell)))).ToList();
        made = names.SelectMany(n => n.Names.Entries.Select(e => (n.Id, e.Name))).Distinct().ToLookup(n => n.Name, n => n.Id, StringComparer.Ordinal);
        asked = names.SelectMany(n => n.Names.Requirements.Select(e => (n.Id, e.Name))).Distinct().ToLookup(n => n.Name, n => n.Id, StringComparer.Ordinal);
    }

    private readonly System.Runtime.CompilerServices.ConditionalWeakTable<LiveCell, Tuple<string, CellNames>> namesOf = [];

    private CellNames NamesOf(LiveCell cell)
    {
        if (namesOf.TryGetValue(cell, out var known) && known.Item1 == cell.Source)
            return known.Item2;
        var names = CellNames.Of(cell.Source);
        namesOf.AddOrUpdate(cell, Tuple.Create(cell.Source, names));
        return names;
    }

    private IEnumerable<LiveChapter> Chapters => folders.SelectMany(f => f.Chapters);

    private (LiveChapter Chapter, LiveFolder Folder) ChapterOf(string id) =>
        folders.SelectMany(f => f.Chapters.Select(c => (c, f))).FirstOrDefault(c => c.c.Id == id) is { c: not null } found
            ? found
            : throw new LiveRefusal($"There is no chapter '{id}' in this folder. There are: {string.Join(", ", Chapters.Select(c => c.Id))}.");

    private JsonObject FolderNews() => new()
    {
        ["type"] = "folder",
        ["name"] = Path.GetFileName(root),
        ["trusted"] = IsTrusted,
        ["chapters"] = new JsonArray([.. Chapters.Select(c => (Open: c, About: c.Chapter)).Select(c => new JsonObject
        {
            ["id"] = c.Open.Id,
            ["number"] = c.About.Number,
            ["title"] = c.About.Title,
            ["state"] = StateOf(c.Open),
            ["unsaved"] = c.Open.IsUnsaved,
        })]),
        ["unsaved"] = IsUnsaved,
        ["progress"] = Progress(),
    };

    // How far a student is; null where no chapter asks anything.
    private JsonObject? Progress()
    {
        var asking = folders.Where(f => f.Chapters.Any(c => c.Cells.Any(cell => cell.HasCode && cell.Source.Contains(nameof(Exercise) + ".", StringComparison.Ordinal)))).ToList();
        if (asking.Count == 0)
            return null;
        var kept = asking.Select(f => Exercise.Progress(f.Home)).ToList();
        var (solved, of) = (kept.Sum(k => k.Chapters.Sum(c => c.Right)), kept.Sum(k => k.Chapters.Sum(c => c.Asked)));
        var note = string.Join(' ', kept.Select(k => k.Note).Where(n => n.Length > 0));
        return new JsonObject
        {
            ["solved"] = solved,
            ["of"] = of,
            ["words"] = note.Length > 0 ? FormattableString.Invariant($"Exercises: {solved} of {of} solved. {note}") : null,
        };
    }

    private static string StateOf(LiveChapter chapter)
    {
        var states = chapter.Cells.Where(c => c.HasCode).Select(c => c.State).ToList();
        return states.Contains(CellState.Failed) ? "failed"
            : states.All(s => s == CellState.Current) ? "current"
            : states.All(s => s == CellState.Never) ? "unknown"
            : "stale";
    }

    private JsonObject ChapterNews(LiveChapter chapter) => new()
    {
        ["type"] = "chapter",
        ["id"] = chapter.Id,
        ["cells"] = new JsonArray([.. chapter.Cells.Select(c => html.Of(chapter, c, calculator.StateOf(c)))]),
    };

    private JsonObject CellNews(LiveChapter chapter, LiveCell cell) => new()
    {
        ["type"] = "cell",
        ["chapter"] = chapter.Id,
        ["cell"] = html.Of(chapter, cell, calculator.StateOf(cell)),
    };

    private static JsonObject OrderNews(LiveChapter chapter) => new()
    {
        ["type"] = "cells",
        ["chapter"] = chapter.Id,
        ["order"] = new JsonArray([.. chapter.Cells.Select(c => JsonValue.Create(c.Id))]),
    };

    private JsonObject SheetOf(bool isPreview) => new()
    {
        ["type"] = "sheet",
        ["designs"] = new JsonArray([.. folders.SelectMany(f => f.Records.Select(r => SheetNews.Of(r, f.KeptOf(r), KeepsOf(f, r), asked)))]),
        ["preview"] = isPreview,
        ["busy"] = calculator.Busy,
    };

    private JsonObject InputsOf() => new()
    {
        ["type"] = "inputs",
        ["designs"] = new JsonArray([.. folders.SelectMany(f => f.Records.Select(r => InputsNews.Of(r, f.KeptInputsOf(r), f.Sliders, made)))]),
    };

    private static HashSet<string> KeepsOf(LiveFolder folder, DesignRecord record) =>
        [.. folder.Keeps.Where(k => k.Record == LiveFolder.FileOf(record)).Select(k => k.Name)];

    // Only where somebody looks: outputs are long.
    private void TellCell(LiveChapter chapter, LiveCell cell)
    {
        if (looked.Contains(chapter.Id))
            Tell(CellNews(chapter, cell));
    }

    private void TellFolder()
    {
        JsonObject news;
        lock (gate)
            news = FolderNews();
        Tell(news);
    }

    private void TellSheet(bool isPreview = false)
    {
        JsonObject news;
        lock (gate)
            news = SheetOf(isPreview);
        Tell(news);
    }

    private void TellInputs()
    {
        JsonObject news;
        lock (gate)
            news = InputsOf();
        Tell(news);
    }

    private void Say(string words, string @try = "") => Tell(new JsonObject { ["type"] = "trouble", ["words"] = PlainText.Of(words), ["try"] = @try });

    private void Tell(JsonObject news) => News?.Invoke(news);
}
