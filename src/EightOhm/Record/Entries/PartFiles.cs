using System.Security.Cryptography;
using EightOhm.Devices;

namespace EightOhm.Record;

/// <summary>The cards that a record's parts name: found from its folder, read once for each content.</summary>
/// <param name="folder">The folder from which a part's path counts.</param>
internal sealed class PartFiles(string folder)
{
    // A card is small; what was read of one content serves until the content changes.
    private readonly Dictionary<string, DeviceCard> _read = new(StringComparer.Ordinal);

    /// <summary>The card's path as the record keeps it: from its folder, with /.</summary>
    public string Relative(string file)
    {
        var full = Path.GetFullPath(file, folder);
        var relative = Path.GetRelativePath(folder, full);
        return relative.Replace('\\', '/');
    }

    /// <summary>What a card's file holds now, or why there is none to be had: a clause that names the file.</summary>
    public (PartFile? Part, string? Reason) Look(string file)
    {
        try
        {
            return (Read(file), null);
        }
        catch (CardException e)
        {
            return (null, $"{file}: {e.Message}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (null, e is FileNotFoundException or DirectoryNotFoundException ? $"the card {file} is missing" : $"the card {file} cannot be read: {e.Message}");
        }
    }

    /// <summary>What a card's file holds now.</summary>
    /// <exception cref="CardException">It is damaged.</exception>
    /// <exception cref="IOException">It is missing or cannot be read.</exception>
    public PartFile Read(string file)
    {
        var bytes = OrdinaryFile.Read(Path.GetFullPath(file, folder));
        var hash = Hash(bytes);
        if (!_read.TryGetValue(hash, out var card))
            _read[hash] = card = DeviceCard.Read(bytes, Path.GetFileName(file));
        return new(file, hash, card.Name) { Kind = card.Kind };
    }

    /// <summary>The same for who asks for it by its name.</summary>
    /// <exception cref="CardException">It is missing, cannot be read, or is damaged.</exception>
    public PartFile Load(string file)
    {
        try
        {
            return Read(file);
        }
        catch (Exception e) when (e is IOException and not CardException or UnauthorizedAccessException)
        {
            throw new CardException(file, 1, "", e is FileNotFoundException or DirectoryNotFoundException ? $"there is no such file in {folder}." : $"the card cannot be read: {e.Message}", e);
        }
    }

    /// <summary>The device of a part that was read.</summary>
    public DeviceCard Device(PartFile part) => _read[part.Hash];

    // A checkout may have turned the line ends about; the card is the same.
    private static string Hash(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes.AsSpan().Contains((byte)'\r') ? [.. bytes.Where(b => b != (byte)'\r')] : bytes))[..32];
}
