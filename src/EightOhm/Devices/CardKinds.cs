using EightOhm.Json;

namespace EightOhm.Devices;

/// <summary>A kind of card: its type, the word in its file, the word with its article, and its reader.</summary>
internal sealed record CardKind(Type Type, string Name, string InWords, Func<JsonPart, DeviceCard> Read);

/// <summary>The kinds of cards that there are.</summary>
internal static class CardKinds
{
    /// <summary>The kind of a file that names none: what parts were before there were others.</summary>
    public static readonly CardKind First = new(typeof(Transistor), "power transistor", "a power transistor", c => Transistor.Read(c));

    /// <summary>All kinds.</summary>
    public static readonly IReadOnlyList<CardKind> All =
    [
        First,
        new(typeof(RectifierBridge), "rectifier bridge", "a rectifier bridge", c => new RectifierBridge(c)),
        new(typeof(ReservoirCapacitor), "reservoir capacitor", "a reservoir capacitor", c => new ReservoirCapacitor(c)),
        new(typeof(MainsTransformer), "mains transformer", "a mains transformer", c => new MainsTransformer(c)),
        new(typeof(TransformerSize), "transformer size", "a transformer size", c => new TransformerSize(c)),
        new(typeof(HeatSinkCard), "heat sink", "a heat sink", c => new HeatSinkCard(c)),
        new(typeof(Relay), "relay", "a relay", c => new Relay(c)),
    ];

    /// <summary>The kind of a type.</summary>
    public static CardKind Of(Type type) => Find(type) ?? new(type, "card", "a card", _ => throw new NotSupportedException());

    /// <summary>The kind of a type, or null.</summary>
    public static CardKind? Find(Type type) => All.FirstOrDefault(k => k.Type == type);

    /// <summary>The kind of a name, or null.</summary>
    public static CardKind? Find(string name) => All.FirstOrDefault(k => k.Name == name);

    /// <summary>The kind that a card says it is.</summary>
    /// <exception cref="JsonFault">There is no such kind.</exception>
    public static CardKind Named(JsonPart kind) =>
        Find(kind.Text) ?? throw kind.Fault($"must be one of \"{string.Join("\", \"", All.Select(k => k.Name))}\" (was \"{kind.Text}\").");
}
