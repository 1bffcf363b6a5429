using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using EightOhm.Cli.Watching;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The other end of a process in which cells run: asks it one thing at a time, and says how it ended.</summary>
internal sealed class CellChild : IAsyncDisposable
{
    // A cell that wants more is reported; the machine goes on.
    private const long MostMemory = 4L << 30;

    private readonly Process process;
    private readonly ConcurrentDictionary<int, TaskCompletionSource<JsonObject>> waiting = [];
    private readonly SemaphoreSlim writing = new(1, 1);
    private readonly Task reading;
    private volatile string why = "";
    private volatile bool hasEnded, hasBegun;
    private int asked;

    private CellChild(Process process)
    {
        this.process = process;
        reading = Task.Run(ReadAsync);
        _ = Task.Run(async () =>
        {
            // Whatever it says there must not fill the pipe.
            while (await process.StandardError.ReadLineAsync() is not null)
            {
                // What ends a process says so in its code, too.
            }
        });
    }

    /// <summary>Told of what a running cell says.</summary>
    public Action<CellTold>? Told { get; set; }

    /// <summary>Whether it is gone.</summary>
    public bool HasEnded => hasEnded;

    /// <summary>Whether it has taken up the last question; only a run is said to have begun.</summary>
    public bool HasBegun => hasBegun;

    /// <summary>The cells whose images it has.</summary>
    public HashSet<string> Images { get; } = new(StringComparer.Ordinal);

    /// <summary>Starts one.</summary>
    public static CellChild Start()
    {
        var (own, program) = (typeof(CellChild).Assembly, Environment.ProcessPath!);
        var name = Path.GetFileNameWithoutExtension(program);
        var isOwn = name.Equals("eightohm", StringComparison.OrdinalIgnoreCase) || name == own.GetName().Name;
        // Under `dotnet` the program is its first argument; in a test some other program holds us.
        var start = new ProcessStartInfo(isOwn || name == "dotnet" ? program : "dotnet") { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        if (!isOwn)
            start.ArgumentList.Add(own.Location);

        start.ArgumentList.Add(CellsCommand.Word);
        var memory = Math.Min(MostMemory, Math.Max(1L << 29, GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / 2));
        start.Environment["DOTNET_GCHeapHardLimit"] = memory.ToString("X", CultureInfo.InvariantCulture);
        start.Environment["DOTNET_TieredPGO"] = "0";
        // It is ended by killing it, and would leave its debugger's pipes in the temporary folder each time.
        start.Environment.TryAdd("DOTNET_EnableDiagnostics", "0");
        start.Environment.Remove(Watched.Setting);
        return new CellChild(Process.Start(start) ?? throw new InvalidOperationException("No process could be started for the cells."));
    }

    /// <summary>Asks for something, and waits for the answer.</summary>
    /// <exception cref="CellProcessEnded">The process is gone.</exception>
    public async Task<JsonObject> AskAsync(JsonObject question)
    {
        var id = Interlocked.Increment(ref asked);
        var answer = waiting[id] = new TaskCompletionSource<JsonObject>(TaskCreationOptions.RunContinuationsAsynchronously);
        question["id"] = id;
        hasBegun = false;
        await TellAsync(question);
        // It may have ended before it could be told that somebody waits.
        if (reading.IsCompleted)
            answer.TrySetException(End());
        var got = await answer.Task;
        return got["fault"] is JsonValue fault ? throw new InvalidOperationException(fault.ToString()) : got;
    }

    /// <summary>Says something to which there is no answer.</summary>
    public async Task TellAsync(JsonObject words)
    {
        await writing.WaitAsync();
        try
        {
            await process.StandardInput.WriteAsync(words.ToJsonString() + "\n");
            await process.StandardInput.FlushAsync();
        }
        catch (IOException)
        {
            // It is gone, which the reader says.
        }
        finally
        {
            writing.Release();
        }
    }

    /// <summary>Ends it at once.</summary>
    public void Kill()
    {
        try
        {
            process.Kill(entireProcessTree: true);
        }
        catch (Exception e) when (e is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // It has ended by itself.
        }
    }

    public async ValueTask DisposeAsync()
    {
        Kill();
        await Task.WhenAny(reading, Task.Delay(TimeSpan.FromSeconds(5)));
        process.Dispose();
    }

    private async Task ReadAsync()
    {
        try
        {
            while (await process.StandardOutput.ReadLineAsync() is { } line)
                Take(line);
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException or InvalidOperationException)
        {
            // It is gone.
        }

        hasEnded = true;
        try
        {
            await process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(2));
        }
        catch (Exception e) when (e is TimeoutException or InvalidOperationException)
        {
            // How it ended is not known then.
        }

        foreach (var one in waiting.Values)
            one.TrySetException(End());
    }

    private void Take(string line)
    {
        if (Parse(line) is not { } said)
            return;
        if (said["why"] is JsonValue reason)
            why = reason.ToString();
        else if (said["begun"] is not null)
            hasBegun = true;
        else if (said["soFar"] is JsonArray shown)
            Told?.Invoke(new CellTold((JsonArray)shown.DeepClone(), null));
        else if (said["fraction"] is JsonValue fraction)
            Told?.Invoke(new CellTold(null, fraction.GetValue<double>()));
        else if (said["id"] is JsonValue id && waiting.TryRemove(id.GetValue<int>(), out var one))
            one.TrySetResult(said);
    }

    private static JsonObject? Parse(string line)
    {
        try
        {
            return JsonNode.Parse(line) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private CellProcessEnded End()
    {
        try
        {
            return new CellProcessEnded(why.Length > 0 ? why : ProcessEnd.Words(process.ExitCode));
        }
        catch (InvalidOperationException)
        {
            return new CellProcessEnded(why.Length > 0 ? why : "it ended the whole process");
        }
    }
}

/// <summary>The process of the cells is gone; the message says how, as the end of a sentence.</summary>
internal sealed class CellProcessEnded(string message) : Exception(message);
