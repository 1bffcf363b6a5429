namespace EightOhm.Record;

/// <summary>Gathers the changes of all records made until it is closed, and writes each record once; the changes of a notebook's cell are one.</summary>
/// <remarks>One for the process, as a notebook's cells run on threads of their own. <see cref="DesignRecord.Batch"/> is the same for one record.</remarks>
public static class RecordBatch
{
    private static readonly Lock Gate = new();
    private static readonly List<IDisposable> Held = [];
    private static readonly HashSet<DesignRecord> Records = [];
    private static int _open;

    /// <summary>Opens a batch; changes are written when the last one open is closed.</summary>
    /// <returns>Closes it. A record that cannot be written goes back to how it was, and the first such fault is thrown after all others were written.</returns>
    public static IDisposable Open()
    {
        lock (Gate)
            _open++;
        return new Closing(Close);
    }

    // Takes a record that is about to change into the open batch, if there is one.
    internal static void Join(DesignRecord record)
    {
        lock (Gate)
        {
            if (_open > 0 && Records.Add(record))
                Held.Add(record.Batch());
        }
    }

    private static void Close()
    {
        List<IDisposable> held;
        lock (Gate)
        {
            if (--_open > 0)
                return;
            held = [.. Held];
            Held.Clear();
            Records.Clear();
        }

        var faults = new List<Exception>();
        foreach (var batch in held)
        {
            try
            {
                batch.Dispose();
            }
            catch (Exception e) when (e is IOException or RecordException or UnauthorizedAccessException)
            {
                faults.Add(e);
            }
        }

        if (faults.Count > 0)
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(faults[0]);
    }
}

/// <summary>Does something once when it is closed.</summary>
internal sealed class Closing(Action close) : IDisposable
{
    private Action? _close = close;

    public void Dispose() => Interlocked.Exchange(ref _close, null)?.Invoke();
}
