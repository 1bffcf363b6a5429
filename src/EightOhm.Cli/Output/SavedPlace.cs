using System.Security.Cryptography;

namespace EightOhm.Cli.Output;

/// <summary>The place of a notebook or record on the disk.</summary>
internal static class SavedPlace
{
    /// <summary>The file itself: a link stays a link, and what it leads to is written.</summary>
    public static string Of(string path) =>
        new FileInfo(path) is { LinkTarget: not null } link && link.ResolveLinkTarget(returnFinalTarget: true) is { } target ? target.FullName : path;

    /// <summary>The fingerprint of what stands there; null where there is nothing.</summary>
    public static string? Fingerprint(string path) => File.Exists(path) ? Fingerprint(File.ReadAllBytes(path)) : null;

    public static string Fingerprint(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Gives a new file the rights of the one whose place it will take.</summary>
    public static void KeepMode(string written, string place)
    {
        if (!OperatingSystem.IsWindows() && File.Exists(place))
            File.SetUnixFileMode(written, File.GetUnixFileMode(place));
    }

    /// <summary>Refuses a file that its owner has set to be read only, which who may do anything would write all the same.</summary>
    public static void CheckWritable(string path)
    {
        if (!File.Exists(path))
            return;
        var place = Of(path);
        if (OperatingSystem.IsWindows() ? (File.GetAttributes(place) & FileAttributes.ReadOnly) != 0 : (File.GetUnixFileMode(place) & UnixFileMode.UserWrite) == 0)
            throw RunFailure.BadInput($"--save: {Path.GetFileName(path)} is set to be read only; nothing was run. Make it writable, or run without --save.");
    }
}
