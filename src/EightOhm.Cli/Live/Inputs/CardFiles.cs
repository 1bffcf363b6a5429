using EightOhm.Devices;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>The cards beside a design, by what they are of; read when first asked for.</summary>
/// <param name="home">The design's folder.</param>
internal sealed class CardFiles(string home)
{
    private const string Folder = "cards";

    private readonly Lazy<ILookup<string, string>> files = new(() => Read(home));

    /// <summary>The cards of a kind, as a record names their files.</summary>
    /// <param name="kind">The kind, such as "power transistor".</param>
    public IEnumerable<string> Of(string kind) => files.Value[kind];

    private static ILookup<string, string> Read(string home)
    {
        var folder = Path.Combine(home, Folder);
        var all = Directory.Exists(folder) ? Directory.GetFiles(folder, "*.json") : [];
        return all.Select(f => (Kind: KindOf(f), File: $"{Folder}/{Path.GetFileName(f)}")).Where(c => c.Kind is not null).ToLookup(c => c.Kind!, c => c.File, StringComparer.Ordinal);
    }

    // A damaged card is offered to nobody; whoever names it is told what is wrong with it.
    private static string? KindOf(string file)
    {
        try
        {
            return DeviceCard.Load<DeviceCard>(file).Kind;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }
}
