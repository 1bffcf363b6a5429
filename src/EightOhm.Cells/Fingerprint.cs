using System.Security.Cryptography;
using System.Text;

namespace EightOhm.Cells;

/// <summary>Tells texts and files from any others, in hexadecimal digits.</summary>
internal static class Fingerprint
{
    /// <summary>The fingerprint of texts, in their order.</summary>
    /// <param name="texts">The texts.</param>
    /// <param name="digits">How many digits of it.</param>
    public static string Of(IEnumerable<string> texts, int digits)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var bytes in texts.Select(Encoding.UTF8.GetBytes))
        {
            hash.AppendData(BitConverter.GetBytes((long)bytes.Length));
            hash.AppendData(bytes);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..digits];
    }

    /// <summary>The fingerprint of a file's content.</summary>
    /// <param name="path">The file.</param>
    public static string OfFile(string path)
    {
        using var file = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }
}
