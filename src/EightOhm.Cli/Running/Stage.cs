using System.Globalization;

namespace EightOhm.Cli.Running;

/// <summary>What a run does outside of its cells: it has an end as well, and nobody who wants to stop it waits for it.</summary>
internal static class Stage
{
    // A short limit is meant for cells: a hundred pages take longer than one of them.
    private static readonly TimeSpan Least = TimeSpan.FromMinutes(1);

    /// <summary>How long a stage may take where a cell may take <paramref name="limit"/>.</summary>
    public static TimeSpan LimitOf(TimeSpan limit) => limit > Least ? limit : Least;

    /// <param name="what">What it does, as the start of a sentence: "Reading the records".</param>
    /// <param name="limit">The longest that it may take.</param>
    /// <param name="work">The work, which stops by itself where it calls <see cref="Work.Checkpoint"/>.</param>
    /// <param name="cancellation">Stops the waiting at once.</param>
    /// <exception cref="RunFailure">It took longer.</exception>
    public static async Task<T> RunAsync<T>(string what, TimeSpan limit, Func<CancellationToken, Task<T>> work, CancellationToken cancellation)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var token = stop.Token;
        var running = Task.Run(
            async () =>
            {
                using var begun = Work.Begin(token);
                return await work(token);
            },
            CancellationToken.None);
        try
        {
            return await running.WaitAsync(limit, cancellation);
        }
        catch (TimeoutException) when (!running.IsCompleted)
        {
            await stop.CancelAsync();
            var seconds = limit.TotalSeconds.ToString("0.###", CultureInfo.InvariantCulture);
            throw new RunFailure(ExitCode.OverLimit, $"{what} took longer than {seconds} s and the run was ended; nothing was written. Allow more with --limit.");
        }
    }

    public static Task<T> RunAsync<T>(string what, TimeSpan limit, Func<T> work, CancellationToken cancellation) =>
        RunAsync(what, limit, _ => Task.FromResult(work()), cancellation);
}
