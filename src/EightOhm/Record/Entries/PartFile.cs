namespace EightOhm.Record;

/// <summary>A device's card as a part of the design: which file, and what it held.</summary>
/// <param name="File">The card's path from the record's folder, with / between folders.</param>
/// <param name="Hash">The fingerprint of its content: SHA-256 of its text with plain line ends, the first 32 hexadecimal digits.</param>
/// <param name="Device">The device's name, as the card has it.</param>
public sealed record PartFile(string File, string Hash, string Device)
{
    /// <summary>What kind of device it is, as its card's "kind" says: "power transistor", "rectifier bridge".</summary>
    public string Kind { get; init; } = Devices.CardKinds.First.Name;

    /// <summary>The type by which a rule takes it.</summary>
    internal Type CardType => Devices.CardKinds.Find(Kind)!.Type;

    /// <summary>The device and its file.</summary>
    public override string ToString() => $"{Device} ({File})";
}
