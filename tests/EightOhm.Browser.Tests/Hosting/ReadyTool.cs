namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The tool packed as it is given away, with native code: begun early, since nothing else waits for it.</summary>
/// <remarks>Not before the other packing has ended: both write the same files.</remarks>
internal static class ReadyTool
{
    /// <summary>Compiling all that the tool brings takes a minute of processor time, and other tests run beside.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    /// <summary>Small ones of those that the kernel has too, and of those that it alone has.</summary>
    public static IReadOnlyList<string> OfKernel { get; } = ["Microsoft.CodeAnalysis.Scripting", "Microsoft.DotNet.Interactive.PackageManagement"];

    /// <summary>The assemblies that get native code: all where time does not matter, else one of ours and two of the kernel.</summary>
    public static IReadOnlyList<string>? Some { get; } = Environment.GetEnvironmentVariable("EIGHTOHM_SLOW") == "1" ? null : ["EightOhm.Cli", .. OfKernel];

    private static readonly Lazy<Task<(string Said, string Feed)>> Made = new(() => Task.Run(Pack));

    /// <summary>What the packing said, and the folder of the package; the first that asks begins it.</summary>
    public static Task<(string Said, string Feed)> Packed => Made.Value;

    private static async Task<(string Said, string Feed)> Pack()
    {
        var burrow = new Burrow();
        var feed = burrow.Below("feed");
        var configuration = Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory));
        var said = await Command.Must(Clone.Root, burrow.Environment, Patience,
            ["dotnet", "pack", Path.Combine("src", "EightOhm.Cli"), "--no-build", "-c", configuration, "-o", feed, .. Some is null ? (string[])[] : [$"-p:NativeCodeOf={string.Join("%3B", Some)}"]]);
        return (said, feed);
    }
}
