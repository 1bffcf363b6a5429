using System.Diagnostics;
using System.Text.Json.Nodes;
using EightOhm.Cli.Tests;

namespace EightOhm.Benchmarks;

/// <summary>What a move of each input costs: how many cells are marked, how many of them run, and how many show something else afterwards. Printed, not judged.</summary>
/// <param name="program">The built EightOhm.Cli.dll.</param>
/// <param name="design">The folder of the example design.</param>
internal sealed class LiveMoves(string program, string design)
{
    private readonly Dictionary<string, (string State, string Shown)> cells = [];
    private readonly HashSet<string> marked = [], ran = [];

    /// <summary>Moves every so many-th of the inputs, each by one step of its slider and back.</summary>
    /// <param name="every">1 for all of them.</param>
    public async Task RunAsync(int every)
    {
        var root = Directory.CreateTempSubdirectory("eightohm-moves-").FullName;
        Repository.Copy(design, Path.Combine(root, "all"), _ => true);
        await using (var served = await Served.StartAsync(program, Path.Combine(root, "all"), root))
        {
            await served.AskAsync(new() { ["do"] = "trust" });
            foreach (var chapter in Directory.GetFiles(design, "*.ipynb").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal))
                Take(await served.ChapterAsync(chapter));
            var rows = await served.InputsAsync();
            foreach (var (row, i) in rows.Select((r, i) => (r, i)).Where(r => r.i % every == 0))
                await MoveAsync(served, row);
        }

        Directory.Delete(root, recursive: true);
    }

    private async Task MoveAsync(Served served, JsonObject row)
    {
        var name = (string)row["name"]!;
        if (Step(row) is not { } fraction)
            return;
        var before = cells.ToDictionary(c => c.Key, c => c.Value.Shown);
        marked.Clear();
        ran.Clear();
        var watch = Stopwatch.StartNew();
        if (!await served.QuietAsync(new() { ["do"] = "try", ["name"] = name, ["fraction"] = fraction, ["dragging"] = false }, Hear))
            return;
        var changed = cells.Count(c => before.GetValueOrDefault(c.Key) != c.Value.Shown);
        Console.WriteLine(FormattableString.Invariant($"{name,-14} {(string)row["role"]!,-11} marked {marked.Count,3}, ran {ran.Count,3}, show something else {changed,3} of {cells.Count}, {watch.Elapsed.TotalSeconds:0.0} s"));
        await served.QuietAsync(new() { ["do"] = "put-back", ["name"] = name }, Hear);
    }

    private static double? Step(JsonObject row) => row["slider"] switch
    {
        JsonObject slider when slider["values"] is JsonArray values => ((int)slider["at"]! + 1 < values.Count ? (int)slider["at"]! + 1 : (int)slider["at"]! - 1) / (values.Count - 1.0),
        JsonObject slider => (double)slider["at"]! is var at && at > 0.9 ? at - 0.05 : at + 0.05,
        _ => null,
    };

    private void Hear(JsonObject news)
    {
        if ((string?)news["type"] == "cell")
            Take((string)news["chapter"]!, (JsonObject)news["cell"]!);
    }

    private void Take(JsonObject chapter)
    {
        foreach (var cell in chapter["cells"]!.AsArray())
            Take((string)chapter["id"]!, (JsonObject)cell!);
    }

    private void Take(string chapter, JsonObject cell)
    {
        if ((string?)cell["kind"] != "code")
            return;
        var id = $"{chapter} {cell["id"]}";
        var state = (string)cell["state"]!;
        if (state is "stale" or "waiting")
            marked.Add(id);
        if (state == "running")
            ran.Add(id);
        cells[id] = (state, cell["outputs"]!.ToJsonString());
    }
}
