namespace EightOhm.Record;

/// <summary>The folder in which <see cref="DesignRecord.Open(string)"/> looks: the working directory, unless a runner says otherwise.</summary>
/// <remarks>One for the process, because a notebook's cells run on threads of their own.</remarks>
public static class RecordFolder
{
    private static volatile string? _chosen;
    private static volatile string? _parts;

    /// <summary>The folder in force.</summary>
    public static string Current => _chosen ?? Directory.GetCurrentDirectory();

    /// <summary>Chooses another folder until the returned object is disposed.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="parts">Where the cards of its records' parts are, if not beside them: a runner works on copies of the records alone.</param>
    public static IDisposable Use(string path, string? parts = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var before = (_chosen, _parts);
        (_chosen, _parts) = (Path.GetFullPath(path), parts is null ? null : Path.GetFullPath(parts));
        return new Closing(() => (_chosen, _parts) = before);
    }

    // The folder from which the parts of a record count.
    internal static string PartsOf(string record) => Path.GetDirectoryName(record) is { } folder && (folder != _chosen || _parts is null) ? folder : _parts ?? Current;
}
