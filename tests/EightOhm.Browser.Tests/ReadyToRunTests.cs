using System.Reflection.PortableExecutable;
using System.Runtime.InteropServices;
using System.Text;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>The tool as it is given away: native code for the kind of machine that packed it, plain code for any other.</summary>
[Collection(SharedHosts.Name)]
public sealed class ReadyToRunTests
{
    [SkippableFact]
    public async Task The_tool_that_is_installed_here_holds_native_code_and_works()
    {
        Needs.Patience();
        var (said, feed) = await ReadyTool.Packed;
        Skip.If(said.Contains("packed without native code", StringComparison.Ordinal), said);
        using var burrow = new Burrow(emptyPackageCache: true);
        var tool = await Outside.Install(burrow, feed);

        var folder = Path.GetDirectoryName(Assert.Single(Directory.GetFiles(burrow.Below("tool"), "EightOhm.Cli.dll", SearchOption.AllDirectories), IsOfThisMachine))!;
        Assert.All(Directory.GetFiles(folder, "*.dll"), file => Assert.Equal(ReadyTool.Some?.Contains(Path.GetFileNameWithoutExtension(file)) ?? true, HoldsNativeCode(file)));
        var plain = Path.Combine(folder, "..", "any");
        Assert.All(Directory.GetFiles(plain, "*.dll"), file => Assert.False(HoldsNativeCode(file), file));
        Assert.Equal(Names(plain), Names(folder));
        // The program on the path starts the one with native code.
        Assert.Contains($"tools/net10.0/{RuntimeInformation.RuntimeIdentifier}/EightOhm.Cli.dll", File.ReadAllText(tool, Encoding.Latin1).Replace('\\', '/'), StringComparison.Ordinal);

        await Command.Must(burrow.Root, burrow.Environment, Outside.Patience, tool, "new", "mine", "--set", "P=70 W", "n=4");
        var ran = await Command.Run(burrow.Root, burrow.Environment, Outside.Patience, tool, "run", Directory.GetFiles(burrow.Below("mine"), "*.ipynb").Order(StringComparer.Ordinal).First());
        Assert.True(ran.ExitCode is 0 or 1, ran.Said);
        // It finds the packages that the plain one beside it brings, and the kernel gets native code, for what both have and for what it has alone.
        await Command.Must(burrow.Root, burrow.Environment, Outside.Patience, tool, "jupyter", "install", "--path", burrow.Below("kernels"));
        Assert.All(ReadyTool.OfKernel, name => Assert.True(HoldsNativeCode(Assert.Single(Directory.GetFiles(Path.GetDirectoryName(KernelOf(burrow))!, $"{name}.dll", SearchOption.AllDirectories))), name));
    }

    private static string KernelOf(Burrow burrow)
    {
        using var spec = System.Text.Json.JsonDocument.Parse(File.ReadAllText(burrow.Below("kernels", ".net-csharp", "kernel.json")));
        return spec.RootElement.GetProperty("argv")[0].GetString()!;
    }

    private static bool IsOfThisMachine(string file) => Path.GetFileName(Path.GetDirectoryName(file)) == RuntimeInformation.RuntimeIdentifier;

    private static string[] Names(string folder) => [.. Directory.GetFiles(folder).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    private static bool HoldsNativeCode(string file)
    {
        using var image = new PEReader(File.OpenRead(file));
        return image.PEHeaders.CorHeader!.ManagedNativeHeaderDirectory.Size > 0;
    }
}
