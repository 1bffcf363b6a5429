using System.Diagnostics;

namespace EightOhm.Cli.Tests;

/// <summary>The built program in a process of its own, for what ends a process.</summary>
internal static class Child
{
    public static Process Start(params string[] args)
    {
        // Tests that run in the background of a shell inherit signals that are ignored; the program must see them as from a terminal.
        var start = new ProcessStartInfo(OperatingSystem.IsLinux() ? "env" : "dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        if (OperatingSystem.IsLinux())
        {
            start.ArgumentList.Add("--default-signal=INT,TERM,HUP");
            start.ArgumentList.Add("dotnet");
        }

        start.ArgumentList.Add(typeof(CommandLine).Assembly.Location);
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        return Process.Start(start)!;
    }

    /// <summary>Waits until a cell has left a file as its sign.</summary>
    public static async Task SeeAsync(string file, Process process)
    {
        for (var watch = Stopwatch.StartNew(); !File.Exists(file); await Task.Delay(20))
        {
            if (process.HasExited || watch.Elapsed > TimeSpan.FromMinutes(3))
                throw new InvalidOperationException("The cell did not start: " + await process.StandardError.ReadToEndAsync());
        }
    }

    /// <summary>Waits for its end: generously, since other tests run on the same processors.</summary>
    public static async Task<Ran> EndAsync(Process process)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(3));
        var output = process.StandardOutput.ReadToEndAsync(patience.Token);
        var error = process.StandardError.ReadToEndAsync(patience.Token);
        try
        {
            await process.WaitForExitAsync(patience.Token);
        }
        finally
        {
            if (!process.HasExited)
                process.Kill();
        }

        return new Ran(process.ExitCode, await output, await error);
    }
}
