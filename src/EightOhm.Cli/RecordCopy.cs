using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Record;

namespace EightOhm.Cli;

/// <summary>The records beside the notebooks, copied to where the run may change them. The originals change only when the run is saved.</summary>
internal sealed class RecordCopy
{
    // Stands in every record, also in one that is damaged elsewhere; other JSON beside the notebooks is none of our business.
    private static ReadOnlySpan<byte> Format => "eightohm-record"u8;

    private readonly string home;
    private readonly string folder;
    private readonly Dictionary<string, byte[]> read = new(StringComparer.Ordinal);

    private RecordCopy(NotebookFolder home, string folder)
    {
        Home = home;
        this.home = home.Path;
        this.folder = folder;
    }

    /// <summary>The folder of notebooks that the records belong to.</summary>
    public NotebookFolder Home { get; }

    /// <summary>The copied records as they are now. Not to be asked for while a cell runs: what a cell opened would be forgotten.</summary>
    public IReadOnlyList<DesignRecord> Records
    {
        get
        {
            // A record finds its parts, from its home, when it is loaded.
            using var entered = Enter();
            return [.. Files(folder).Select(DesignRecord.Load)];
        }
    }

    /// <summary>The records at home as they are kept.</summary>
    public IReadOnlyList<DesignRecord> Kept => [.. read.Keys.Order(StringComparer.Ordinal).Select(name => DesignRecord.Load(Path.Combine(home, name)))];

    /// <summary>The folder of the copies.</summary>
    public string Folder => folder;

    /// <summary>The record files at home as they were read, by their names.</summary>
    public IReadOnlyDictionary<string, byte[]> Read => read;

    /// <summary>The record files at home.</summary>
    public IEnumerable<string> HomeFiles => Files(home);

    /// <summary>The record files of this run.</summary>
    public IEnumerable<string> RunFiles => Files(folder);

    /// <summary>Copies the records, or refuses one that is damaged.</summary>
    public static RecordCopy Make(NotebookFolder home, string folder)
    {
        var copy = new RecordCopy(home, folder);
        foreach (var file in Files(home.Path))
        {
            var bytes = copy.read[Path.GetFileName(file)] = OrdinaryFile.Read(file);
            File.WriteAllBytes(Path.Combine(folder, Path.GetFileName(file)), bytes);
        }

        try
        {
            _ = copy.Kept;
            return copy;
        }
        catch (RecordFileException e)
        {
            throw RunFailure.BadInput(e.Message);
        }
    }

    /// <summary>The same copies beside the notebooks as they are now.</summary>
    public RecordCopy With(NotebookFolder now)
    {
        var copy = new RecordCopy(now, folder);
        foreach (var (name, bytes) in read)
            copy.read[name] = bytes;
        return copy;
    }

    /// <summary>Takes what stands at home for what was read: it was saved there, or somebody chose to write over it.</summary>
    /// <param name="name">The record's file.</param>
    /// <param name="bytes">What stands there; null for nothing.</param>
    public void TakeAsRead(string name, byte[]? bytes)
    {
        if (bytes is null)
            read.Remove(name);
        else
            read[name] = bytes;
    }

    /// <summary>Has the cells find the copies where they look for the records.</summary>
    public IDisposable Enter() => RecordFolder.Use(folder, home);

    /// <summary>Keeps of what a cell was to write that it has no answer, so that nothing is judged by an older value.</summary>
    /// <param name="end">The cell.</param>
    public void Lose(CellEnd end)
    {
        if (!end.Lost.IsEmpty)
            Lose(folder, end.Lost, end.Reason);
    }

    /// <summary>The same in the process that has the records of a folder open.</summary>
    /// <param name="folder">The folder of the copies.</param>
    /// <param name="lost">What was to be written.</param>
    /// <param name="reason">Why it was not.</param>
    public static void Lose(string folder, LostNames lost, string reason)
    {
        // The last one opened is the one at work: another would find the file changed by it.
        var records = Files(folder)
            .Select(path => RecordFolder.Opened.LastOrDefault(r => r.Path == path) ?? DesignRecord.Load(path))
            .ToList();
        var holders = records.Where(r => r.Entries.Any(e => lost.Entries.Contains(e.Name)) || r.Compliance().Any(c => lost.Requirements.Any(l => l.Label == c.Key))).ToList();
        foreach (var record in holders.Count > 0 ? holders : records.TakeLast(1))
        {
            // A rule that has no answer says so itself, and says it again when something moves.
            record.NoAnswer(lost.Entries.Where(name => !(record.Entries.FirstOrDefault(e => e.Name == name) is { State: EntryState.NoAnswer })), lost.Requirements, reason);
        }
    }

    /// <summary>Puts the cards that the records name beside them, so that the records of the book can be read there.</summary>
    public void BringCards()
    {
        foreach (var part in Records.SelectMany(r => r.Entries).Select(e => e.Value).OfType<PartFile>().DistinctBy(p => p.File))
        {
            var card = Path.Combine(folder, part.File);
            if (Path.IsPathRooted(part.File) || Path.GetRelativePath(folder, card).StartsWith("..", StringComparison.Ordinal) || !File.Exists(Path.Combine(home, part.File)))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(card)!);
            File.Copy(Path.Combine(home, part.File), card, overwrite: true);
        }
    }

    /// <summary>Hands over the records that the run changed, to go back to their place.</summary>
    public void AddTo(SavedFiles saved)
    {
        foreach (var file in Files(folder))
        {
            var name = Path.GetFileName(file);
            var bytes = File.ReadAllBytes(file);
            var before = read.GetValueOrDefault(name);
            if (before is null || !bytes.AsSpan().SequenceEqual(before))
                saved.Add(Path.Combine(home, name), before, bytes);
        }
    }

    /// <summary>Whether a file is a record. What is too large for one is none.</summary>
    public static bool IsRecord(string path) =>
        path.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && !OrdinaryFile.IsLarger(path, OrdinaryFile.Most)
        && OrdinaryFile.Read(path).AsSpan().IndexOf(Format) >= 0;

    private static IEnumerable<string> Files(string folder) =>
        Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal)
            .Where(IsRecord);
}
