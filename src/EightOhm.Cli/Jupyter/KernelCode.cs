using EightOhm.Cli.Output;

namespace EightOhm.Cli.Jupyter;

/// <summary>Native code for the assemblies that the kernel shares with this tool, above all the compiler's: else each kernel that starts compiles them anew.</summary>
internal static class KernelCode
{
    /// <summary>Puts the tool's assemblies that hold native code in place of the kernel's own, where those are the same but for that code.</summary>
    /// <param name="kernel">The folder of the kernel's program, which is ours.</param>
    /// <param name="tool">The folder of this tool.</param>
    /// <param name="plain">The folder of the same tool without native code: byte by byte what was compiled.</param>
    /// <returns>How many were put in place: none where the tool holds no native code.</returns>
    public static int Lend(string kernel, string tool, string plain)
    {
        if (Path.GetFullPath(tool).TrimEnd(Path.DirectorySeparatorChar) == Path.GetFullPath(plain).TrimEnd(Path.DirectorySeparatorChar) || !Directory.Exists(plain))
            return 0;
        var lent = 0;
        foreach (var own in Directory.EnumerateFiles(kernel, "*.dll", SearchOption.AllDirectories).ToList())
        {
            var name = Path.GetFileName(own);
            string ready = Path.Combine(tool, name), compiled = Path.Combine(plain, name);
            if (!File.Exists(ready) || !IsSame(own, compiled))
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
}
