using System.Security.Cryptography;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Jupyter;

/// <summary>Native code for the assemblies of the kernel, above all the compiler's: else each kernel that starts compiles them anew.</summary>
internal static class KernelCode
{
    /// <summary>Where the tool keeps native code for what the kernel alone has, in its own folder.</summary>
    public const string Folder = "kernel";

    /// <summary>The file in that folder that says for which bytes each was compiled: a hash and a name in a line.</summary>
    public const string Originals = "originals.sha256";

    /// <summary>Puts the tool's assemblies that hold native code in place of the kernel's own, where those are the same but for that code.</summary>
    /// <param name="kernel">The folder of the kernel's program, which is ours.</param>
    /// <param name="tool">The folder of this tool.</param>
    /// <param name="plain">The folder of the same tool without native code: byte by byte what was compiled.</param>
    /// <returns>How many were put in place: none where the tool holds no native code.</returns>
    public static int Lend(string kernel, string tool, string plain)
    {
        if (Path.GetFullPath(tool).TrimEnd(Path.DirectorySeparatorChar) == Path.GetFullPath(plain).TrimEnd(Path.DirectorySeparatorChar) || !Directory.Exists(plain))
            return 0;
        var hashes = Hashes(Path.Combine(tool, Folder, Originals));
        var lent = 0;
        foreach (var own in Directory.EnumerateFiles(kernel, "*.dll", SearchOption.AllDirectories).ToList())
        {
            var name = Path.GetFileName(own);
            var ready = IsSame(own, Path.Combine(plain, name)) ? Path.Combine(tool, name)
                : hashes.TryGetValue(name, out var hash) && hash.Equals(Hash(own), StringComparison.OrdinalIgnoreCase) ? Path.Combine(tool, Folder, name)
                : null;
            if (!File.Exists(ready))
                continue;
            var fresh = Leftovers.FileBeside(own);
            try
            {
                File.Copy(ready, fresh, overwrite: true);
                File.Move(fresh, own, overwrite: true);
                lent++;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // A kernel that runs may hold it: it stays as it is, which is slower and right.
                File.Delete(fresh);
            }
        }

        return lent;
    }

    private static bool IsSame(string one, string other) =>
        new FileInfo(other) is { Exists: true } there && there.Length == new FileInfo(one).Length && File.ReadAllBytes(one).AsSpan().SequenceEqual(File.ReadAllBytes(other));

    // Two files of one name are two systems' own, of which one was compiled.
    private static Dictionary<string, string> Hashes(string file) => !File.Exists(file) ? [] : File.ReadLines(file)
        .Select(line => line.Split("  ", 2)).Where(parts => parts.Length == 2).ToDictionary(parts => parts[1], parts => parts[0], StringComparer.Ordinal);

    private static string Hash(string file) => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)));
}
