namespace EightOhm.Record;

/// <summary>A device's card as a part of the design: which file, and what it held.</summary>
/// <param name="File">The card's path from the record's folder, with / between folders.</param>
/// <param name="Hash">The fingerprint of its content: SHA-256 of its text with plain line ends, the first 32 hexadecimal digits.</param>
/// <param name="Device">The device's name, as the card has it.</param>
public sealed record PartFile(string File, string Hash, string Device)
{
    /// <summary>The device and its file.</summary>
    public override string ToString() => $"{Device} ({File})";
}
