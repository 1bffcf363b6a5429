using System.Text;
using EightOhm.Explaining;

namespace EightOhm.Devices;

/// <summary>A set of devices to choose from: the shipped one, all invented, or a folder of one's own cards.</summary>
/// <example><code>DeviceSet.Shipped.Smallest&lt;RectifierBridge&gt;(b => b.AverageCurrent.Amperes, new("average current", b => b.AverageCurrent / I))</code></example>
public sealed class DeviceSet
{
    private const string Prefix = "devices/";
    private static readonly Lazy<DeviceSet> Invented = new(Embedded);
    private readonly Dictionary<DeviceCard, string> texts;

    private DeviceSet(string name, IEnumerable<(DeviceCard Card, string Text)> cards)
    {
        Name = name;
        texts = cards.ToDictionary(c => c.Card, c => c.Text);
        Cards = [.. texts.Keys];
    }

    /// <summary>The devices that come with EightOhm. None of them exists; each says so.</summary>
    public static DeviceSet Shipped => Invented.Value;

    /// <summary>What it is called: "the shipped set" or its folder.</summary>
    public string Name { get; }

    /// <summary>All cards.</summary>
    public IReadOnlyList<DeviceCard> Cards { get; }

    /// <summary>Reads a folder of cards, with all folders in it.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="CardException">There is no such folder, no card in it, or a file is none.</exception>
    public static DeviceSet Load(string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        if (!Directory.Exists(folder))
            throw new CardException(folder, 1, "", $"there is no such folder of cards: {Path.GetFullPath(folder)}.");
        string[] files = [.. Directory.GetFiles(folder, "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
        return files.Length > 0
            ? new(folder, files.Select(f => OrdinaryFile.Read(f) is var bytes ? (DeviceCard.Read(bytes, f), Encoding.UTF8.GetString(bytes)) : default))
            : throw new CardException(folder, 1, "", "no card (*.json) is in that folder.");
    }

    /// <summary>The cards of a kind.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    public IReadOnlyList<T> Of<T>()
        where T : DeviceCard => [.. Cards.OfType<T>()];

    /// <summary>A card's text, as it stands in its file.</summary>
    /// <param name="card">One of <see cref="Cards"/>.</param>
    public string TextOf(DeviceCard card) => texts[card];

    /// <summary>The smallest device that is enough; where none is, the one that comes nearest.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="size">What makes a device large.</param>
    /// <param name="needs">What it must have; a figure over what is needed of it.</param>
    /// <returns>The device with the reason in words; null when the set has none of the kind.</returns>
    [Worked("the first that is enough, from the smallest up; else the one whose shortest figure is nearest")]
    public DevicePick<T>? Smallest<T>(Func<T, double> size, params IReadOnlyList<DeviceNeed<T>> needs)
        where T : DeviceCard => Smallest(_ => true, size, needs);

    /// <summary>The same among some of the set.</summary>
    /// <typeparam name="T">The kind.</typeparam>
    /// <param name="among">Which may be chosen: those of a polarity.</param>
    /// <param name="size">What makes a device large.</param>
    /// <param name="needs">What it must have; a figure over what is needed of it.</param>
    /// <returns>The device with the reason in words; null when the set has none of them.</returns>
    [Worked("the first that is enough, from the smallest up; else the one whose shortest figure is nearest")]
    public DevicePick<T>? Smallest<T>(Func<T, bool> among, Func<T, double> size, params IReadOnlyList<DeviceNeed<T>> needs)
        where T : DeviceCard
    {
        ArgumentNullException.ThrowIfNull(among);
        ArgumentNullException.ThrowIfNull(size);
        ArgumentNullException.ThrowIfNull(needs);
        var all = Of<T>().Where(among).OrderBy(size).ToList();
        if (all.Count == 0)
            return null;
        if (all.FirstOrDefault(d => needs.All(n => n.Enough(d))) is { } enough)
            return new(enough, needs, []);
        // The shortest of its figures decides which comes nearest; of equals the largest.
        var nearest = Enumerable.Reverse(all).MaxBy(d => needs.Min(n => Math.Clamp(n.Over(d), 0, 1)))!;
        return new(nearest, needs, [.. needs.Where(n => !n.Enough(nearest))]);
    }

    /// <summary>Its name and how many devices it has.</summary>
    public override string ToString() => $"{Name}: {Cards.Count} devices";

    private static DeviceSet Embedded()
    {
        var assembly = typeof(DeviceSet).Assembly;
        return new("the shipped set", assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(name =>
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            var text = reader.ReadToEnd();
            return (DeviceCard.Read(Encoding.UTF8.GetBytes(text), name), text);
        }));
    }
}
