namespace EightOhm.Record;

/// <summary>The folder in which <see cref="DesignRecord.Open(string)"/> looks: the working directory, unless a runner says otherwise.</summary>
/// <remarks>One for the process, because a notebook's cells run on threads of their own.</remarks>
public static class RecordFolder
{
    private static volatile string? _chosen;

    /// <summary>The folder in force.</summary>
    public static string Current => _chosen ?? Directory.GetCurrentDirectory();

    /// <summary>Chooses another folder until the returned object is disposed.</summary>
    /// <param name="path">The folder.</param>
    public static IDisposable Use(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var before = _chosen;
        _chosen = Path.GetFullPath(path);
        return new Return(before);
    }

    private sealed class Return(string? before) : IDisposable
    {
        private bool _done;

        public void Dispose()
        {
            if (!_done)
                _chosen = before;
            _done = true;
        }
    }
}
