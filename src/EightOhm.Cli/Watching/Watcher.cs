using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.IO.Pipes;

namespace EightOhm.Cli.Watching;

/// <summary>Runs the program in a process of its own and waits: whatever a cell does to that process, somebody is left to say which cell it was.</summary>
/// <remarks>Endless recursion cannot be caught from within, and <c>Environment.Exit</c> looks like success.</remarks>
internal sealed class Watcher(TextWriter error)
{
    private static readonly string[] Commands = ["run", "book"];

    // A person who stops a run waits no longer than two seconds.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.6);

    private volatile string place = "";
    private volatile string why = "";
    private volatile bool placing;
    private volatile bool ended;

    /// <summary>Whether the arguments ask for something that runs cells.</summary>
    public static bool IsFor(string[] args) => !Watched.Is && args.Length > 0 && Commands.Contains(args[0]);

    /// <returns>The exit code, or null where no process could be started.</returns>
    public async Task<int?> RunAsync(string[] args)
    {
        using var hears = new AnonymousPipeServerStream(PipeDirection.In, HandleInheritability.Inheritable);
        using var tells = new AnonymousPipeServerStream(PipeDirection.Out, HandleInheritability.Inheritable);
        using var child = Start(args, hears.GetClientHandleAsString(), tells.GetClientHandleAsString());
        if (child is null)
            return null;
        hears.DisposeLocalCopyOfClientHandle();
        tells.DisposeLocalCopyOfClientHandle();

        var listening = Task.Run(() => Listen(new StreamReader(hears)));
        var signalled = new TaskCompletionSource<int>(TaskCreationOptions.RunContinuationsAsynchronously);
        using var interruption = new Interruption(number =>
        {
            Tell(tells, number);
            if (!signalled.TrySetResult(number))
                child.Kill(entireProcessTree: true);
        });
        var exited = child.WaitForExitAsync();
        if (await Task.WhenAny(exited, signalled.Task) != exited && !await GoneAsync(child, exited))
        {
            await error.WriteLineAsync("Interrupted; nothing was written.");
            return interruption.Code;
        }

        // What a cell has started may hold the pipe open.
        await Task.WhenAny(listening, Task.Delay(500));
        if (ended)
            return child.ExitCode;
        await error.WriteLineAsync(Says(child.ExitCode));
        return signalled.Task.IsCompleted ? interruption.Code : ExitCode.CellFailed;
    }

    private async Task<bool> GoneAsync(Process child, Task exited)
    {
        for (var watch = Stopwatch.StartNew(); !exited.IsCompleted && (placing || watch.Elapsed < Patience);)
            await Task.WhenAny(exited, Task.Delay(20));
        if (exited.IsCompleted)
            return true;
        child.Kill(entireProcessTree: true);
        await exited;
        return false;
    }

    private string Says(int code)
    {
        var how = why.Length > 0 ? why : ProcessEnd.Words(code);
        return placing ? "The run was ended while it put its files in place. The next run completes that."
            : PlainText.Of($"{(place.Length > 0 ? place : "Outside of any cell")}: {how}. The run was ended; nothing was written.");
    }

    private void Listen(StreamReader child)
    {
        while (child.ReadLine() is { } line)
        {
            // A line that was cut off before its space says nothing.
            if (line.Split(' ', 2) is not [var word, var text])
                continue;
            switch (word)
            {
                case WatchWords.At:
                    place = text;
                    break;
                case WatchWords.Why:
                    why = text;
                    break;
                case WatchWords.Placing:
                    placing = true;
                    break;
                case WatchWords.End:
                    ended = true;
                    break;
            }
        }
    }

    private static void Tell(AnonymousPipeServerStream child, int number)
    {
        try
        {
            child.Write(System.Text.Encoding.ASCII.GetBytes(number.ToString(CultureInfo.InvariantCulture) + "\n"));
            child.Flush();
        }
        catch (IOException)
        {
            // It is gone already.
        }
    }

    private static Process? Start(string[] args, string tellsAt, string hearsAt)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { UseShellExecute = false };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath!).Equals("dotnet", StringComparison.OrdinalIgnoreCase))
            start.ArgumentList.Add(Environment.GetCommandLineArgs()[0]);
        foreach (var argument in args)
            start.ArgumentList.Add(argument);
        start.Environment[Watched.Setting] = $"{tellsAt} {hearsAt}";
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            // Without a second process the run is what it was, but for naming a cell that ends it.
            return null;
        }
    }
}
