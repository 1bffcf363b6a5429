using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The design's memory: targets, choices, assumptions and parts, rules, results and requirements, kept as data in one JSON file. What it calls met is met, whatever was moved.</summary>
/// <remarks>
/// Every change is saved at once and whole, or once a batch (<see cref="Batch"/>, <see cref="RecordBatch"/>); nothing is written when nothing changed.
/// Loading a record runs no code from it: a rule can name only EightOhm's own functions. Safe for use from several threads.
/// A repeated verb updates its entry in place. An entry changes its kind, or from an input to a result, only after <see cref="Remove"/>.
/// </remarks>
/// <example><code>
/// var amp = DesignRecord.Open("amp.json");
/// amp.Target("P", 100.W); amp.Target("R_L", 8.Ohm); amp.Target("V_rail", 45.V);
/// amp.Derive("V_pk", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));
/// amp.Require("swing into {R_L}", "V_pk").AtMost("V_rail");
/// </code></example>
public sealed partial class DesignRecord
{
    private readonly Lock _gate = new();
    private readonly RecordFile? _file;
    private readonly PartFiles _parts;
    private readonly HashSet<string> _conditions = new(StringComparer.Ordinal);
    private RecordContent _content;
    private Evaluation _evaluation;
    private (RecordContent Content, Evaluation Evaluation) _saved;
    private RecordSnapshot? _snapshot;
    private int _batches;

    private DesignRecord(RecordFile file)
    {
        _file = file;
        Path = file.Path;
        _parts = new(RecordFolder.PartsOf(file.Path));
        var nameless = RecordNames.Of(file.Path, RecordFolder.PartsOf(file.Path));
        _content = file.Read(nameless) ?? new(nameless);
        _evaluation = new(_content, _parts);
        _saved = (_content, _evaluation);
        RecordFolder.Tell(this);
    }

    private DesignRecord(string scratch)
    {
        Path = scratch;
        _parts = new(RecordFolder.Current);
        _content = new(scratch);
        _evaluation = new(_content, _parts);
        _saved = (_content, _evaluation);
    }

    /// <summary>The file's full path; of a scratch record its name.</summary>
    public string Path { get; }

    /// <summary>The design's name, such as "Tern 100"; until it is set that of its file, and of a file record.json that of its folder in words. Setting it saves.</summary>
    public string Name
    {
        get => _content.Name;
        set
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(value);
            lock (_gate)
            {
                if (Words.Clean(value)! is var name && name != _content.Name)
                    Commit(_content with { Name = name });
            }
        }
    }

    /// <summary>Opens a record in the folder in force (<see cref="RecordFolder"/>); one that does not exist is empty, and made by its first change.</summary>
    /// <param name="fileName">The file's name or path.</param>
    /// <exception cref="RecordFileException">The file is damaged or newer; it is left as it is.</exception>
    public static DesignRecord Open(string fileName) => Open(fileName, new DiskFiles());

    /// <summary>Opens a record that must exist.</summary>
    /// <param name="path">The file's path, from the folder in force if it is not a full one.</param>
    /// <exception cref="RecordException">There is no such file.</exception>
    /// <exception cref="RecordFileException">The file is damaged or newer; it is left as it is.</exception>
    public static DesignRecord Load(string path)
    {
        var full = Resolve(path);
        return File.Exists(full)
            ? Open(full)
            : throw new RecordException($"There is no record {System.IO.Path.GetFileName(full)}. A chapter's first Target makes it; run the chapters first.");
    }

    /// <summary>A record to try things in: in memory, written to no file, gone with its variable.</summary>
    /// <param name="name">What it is called where it is shown.</param>
    public static DesignRecord Scratch(string name = "scratch")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(name);
    }

    /// <summary>Gathers changes until it is closed, and writes them as one. What is read in between is up to date.</summary>
    /// <returns>Closes the batch. When the disk refuses then, the record goes back to how it was before the batch, and the fault is thrown.</returns>
    public IDisposable Batch()
    {
        lock (_gate)
            _batches++;
        return new Closing(EndBatch);
    }

    /// <summary>Saves now. Only a record without any entry needs it: every change has saved itself.</summary>
    /// <exception cref="RecordException">Another program changed the file since it was opened.</exception>
    /// <exception cref="IOException">The disk refuses; the old file stays whole.</exception>
    public void Save()
    {
        lock (_gate)
            Write();
    }

    /// <summary>Takes up what another notebook or program has put into the file since this record read or wrote it; where nothing has, it stays as it is.</summary>
    /// <exception cref="RecordException">Changes are gathered in a batch and would be lost; close it first.</exception>
    /// <exception cref="RecordFileException">The file is damaged or newer; the record stays as it was.</exception>
    public void TakeUp()
    {
        lock (_gate)
        {
            if (_file is not { } file || !file.IsForeign())
                return;
            if (_batches > 0)
                throw new RecordException($"{System.IO.Path.GetFileName(Path)} was changed by another program while changes are gathered in a batch. Close the batch first.");
            var nameless = RecordNames.Of(Path, RecordFolder.PartsOf(Path));
            _content = file.Read(nameless) ?? new(nameless);
            _evaluation = new(_content, _parts);
            _saved = (_content, _evaluation);
        }
    }

    internal static DesignRecord Open(string fileName, IFileLayer files) => new(new RecordFile(Resolve(fileName), files));

    private static string Resolve(string fileName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(fileName);
        return System.IO.Path.GetFullPath(fileName, RecordFolder.Current);
    }

    // First the disk, then the memory: if the disk refuses, both still say the same.
    private void Commit(RecordContent next, params string[] moved)
    {
        RecordBatch.Join(this);
        foreach (var name in moved)
        {
            // Only what others hang on already, or what names itself, can close a circle.
            if ((next.UsersOf(name).Count > 0 || next.Find(name)?.Before.Contains(name) == true) && next.CircleThrough(name) is { } circle)
                throw new RecordException($"{circle[0]} would come from itself: {Lists.Way(circle)}. Break the circle: choose one of them, or solve for it in a cell and keep it with Compute.");
        }

        var before = (_content, _evaluation);
        (_content, _evaluation) = (next, _evaluation.After(next, moved));
        if (_batches > 0)
            return;
        try
        {
            Write();
        }
        catch
        {
            (_content, _evaluation) = before;
            throw;
        }
    }

    private void EndBatch()
    {
        lock (_gate)
        {
            if (--_batches > 0 || ReferenceEquals(_content, _saved.Content))
                return;
            try
            {
                Write();
            }
            catch
            {
                (_content, _evaluation) = _saved;
                throw;
            }
        }
    }

    private void Write()
    {
        _file?.Replace(RecordWriter.Write(_content, _evaluation));
        _saved = (_content, _evaluation);
    }

    // Puts an entry in, unless the record says just that already: a notebook run again says mostly what it said before.
    private void Put(Slot slot)
    {
        if (_content.Find(slot.Name) is { } old && old.SaysTheSame(slot) && !_content.Unanswered.ContainsKey(slot.Name))
            return;
        Commit(_content.With(slot), slot.Name);
    }

    // The slot to update, or a new one; refuses what would silently turn one thing into another.
    private Slot For(string name, EntryRole role, QuantityKind? kind)
    {
        if (_content.Find(name) is not { } old)
            return new(name, role, kind);
        if (!old.Role.MayBecome(role))
            throw new RecordException($"{name} is {old.Role.InWords()} already and cannot be {role.InWords()} too. Choose another name, or remove it first: record.Remove(\"{name}\").");
        if (old.Kind?.Type != kind?.Type)
            throw new RecordException($"{name} is {old.KindName} in the record, not {KindNames.Of(kind!)}. Choose another name, or remove it first: record.Remove(\"{name}\").");
        return old with { Role = role };
    }

    private Slot Known(string name) => _content.Find(name.Normalize()) ?? throw new RecordException(
        $"The record has no {name}.{(NearestName.Of(name.Normalize(), _content.Slots.Keys) is { } near ? $" Did you mean {near}?" : "")} {There(_content.InOrder, "It has")}");

    private void Look() => _evaluation = _evaluation.AfterLook();

    private static string There(IEnumerable<Slot> slots, string lead) => slots.Select(s => s.Name).ToList() switch
    {
        [] => $"{lead} no entries yet.",
        { Count: > Told } many => $"{lead} {string.Join(", ", many.Take(Told))} and {many.Count - Told} more.",
        var names => $"{lead} {string.Join(", ", names)}.",
    };

    // More names than this are no help in a sentence.
    private const int Told = 200;
}
