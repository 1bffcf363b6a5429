using System.Text;
using EightOhm.Explaining;
using EightOhm.Json;

namespace EightOhm.Devices;

/// <summary>A device by its card: figures with their source, as JSON. A card is data: nothing in it is run.</summary>
/// <remarks>Everything that its kind has must be there, and nothing else may be; figures that contradict each other are refused with the place where one of them stands.</remarks>
/// <example><code>var bridge = DeviceCard.Load&lt;RectifierBridge&gt;("cards/bridge.json"); bridge.MaxReverseVoltage</code></example>
public abstract class DeviceCard
{
    /// <summary>What a card's "format" says.</summary>
    public const string Format = "eightohm-card";

    private protected DeviceCard(JsonPart card)
    {
        Name = card["name"].Written();
        Invented = card["invented"].Flag;
        Source = card["source"].Written();
    }

    /// <summary>The device's name.</summary>
    public string Name { get; }

    /// <summary>True for a device that does not exist and serves a demonstration.</summary>
    public bool Invented { get; }

    /// <summary>Where the figures come from; for an invented card what it was invented for.</summary>
    public string Source { get; }

    /// <summary>What kind of device it is, as its card's "kind" says: "rectifier bridge".</summary>
    public string Kind => CardKinds.Of(GetType()).Name;

    /// <summary>Reads a card of a kind from a file.</summary>
    /// <typeparam name="T">The kind: <see cref="Transistor"/>, <see cref="RectifierBridge"/>, …; <see cref="DeviceCard"/> for whatever it is.</typeparam>
    /// <param name="path">The file, from the working directory: "cards/bridge.json" beside a notebook.</param>
    /// <exception cref="CardException">The file is missing, is no card, or one of another kind; the message says where and what is allowed.</exception>
    [Worked("read from the card")]
    public static T Load<T>(string path)
        where T : DeviceCard
    {
        ArgumentNullException.ThrowIfNull(path);
        try
        {
            return Of<T>(Read(OrdinaryFile.Read(path), path), path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new CardException(path, 1, "", $"there is no such file in {Path.GetFullPath(Path.GetDirectoryName(path) is { Length: > 0 } folder ? folder : ".")}.", e);
        }
    }

    /// <summary>Reads a card of a kind from its text.</summary>
    /// <typeparam name="T">The kind; <see cref="DeviceCard"/> for whatever it is.</typeparam>
    /// <param name="json">The card.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <exception cref="CardException">The text is no card, or one of another kind; the message says where and what is allowed.</exception>
    [Worked("read from the card")]
    public static T Parse<T>(string json, string name = "card")
        where T : DeviceCard
    {
        ArgumentNullException.ThrowIfNull(json);
        return Of<T>(Read(Encoding.UTF8.GetBytes(json), name), name);
    }

    /// <summary>Reads a card of whatever kind it says.</summary>
    /// <exception cref="CardException">It is no card.</exception>
    internal static DeviceCard Read(byte[] bytes, string file)
    {
        try
        {
            var card = JsonPart.Parse(bytes);
            if (card["format"].Text != Format)
                throw card["format"].Fault($"must be \"{Format}\" (was \"{card["format"].Text}\").");
            if (card["version"].NumberText != "1")
                throw card["version"].Fault($"must be 1: a newer card needs a newer EightOhm (was {card["version"].NumberText}).");
            return CardKinds.Named(card["kind"]).Read(card);
        }
        catch (JsonFault fault)
        {
            throw new CardException(file, fault.Line, fault.Place, fault.Message, fault.InnerException);
        }
    }

    private static T Of<T>(DeviceCard card, string file)
        where T : DeviceCard =>
        card as T ?? throw new CardException(file, 1, "kind", $"it is {CardKinds.Of(card.GetType()).InWords}; {CardKinds.Of(typeof(T)).InWords} is expected.");
}
