using System.Diagnostics;
using System.Text.Json.Nodes;
using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The cells of a folder: compiled here, with what is kept of them, and run in a process without a compiler.</summary>
/// <param name="copy">The folder's records, copied.</param>
/// <param name="warm">Where its processes come from.</param>
internal sealed class CellProcess(RecordCopy copy, WarmProcesses warm) : ICellProcess
{
    // Nobody who wants to stop a cell waits longer before it is stopped by force.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    // One that is ended from outside is begun anew; a machine on which none can live is not asked for ever.
    private const int Attempts = 3;

    private static readonly byte[]? Secret = PersonalSecret.Get();

    private readonly Dictionary<string, PreparedChapter> chapters = new(StringComparer.Ordinal);
    private CellChild? child;
    private int unbegun;

    public int Life { get; private set; }

    public IReadOnlyList<string> Prepare(NotebookFile chapter, IReadOnlyList<string> texts, int last)
    {
        if (!chapters.TryGetValue(chapter.Path, out var prepared))
            prepared = chapters[chapter.Path] = new PreparedChapter(chapter.Path, CellReferences.OfThisProcess(), Secret);
        return prepared.Keys(texts, last);
    }

    public async Task<CellRun?> RunAsync(NotebookFile chapter, int cell, int count, Action<CellTold> told, CancellationToken stop)
    {
        var compiled = chapters[chapter.Path][cell];
        if (!compiled.Compiled)
            return new CellRun(new CellOutcome([], CellFailure.Of(compiled.Faults)), TimeSpan.Zero);
        var watch = Stopwatch.StartNew();
        var at = await ChildAsync();
        at.Told = told;
        try
        {
            var asking = at.AskAsync(new JsonObject
            {
                ["do"] = "run",
                ["chapter"] = chapter.Path,
                ["key"] = compiled.Key,
                ["image"] = at.Images.Add(compiled.Key) ? Convert.ToBase64String(CellImage.Write(compiled)) : null,
                ["count"] = count,
            });
            if (await EndedAsync(at, asking, stop))
            {
                var outcome = Outcome(await asking);
                unbegun = 0;
                return new CellRun(outcome, watch.Elapsed);
            }

            at.Kill();
            await Task.WhenAny(asking, Task.Delay(Patience, CancellationToken.None));
            Gone();
            return new CellRun(new CellOutcome([], new CellFailure(FailureKind.Cancelled, null, null, "It was stopped.")), watch.Elapsed);
        }
        catch (CellProcessEnded end)
        {
            Gone();
            // Ended from outside before it came to the cell, which is not the cell's doing.
            if (!at.HasBegun && ++unbegun < Attempts)
                return null;
            return new CellRun(new CellOutcome([], new CellFailure(FailureKind.Failed, null, null, $"{Sentence(end.Message)}. What the other cells had made is made again when it is needed.")), watch.Elapsed);
        }
        finally
        {
            at.Told = null;
        }
    }

    public Task SetAsync(string record, string name, string? text) =>
        AskAgainAsync(() => new JsonObject { ["do"] = "set", ["record"] = record, ["name"] = name, ["text"] = text });

    public Task LoseAsync(LostNames lost, string reason) => lost.IsEmpty ? Task.CompletedTask : AskAgainAsync(() => new JsonObject
    {
        ["do"] = "lose",
        ["entries"] = new JsonArray([.. lost.Entries.Select(e => JsonValue.Create(e))]),
        ["requirements"] = new JsonArray([.. lost.Requirements.Select(r => new JsonObject { ["label"] = r.Label, ["about"] = r.Entry })]),
        ["reason"] = reason,
    });

    public async ValueTask DisposeAsync()
    {
        if (child is not null)
            await child.DisposeAsync();
    }

    // False when it does not end although it was asked to.
    private static async Task<bool> EndedAsync(CellChild at, Task<JsonObject> asking, CancellationToken stop)
    {
        var stopped = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        using var registration = stop.Register(() => stopped.TrySetResult());
        if (await Task.WhenAny(asking, stopped.Task) == asking)
            return true;
        await at.TellAsync(new JsonObject { ["do"] = "cancel" });
        return await Task.WhenAny(asking, Task.Delay(Patience, CancellationToken.None)) == asking;
    }

    private static CellOutcome Outcome(JsonObject answer)
    {
        var outputs = (JsonArray)answer["outputs"]!.DeepClone();
        if (answer["failure"] is not JsonObject failure)
            return new CellOutcome(outputs, null);
        return new CellOutcome(outputs, new CellFailure(
            Enum.Parse<FailureKind>(failure["kind"]!.GetValue<string>()),
            (int?)failure["line"],
            (int?)failure["reached"],
            failure["message"]!.GetValue<string>()));
    }

    private async Task<CellChild> ChildAsync()
    {
        if (child is { HasEnded: false })
            return child;
        for (var attempt = 1; ; attempt++)
        {
            Gone();
            child = warm.Take();
            try
            {
                await child.AskAsync(new JsonObject { ["do"] = "begin", ["records"] = copy.Folder, ["home"] = copy.Home.Path });
                return child;
            }
            catch (CellProcessEnded) when (attempt < Attempts)
            {
                // The spare was ended from outside as well.
            }
        }
    }

    private void Gone()
    {
        if (child is null)
            return;
        Life++;
        _ = child.DisposeAsync().AsTask();
        child = null;
    }

    // A process that was ended from outside is another the next moment; the record stands on the disk.
    private async Task AskAgainAsync(Func<JsonObject> question)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                await (await ChildAsync()).AskAsync(question());
                return;
            }
            catch (CellProcessEnded) when (attempt < Attempts)
            {
                Gone();
            }
        }
    }

    private static string Sentence(string clause) => clause.Length > 0 ? char.ToUpperInvariant(clause[0]) + clause[1..].TrimEnd('.') : clause;
}
