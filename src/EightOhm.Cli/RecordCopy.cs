using EightOhm.Cli.Ends;
using EightOhm.Cli.Output;
using EightOhm.Record;

namespace EightOhm.Cli;

/// <summary>The records beside the notebooks, copied to where the run may change them. The originals change only when the run is saved.</summary>
internal sealed class RecordCopy
{
    // Stands in every record, also in one that is damaged elsewhere; other JSON beside the notebooks is none of our business.
    private const string Format = "eightohm-record";

    private readonly string home;
    private readonly string folder;
    private readonly Dictionary<string, byte[]> read = new(StringComparer.Ordinal);

    private RecordCopy(string home, string folder)
    {
        this.home = home;
        this.folder = folder;
    }

    /// <summary>The records as the run left them.</summary>
    public IReadOnlyList<DesignRecord> Records => [.. Files(folder).Select(DesignRecord.Load)];

    /// <summary>Copies the records and changes what the person asked to be changed, or refuses.</summary>
    public static RecordCopy Make(string home, string folder, IReadOnlyList<string> settings)
    {
        var copy = new RecordCopy(home, folder);
        foreach (var file in Files(home))
        {
            var bytes = copy.read[Path.GetFileName(file)] = File.ReadAllBytes(file);
            File.WriteAllBytes(Path.Combine(folder, Path.GetFileName(file)), bytes);
        }

        try
        {
            var records = copy.Records;
            foreach (var setting in settings)
                Set(records, setting);
            return copy;
        }
        catch (RecordFileException e)
        {
            throw RunFailure.BadInput(e.Message);
        }
    }

    /// <summary>Has the cells find the copies where they look for the records.</summary>
    public IDisposable Enter() => RecordFolder.Use(folder);

    /// <summary>Keeps that a cell could not give what it was to write.</summary>
    public void Lose(IReadOnlyCollection<string> names, CellEnd end)
    {
        foreach (var record in Records) { _ = record.Name + names.Count + end.Says; }
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

    private static void Set(IReadOnlyList<DesignRecord> records, string setting)
    {
        var parts = setting.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts is not [{ Length: > 0 } name, var value])
            throw RunFailure.BadInput($"--set '{setting}' must be \"name=value with unit\", for example --set \"P=120 W\"; \"P=\" gives it back to the chapter.");

        var holders = records.Where(r => r.Entries.Any(e => e.Name == name.Normalize())).ToList();
        if (holders.Count > 1)
            throw RunFailure.BadInput($"--set '{setting}': {name} stands in {string.Join(" and in ", holders.Select(r => Path.GetFileName(r.Path)))}. Keep these designs in folders of their own.");
        if (records.Count == 0)
            throw RunFailure.BadInput($"--set '{setting}': there is no record beside the notebooks yet. Make it first: run the notebooks with --save and without --set.");

        try
        {
            // A name that no record holds is refused by the first, which says what can be set.
            var record = holders is [var holder] ? holder : records[0];
            if (value.Length == 0)
                record.ClearSet(name);
            else
                record.Set(name, value);
        }
        catch (RecordException e)
        {
            throw RunFailure.BadInput($"--set '{setting}': {e.Message}");
        }
    }

    private static IEnumerable<string> Files(string folder) =>
        Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal)
            .Where(file => File.ReadAllText(file).Contains(Format, StringComparison.Ordinal));
}
