namespace EightOhm.Cli.Live.Cells;

/// <summary>Keeps one process for cells started ahead, so that nobody waits when one has to be ended.</summary>
internal sealed class WarmProcesses : IAsyncDisposable
{
    private readonly Lock gate = new();
    private CellChild? spare;
    private bool hasEnded;

    /// <summary>Starts the spare process.</summary>
    public void Begin()
    {
        lock (gate)
            spare ??= hasEnded ? null : CellChild.Start();
    }

    /// <summary>A process that nobody has used, and another begun.</summary>
    public CellChild Take()
    {
        CellChild? taken;
        lock (gate)
        {
            (taken, spare) = (spare, null);
            if (taken is null or { HasEnded: true })
            {
                taken?.DisposeAsync().AsTask();
                taken = CellChild.Start();
            }
        }

        _ = Task.Delay(TimeSpan.FromSeconds(1)).ContinueWith(_ => Begin(), TaskScheduler.Default);
        return taken;
    }

    public async ValueTask DisposeAsync()
    {
        CellChild? last;
        lock (gate)
            (hasEnded, last, spare) = (true, spare, null);
        if (last is not null)
            await last.DisposeAsync();
    }
}
