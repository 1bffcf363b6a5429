using System.Text.Json.Nodes;
using EightOhm.Cells.Running;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Notebooks;
using EightOhm.Record;

namespace EightOhm.Cli.Tests.Live;

/// <summary>Cells that a test runs itself, to see which of them ran and to hold one of them: they show their own text, and write no record.</summary>
internal sealed class ScriptedCells(RecordCopy copy) : ICellProcess
{
    private readonly Dictionary<string, IReadOnlyList<string>> texts = [];

    /// <summary>The texts that ran, in order.</summary>
    public List<string> Ran { get; } = [];

    /// <summary>Does something when a text runs; gives what the cell ends with.</summary>
    public Func<string, CancellationToken, Task<CellFailure?>> OnRun { get; set; } = (_, _) => Task.FromResult<CellFailure?>(null);

    public int Life { get; set; }

    public IReadOnlyList<string> Prepare(NotebookFile chapter, IReadOnlyList<string> all, int last)
    {
        texts[chapter.Path] = all;
        return [.. all.Take(last + 1).Select((_, i) => string.Join('\0', all.Take(i + 1)))];
    }

    public async Task<CellRun?> RunAsync(NotebookFile chapter, int cell, int count, Action<CellTold> told, CancellationToken stop)
    {
        var text = texts[chapter.Path][cell];
        lock (Ran)
            Ran.Add(text);
        var failure = await OnRun(text, stop);
        var outputs = new JsonArray(new JsonObject { ["name"] = "stdout", ["output_type"] = "stream", ["text"] = $"ran {text}" });
        return new CellRun(new CellOutcome(outputs, failure), TimeSpan.FromMilliseconds(1));
    }

    public Task SetAsync(string record, string name, string? text)
    {
        using var entered = copy.Enter();
        var open = DesignRecord.Load(Path.Combine(copy.Folder, record));
        if (text is null)
            open.ClearSet(name);
        else
            open.Set(name, text);
        return Task.CompletedTask;
    }

    public Task LoseAsync(LostNames lost, string reason) => Task.CompletedTask;

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
