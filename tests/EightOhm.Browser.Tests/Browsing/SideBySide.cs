namespace EightOhm.Browser.Tests.Browsing;

/// <summary>Work for many tests, each piece done once, two pieces at a time: the first test that asks starts all, each waits for its own.</summary>
/// <typeparam name="T">What a piece gives.</typeparam>
internal sealed class SideBySide<T>
{
    private readonly Lock gate = new();
    private Dictionary<string, Task<T>>? pieces;

    /// <summary>What a piece gave.</summary>
    /// <param name="name">The piece.</param>
    /// <param name="rows">All pieces in rows: those of a row go one after the other, the rows side by side.</param>
    /// <param name="make">Does a piece.</param>
    public Task<T> Of(string name, IEnumerable<IReadOnlyList<string>> rows, Func<string, Task<T>> make)
    {
        lock (gate)
            pieces ??= Start(rows, make);
        return pieces[name];
    }

    private static Dictionary<string, Task<T>> Start(IEnumerable<IReadOnlyList<string>> rows, Func<string, Task<T>> make)
    {
        var started = new Dictionary<string, Task<T>>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            Task before = Task.CompletedTask;
            foreach (var name in row)
                before = started[name] = After(before, () => make(name));
        }

        return started;
    }

    private static async Task<T> After(Task before, Func<Task<T>> make)
    {
        // One that failed is that test's matter; the next goes on all the same.
        await before.ContinueWith(_ => { }, TaskScheduler.Default);
        await Places.Two.WaitAsync();
        try
        {
            return await make();
        }
        finally
        {
            Places.Two.Release();
        }
    }
}

/// <summary>How much goes on at once, over all kinds of work.</summary>
internal static class Places
{
    /// <summary>A page with its kernel keeps about one processor busy, and a small machine has two.</summary>
    public static SemaphoreSlim Two { get; } = new(2);
}
