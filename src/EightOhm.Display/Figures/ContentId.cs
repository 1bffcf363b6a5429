using System.Security.Cryptography;
using System.Text;

namespace EightOhm.Display.Figures;

/// <summary>An id that follows from the content, so that the same figure has the same id on every run.</summary>
internal static class ContentId
{
    public static string Of(string content) =>
        "eo-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)))[..10];
}
