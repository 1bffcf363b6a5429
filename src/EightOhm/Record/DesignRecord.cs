using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The design's memory: targets and choices, rules, results and requirements, kept as data in one JSON file.</summary>
/// <remarks>
/// Every change is saved at once and whole (a notebook's cell may be the last thing that runs); nothing is written when nothing changed.
/// Loading a record runs no code from it: a rule can name only EightOhm's own functions. Safe for use from several threads.
/// A repeated Given, Let, Found or Require updates its entry in place; an entry changes its role or kind only after <see cref="Remove"/>.
/// </remarks>
public sealed partial class DesignRecord
{
    private readonly Lock _gate = new();
    private readonly RecordFile _file;
    private RecordContent _content;
    private Evaluation _evaluation;

    private DesignRecord(RecordFile file)
    {
        _file = file;
        _content = file.Read() ?? new(System.IO.Path.GetFileNameWithoutExtension(file.Path), [], []);
        _evaluation = new(_content);
    }

    /// <summary>The file's full path; of a scratch record its name.</summary>
    public string Path => _file.Path;

    /// <summary>The design's name, such as "Tern 100"; the file's name until it is set. Setting it saves.</summary>
    public string Name
    {
        get => _content.Name;
        set
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(value);
            lock (_gate)
                Commit(_content with { Name = value });
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
            : throw new RecordException($"There is no record {System.IO.Path.GetFileName(full)}. A chapter's first Given makes it; run the chapters first.");
    }

    /// <summary>A record to try things in: in memory, written to no file, gone with its variable.</summary>
    /// <param name="name">What it is called where it is shown.</param>
    public static DesignRecord Scratch(string name = "scratch")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(new RecordFile(name, new MemoryFiles()));
    }

    /// <summary>Saves now. Only a record without any entry needs it: every change has saved itself.</summary>
    /// <exception cref="RecordException">Another program changed the file since it was opened.</exception>
    /// <exception cref="IOException">The disk refuses; the old file stays whole.</exception>
    public void Save()
    {
        lock (_gate)
            _file.Replace(RecordWriter.Write(_content, _evaluation));
    }

    internal static DesignRecord Open(string fileName, IFileLayer files) => new(new RecordFile(Resolve(fileName), files));

    private static string Resolve(string fileName)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(fileName);
        return System.IO.Path.GetFullPath(fileName, RecordFolder.Current);
    }

    // First the disk, then the memory: if the disk refuses, both still say the same.
    private void Commit(RecordContent next, string? mustHaveValue = null)
    {
        if (next.Cycle() is { } circle)
            throw new RecordException($"{circle[0]} would come from itself: {string.Join(" ← ", circle)}. Break the circle: make one of them a Given, or solve for it in a cell and keep it with Found.");
        var evaluation = new Evaluation(next);
        if (mustHaveValue is not null && evaluation.Of(mustHaveValue) is { Value: null } failed)
            throw new RecordException($"{mustHaveValue} {failed.State}", failed.Error);
        _file.Replace(RecordWriter.Write(next, evaluation));
        _content = next;
        _evaluation = evaluation;
    }

    // The slot to update, or null for a new one; refuses what would silently turn one thing into another.
    private Slot? Same(string name, EntryRole role, QuantityKind kind)
    {
        if (_content.Find(name) is not { } old)
            return null;
        if (old.Role != role)
            throw new RecordException($"{name} is {Words(old.Role)} already and cannot be {Words(role)} too. Choose another name, or remove it first: record.Remove(\"{name}\").");
        if (old.Kind.Type != kind.Type)
            throw new RecordException($"{name} is {old.Kind.Name} in the record, not {kind.Name}. Choose another name, or remove it first: record.Remove(\"{name}\").");
        return old;
    }

    private Slot Known(string name) => _content.Find(name.Normalize()) ?? throw new RecordException($"The record has no {name}. {There(_content.Slots, "It has")}");

    private static string There(IEnumerable<Slot> slots, string lead) => string.Join(", ", slots.Select(s => s.Name)) is { Length: > 0 } names
        ? $"{lead} {names}."
        : $"{lead} no entries yet.";

    private static string Words(EntryRole role) => role switch
    {
        EntryRole.Given => "a Given",
        EntryRole.Let => "a Let",
        _ => "a Found",
    };
}
