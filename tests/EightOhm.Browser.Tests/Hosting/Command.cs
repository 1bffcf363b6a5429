using System.Diagnostics;
using System.Text;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>A program run to its end, with all that it said.</summary>
internal sealed record Command(int ExitCode, string Said)
{
    /// <summary>Runs a program; kills its whole process tree when it takes too long.</summary>
    /// <param name="folder">The working directory.</param>
    /// <param name="environment">Variables over the test's own; null removes one.</param>
    /// <param name="limit">How long it may take: generous, since other test projects run on the same processors.</param>
    /// <param name="line">The program and its arguments.</param>
    public static async Task<Command> Run(string folder, IReadOnlyDictionary<string, string?> environment, TimeSpan limit, params string[] line)
    {
        var said = new StringBuilder();
        using var process = Start(folder, environment, text => { lock (said) said.AppendLine(text); }, line);
        using var patience = new CancellationTokenSource(limit);
        try
        {
            await process.WaitForExitAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"`{string.Join(' ', line)}` did not end within {limit.TotalSeconds:0} s:\n{said}");
        }
        return new Command(process.ExitCode, said.ToString());
    }

    /// <summary>Runs a program that must succeed.</summary>
    /// <returns>What it said.</returns>
    public static async Task<string> Must(string folder, IReadOnlyDictionary<string, string?> environment, TimeSpan limit, params string[] line)
    {
        var ended = await Run(folder, environment, limit, line);
        return ended.ExitCode == 0
            ? ended.Said
            : throw new InvalidOperationException($"`{string.Join(' ', line)}` in {folder} ended with {ended.ExitCode}:\n{ended.Said}");
    }

    /// <summary>Starts a program that goes on running.</summary>
    public static Process Start(string folder, IReadOnlyDictionary<string, string?> environment, Action<string> hear, params string[] line)
    {
        var start = new ProcessStartInfo(line[0], line[1..])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            if (value is null)
                start.Environment.Remove(name);
            else
                start.Environment[name] = value;
        var process = Process.Start(start) ?? throw new InvalidOperationException($"{line[0]} did not start.");
        process.StandardInput.Close();
        process.OutputDataReceived += (_, e) => { if (e.Data is not null) hear(e.Data); };
        process.ErrorDataReceived += (_, e) => { if (e.Data is not null) hear(e.Data); };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }
}
