namespace EightOhm;

/// <summary>Progress and cancellation of the long calculation that is running, reachable from any loop without a parameter.</summary>
/// <remarks>
/// The host begins a piece of work (<see cref="Begin"/>); loops inside the library poll <see cref="Checkpoint"/> and tell how far they
/// are by <see cref="Report"/>. Where nobody began any work, both do nothing. The work belongs to the flow of control that began it and
/// reaches the threads that this flow starts; other flows do not see it.
/// </remarks>
public static class Work
{
    // A loop that runs where no host has begun work must not pay for the look-up of the ambient.
    private static int begun;

    private static readonly AsyncLocal<Running?> Ambient = new();

    /// <summary>Begins a piece of work; dispose the result to end it.</summary>
    /// <param name="cancellation">Cancelled when the work is to stop.</param>
    /// <param name="progress">Told how far the work is; null when nobody looks.</param>
    /// <returns>The end of the work: disposing it restores what was ambient before.</returns>
    public static IDisposable Begin(CancellationToken cancellation, IProgress<WorkDone>? progress = null)
    {
        var outer = Ambient.Value;
        var running = new Running(progress, outer, cancellation);
        Ambient.Value = running;
        Interlocked.Increment(ref begun);
        return running;
    }

    /// <summary>Begins a piece within whatever work is running, which also ends it: stopped by another token as well, its progress told to the same.</summary>
    /// <param name="also">Cancelled when this piece alone is to stop.</param>
    internal static IDisposable BeginWithin(CancellationToken also)
    {
        if (Ambient.Value is not { } running)
            return Begin(also);
        var both = CancellationTokenSource.CreateLinkedTokenSource(running.Cancellation, also);
        var work = Begin(both.Token, running.Progress);
        return new Record.Closing(() =>
        {
            work.Dispose();
            both.Dispose();
        });
    }

    /// <summary>Stops the calculation here when its host wants it stopped.</summary>
    /// <remarks>A few nanoseconds: call it at every turn of a loop whose turn costs more than that, and at least every 10 ms.</remarks>
    /// <exception cref="OperationCanceledException">The host has cancelled the work.</exception>
    public static void Checkpoint()
    {
        if (Volatile.Read(ref begun) != 0)
            Ambient.Value?.Cancellation.ThrowIfCancellationRequested();
    }

    /// <summary>Tells the host how far the calculation is, and stops here as <see cref="Checkpoint"/> does.</summary>
    /// <param name="done">Turns done, 0 to <paramref name="of"/>.</param>
    /// <param name="of">Turns in all, at least 1.</param>
    /// <exception cref="OperationCanceledException">The host has cancelled the work.</exception>
    public static void Report(long done, long of)
    {
        if (Volatile.Read(ref begun) == 0 || Ambient.Value is not { } running)
            return;

        running.Cancellation.ThrowIfCancellationRequested();
        running.Progress?.Report(new WorkDone(done, of));
    }

    private sealed class Running(IProgress<WorkDone>? progress, Running? outer, CancellationToken cancellation) : IDisposable
    {
        private int ended;

        public CancellationToken Cancellation { get; } = cancellation;

        public IProgress<WorkDone>? Progress { get; } = progress;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref ended, 1) != 0)
                return;

            Interlocked.Decrement(ref begun);
            Ambient.Value = outer;
        }
    }
}
