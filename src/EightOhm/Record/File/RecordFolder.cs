using System.Collections.Immutable;

namespace EightOhm.Record;

/// <summary>The folder in which <see cref="DesignRecord.Open(string)"/> looks: the working directory, unless a runner says otherwise.</summary>
/// <remarks>One for the process, because a notebook's cells run on threads of their own.</remarks>
public static class RecordFolder
{
    private static volatile string? _chosen;
    private static volatile string? _parts;
    private static volatile string? _progress;
    private static ImmutableList<DesignRecord> _opened = [];

    /// <summary>The folder in force.</summary>
    public static string Current => _chosen ?? Directory.GetCurrentDirectory();

    /// <summary>The records opened in the folder chosen, the last one last: a runner changes the very record that a cell is at work with.</summary>
    public static IReadOnlyList<DesignRecord> Opened => _opened;

    /// <summary>Chooses another folder until the returned object is disposed.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="parts">Where the cards of its records' parts are, if not beside them: a runner works on copies of the records alone.</param>
    /// <param name="progress">Where the progress over the exercises is kept, if not there: a page keeps what a student has solved beside the notebooks.</param>
    public static IDisposable Use(string path, string? parts = null, string? progress = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var before = (_chosen, _parts, _progress);
        (_chosen, _parts, _progress) = (Path.GetFullPath(path), parts is null ? null : Path.GetFullPath(parts), progress is null ? null : Path.GetFullPath(progress));
        _opened = [];
        return new Closing(() =>
        {
            (_chosen, _parts, _progress) = before;
            _opened = [];
        });
    }

    /// <summary>Lets go of the records opened of which the same file was opened again later: a runner that runs a cell many times would keep every one of them.</summary>
    public static void ForgetOlder() =>
        ImmutableInterlocked.Update(ref _opened, list => list.RemoveAll(r => list.FindLast(other => other.Path == r.Path) != r));

    // Where the progress over the exercises is kept.
    internal static string Progress => _progress ?? Current;

    // Only a runner that chose a folder asks; elsewhere a record must not be kept alive.
    internal static void Tell(DesignRecord record)
    {
        if (_chosen is { } folder && Path.GetDirectoryName(record.Path) == folder)
            ImmutableInterlocked.Update(ref _opened, list => list.Add(record));
    }

    // The folder from which the parts of a record count.
    internal static string PartsOf(string record) => Path.GetDirectoryName(record) is { } folder && (folder != _chosen || _parts is null) ? folder : _parts ?? Current;
}
