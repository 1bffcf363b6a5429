using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>Work for many tests, each piece done once: the first test that asks starts all, each waits for its own.</summary>
/// <typeparam name="T">What a piece gives.</typeparam>
internal sealed class SideBySide<T>
{
    private readonly Lock gate = new();
    private Dictionary<string, Task<T>>? pieces;

    /// <summary>What a piece gave.</summary>
    /// <param name="name">The piece.</param>
    /// <param name="all">All pieces.</param>
    /// <param name="make">Does a piece.</param>
    public Task<T> Of(string name, IEnumerable<string> all, Func<string, Task<T>> make)
    {
        lock (gate)
            pieces ??= all.ToDictionary(piece => piece, piece => Places.Take(() => make(piece)), StringComparer.Ordinal);
        return pieces[name];
    }
}
