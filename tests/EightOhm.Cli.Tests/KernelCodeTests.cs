using System.Security.Cryptography;
using System.Text;
using EightOhm.Cli.Jupyter;

namespace EightOhm.Cli.Tests;

/// <summary>Native code is lent where an assembly is the same to the byte, and nowhere else.</summary>
public sealed class KernelCodeTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("eightohm-kernel-code-").FullName;

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void What_is_the_same_is_put_in_place_and_what_is_another_version_stays()
    {
        foreach (var (file, text) in new[] { ("plain/same.dll", "a"), ("ready/same.dll", "a with code"), ("plain/other.dll", "b"), ("ready/other.dll", "b with code"), ("kernel/deep/same.dll", "a"), ("kernel/deep/other.dll", "c"), ("kernel/own.dll", "d"), ("ready/new.dll", "e") })
            Write(file, text);

        Assert.Equal(1, KernelCode.Lend(Of("kernel"), Of("ready"), Of("plain")));

        Assert.Equal(["a with code", "c", "d"], new[] { "deep/same.dll", "deep/other.dll", "own.dll" }.Select(f => File.ReadAllText(Of($"kernel/{f}"))));
        Assert.Equal(3, Directory.GetFiles(Of("kernel"), "*", SearchOption.AllDirectories).Length);
        // What was lent is not what was compiled any more: nothing is left to do.
        Assert.Equal(0, KernelCode.Lend(Of("kernel"), Of("ready"), Of("plain")));
    }

    [Fact]
    public void What_the_kernel_alone_has_is_put_in_place_by_the_hash_of_what_was_compiled()
    {
        foreach (var (file, text) in new[] { ("plain/shared.dll", "s"), ("kernel/one/own.dll", "d"), ("kernel/other/own.dll", "of another system"), ("kernel/shared.dll", "of another version"), ("kernel/unlisted.dll", "u"), ("kernel/gone.dll", "g"),
            ("ready/kernel/own.dll", "d with code"), ("ready/kernel/shared.dll", "of another version, with code"), ("ready/shared.dll", "s with code"), ("ready/kernel/unlisted.dll", "u with code") })
            Write(file, text);
        Write("ready/kernel/originals.sha256", string.Concat(new[] { ("own.dll", "d"), ("shared.dll", "of another version"), ("gone.dll", "g") }.Select(o => $"{Hash(o.Item2)}  {o.Item1}\n")));

        Assert.Equal(2, KernelCode.Lend(Of("kernel"), Of("ready"), Of("plain")));

        Assert.Equal(["d with code", "of another system", "of another version, with code", "u", "g"],
            new[] { "one/own.dll", "other/own.dll", "shared.dll", "unlisted.dll", "gone.dll" }.Select(f => File.ReadAllText(Of($"kernel/{f}"))));
        Assert.Equal(0, KernelCode.Lend(Of("kernel"), Of("ready"), Of("plain")));
    }

    [Fact]
    public void The_plain_tool_has_nothing_to_lend()
    {
        Write("any/same.dll", "a");
        Write("kernel/same.dll", "a");
        Assert.Equal(0, KernelCode.Lend(Of("kernel"), Of("any") + Path.DirectorySeparatorChar, Of("any")));
        Assert.Equal(0, KernelCode.Lend(Of("kernel"), Of("any"), Of("missing")));
    }

    private static string Hash(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private string Of(string path) => Path.Combine(root, path);

    private void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Of(file))!);
        File.WriteAllText(Of(file), text);
    }
}
