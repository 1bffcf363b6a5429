using System.Diagnostics;

namespace EightOhm.Cli.Jupyter;

/// <summary>The program behind the kernel, <c>dotnet-interactive</c>: installed once, into a folder of ours, by the SDK's own tool command.</summary>
internal static class KernelProgram
{
    /// <summary>The last before its archive; .config/dotnet-tools.json pins the same (a test compares).</summary>
    public const string Version = "1.0.712001";

    private static readonly string File = OperatingSystem.IsWindows() ? "dotnet-interactive.exe" : "dotnet-interactive";

    /// <summary>The path of the program, installed if need be.</summary>
    /// <param name="kept">The folder in which it is kept.</param>
    /// <param name="say">Told what takes a while.</param>
    /// <param name="cancellation">Ends the installing too.</param>
    /// <exception cref="RunFailure">It cannot be installed.</exception>
    public static async Task<string> Installed(string kept, Action<string> say, CancellationToken cancellation)
    {
        var folder = Path.Combine(kept, "kernel", Version);
        var program = Path.Combine(folder, File);
        if (System.IO.File.Exists(program))
            return program;
        say($"Installing the kernel, dotnet-interactive {Version} …");
        var (code, said) = await Run(
            ["tool", "install", "Microsoft.dotnet-interactive", "--version", Version, "--tool-path", folder, "--allow-roll-forward"], cancellation);
        if (code == 0 && System.IO.File.Exists(program))
            return program;
        throw RunFailure.BadInput(
            $"The kernel could not be installed; Jupyter was left as it was. The SDK said:\n{said.Trim()}\n" +
            $"Install dotnet-interactive {Version} yourself where its package can be had, and name its file with --kernel.");
    }

    private static async Task<(int Code, string Said)> Run(string[] arguments, CancellationToken cancellation)
    {
        var start = new ProcessStartInfo(Dotnet(), arguments) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Path.GetTempPath() };
        start.Environment["DOTNET_NOLOGO"] = "1";
        try
        {
            using var process = Process.Start(start)!;
            var output = process.StandardOutput.ReadToEndAsync(cancellation);
            var error = process.StandardError.ReadToEndAsync(cancellation);
            try
            {
                await process.WaitForExitAsync(cancellation);
            }
            catch (OperationCanceledException)
            {
                process.Kill(entireProcessTree: true);
                throw;
            }

            return (process.ExitCode, await output + await error);
        }
        catch (System.ComponentModel.Win32Exception e)
        {
            return (-1, $"dotnet: {e.Message}");
        }
    }

    /// <summary>The program dotnet that runs this one, else that on the search path.</summary>
    public static string Dotnet() => Root() is { } root && Path.Combine(root, OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet") is var file && System.IO.File.Exists(file) ? file : "dotnet";

    /// <summary>The folder of the .NET that runs this program: a kernel that Jupyter starts may not have it on its search path.</summary>
    public static string? Root() => Path.GetDirectoryName(typeof(object).Assembly.Location) is { Length: > 0 } runtime
        ? Path.GetFullPath(Path.Combine(runtime, "..", "..", ".."))
        : null;
}
