using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Live.Inputs;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.WhatIf;
using EightOhm.Record;

namespace EightOhm.Cli.Live;

/// <summary>A folder of notebooks that is open, with its records: as they are saved, and as they stand.</summary>
internal sealed class LiveFolder
{
    private readonly List<(DesignRecord Record, IDisposable Batch)> records = [];
    private Dictionary<string, KeptInputs> keptInputs = [];

    public LiveFolder(RecordCopy copy)
    {
        Copy = copy;
        Chapters = [.. copy.Home.Notebooks.Select(n => new LiveChapter(n, KeptOutputs.Fault(copy, n) is null))];
        Sliders = new Sliders(new CardFiles(copy.Home.Path));
        Kept = copy.Kept;
        Look();
    }

    /// <summary>The records of the folder and their copies, which the cells work on.</summary>
    public RecordCopy Copy { get; private set; }

    /// <summary>The folder's path.</summary>
    public string Home => Copy.Home.Path;

    public IReadOnlyList<LiveChapter> Chapters { get; }

    public Sliders Sliders { get; }

    /// <summary>The process of its cells; null until the first of them runs.</summary>
    public ICellProcess? Process { get; set; }

    /// <summary>The records as they are saved.</summary>
    public IReadOnlyList<DesignRecord> Kept
    {
        get;
        private set
        {
            field = value;
            keptInputs = value.ToDictionary(FileOf, r => new KeptInputs(r), StringComparer.Ordinal);
        }
    }

    /// <summary>The records as they stand, in memory: what is set in them answers at once and is written nowhere.</summary>
    public IReadOnlyList<DesignRecord> Records => [.. records.Select(r => r.Record)];

    /// <summary>Tried values that are to be saved, as record file and name.</summary>
    public HashSet<(string Record, string Name)> Keeps { get; } = [];

    /// <summary>What was moved and is not yet in the records that the cells use.</summary>
    public List<Move> Moves { get; } = [];

    /// <summary>A record as it is saved; null where it never was.</summary>
    public DesignRecord? KeptOf(DesignRecord record) => Kept.FirstOrDefault(k => FileOf(k) == FileOf(record));

    /// <summary>The inputs of a record as they are saved; none where it never was.</summary>
    public KeptInputs KeptInputsOf(DesignRecord record) => keptInputs.GetValueOrDefault(FileOf(record)) ?? new KeptInputs(null);

    /// <summary>Takes up the records as the cells have left them.</summary>
    public void Look()
    {
        // The batches of the old ones stay open: what was tried in them must reach no file.
        records.Clear();
        records.AddRange(Copy.Records.Select(r => (r, r.Batch())));
        foreach (var move in Moves)
            move.Apply(Records.FirstOrDefault(r => FileOf(r) == move.Record));
    }

    /// <summary>The record of a design.</summary>
    /// <param name="design">Its name; empty for the only one.</param>
    public DesignRecord? Find(string design) => Records.FirstOrDefault(r => r.Name == design) ?? (design.Length == 0 && records.Count == 1 ? records[0].Record : null);

    /// <summary>The inputs whose values are not as they are saved.</summary>
    public IEnumerable<(DesignRecord Record, string Name, string Before, string Now)> Tried() =>
        from record in Records
        let kept = KeptOf(record)
        where kept is not null
        from change in TriedIn(RecordChanges.Compare(kept, record))
        select (record, change.Name, InputText.Of(change.Before!), InputText.Of(change.After!));

    /// <summary>The inputs that a hand has moved. What a chapter's text says anew, and what its cell could not give, was tried by nobody.</summary>
    public static IEnumerable<EntryChange> TriedIn(RecordChanges changes) => changes.Moved.Where(m =>
        m is { Before.Value: not null, After.Value: not null } && (m.Before.State == EntryState.Set || m.After.State == EntryState.Set));

    /// <summary>Takes what stands on the disk now for what is saved.</summary>
    public void Saved()
    {
        Copy = Now();
        foreach (var name in Copy.Read.Keys.Concat(Copy.HomeFiles.Select(f => Path.GetFileName(f))).Distinct(StringComparer.Ordinal).ToList())
        {
            var path = Path.Combine(Home, name);
            Copy.TakeAsRead(name, File.Exists(path) ? File.ReadAllBytes(path) : null);
        }

        Kept = Copy.Kept;
        Keeps.Clear();
    }

    /// <summary>The folder with its notebooks as they are now.</summary>
    public RecordCopy Now() => Copy.With(Copy.Home with { Notebooks = [.. Chapters.Select(c => c.File)] });

    /// <summary>The name of a record's file.</summary>
    public static string FileOf(DesignRecord record) => Path.GetFileName(record.Path);
}

/// <summary>An input that was moved.</summary>
/// <param name="Record">The record's file.</param>
/// <param name="Name">The input.</param>
/// <param name="Text">Its value; null for what the chapter says.</param>
internal sealed record Move(string Record, string Name, string? Text)
{
    public void Apply(DesignRecord? record)
    {
        if (Text is null)
            record?.ClearSet(Name);
        else
            record?.Set(Name, Text);
    }
}
