using System.Text.Json;

namespace EightOhm.Cli.Output;

/// <summary>What a run is about to put in place, kept on the disk before the first file moves, so that the next run can complete it if this one is killed.</summary>
internal static class Promise
{
    public static byte[] ToBytes<T>(T promise) => JsonSerializer.SerializeToUtf8Bytes(promise);

    /// <summary>A promise as it was written; null where the writing itself was cut off, or where it is no promise of ours.</summary>
    public static T? Read<T>(ReadOnlySpan<byte> bytes)
        where T : class, IPromise
    {
        try
        {
            return JsonSerializer.Deserialize<T>(bytes) is { IsSound: true } promise ? promise : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>A promise that can tell whether it was written by us.</summary>
internal interface IPromise
{
    /// <summary>Whether it touches nothing outside of its own folder.</summary>
    bool IsSound { get; }
}

/// <summary>A new book: kept in the folder in which it was made, beside its place.</summary>
/// <param name="Files">Its files, as paths from its folder.</param>
/// <param name="Save">The promise of the notebooks and records that go with it; without that one this counts for nothing. Null where the book goes alone.</param>
internal sealed record BookPromise(IReadOnlyList<string> Files, string? Save) : IPromise
{
    public const string File = ".eightohm-book.json";

    public bool IsSound => Files is not null && Files.All(f => f is not null && BookFiles.IsWithin(f));
}

/// <summary>New notebooks and records: kept in the folder of the notebooks. The last to go.</summary>
/// <param name="Book">The folder in which the book was made that goes with them.</param>
/// <param name="Files">What takes its place.</param>
internal sealed record SavePromise(string? Book, IReadOnlyList<PromisedFile> Files) : IPromise
{
    public const string File = ".eightohm-save.json";

    public bool IsSound => Files is not null && Files.All(f => f is { Place: not null, Written: not null } && BookFiles.IsWithin(f.Place) && IsOurs(f.Place)
        && Path.GetFileName(f.Written) == f.Written);

    /// <summary>Whether a run with --save may write a file of that name.</summary>
    public static bool IsOurs(string name) => name.EndsWith(".ipynb", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".json", StringComparison.OrdinalIgnoreCase);
}

/// <summary>A file that is to take its place.</summary>
/// <param name="Place">The place, as a path from the folder of the notebooks.</param>
/// <param name="Written">The name of the finished file beside it.</param>
/// <param name="Before">The fingerprint of what stood there; null where there was nothing.</param>
internal sealed record PromisedFile(string Place, string Written, string? Before);
