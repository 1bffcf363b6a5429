using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using EightOhm.Cli.Tests;

namespace EightOhm.Benchmarks;

/// <summary>How long the live sheet takes to answer, and what 200 moves of a target cost in memory: a page without a browser, on copies of the example design. Printed, not judged.</summary>
/// <param name="program">The built EightOhm.Cli.dll.</param>
/// <param name="design">The folder of the example design.</param>
internal sealed class LiveLatencies(string program, string design)
{
    private const string Chapter = "04-loads";

    /// <summary>Takes all figures.</summary>
    public async Task RunAsync()
    {
        var root = Directory.CreateTempSubdirectory("eightohm-latencies-").FullName;
        Repository.Copy(design, Path.Combine(root, "all"), _ => true);
        // With the chapters after it, the rest of a move would be calculated for minutes, 200 times.
        Repository.Copy(design, Path.Combine(root, "few"), name => string.CompareOrdinal(name, "05") < 0 || name == "record.json");
        await AnswersAsync(Path.Combine(root, "all"), root);
        await MemoryAsync(Path.Combine(root, "few"), root);
        Directory.Delete(root, recursive: true);
    }

    private async Task AnswersAsync(string folder, string home)
    {
        for (var i = 0; i < 2; i++)
        {
            var watch = Stopwatch.StartNew();
            await using var first = await Served.StartAsync(program, folder, home);
            await first.AskAsync(new() { ["do"] = "chapter", ["chapter"] = "01-specification" });
            Say(i == 0 ? "start to first page" : "start to first page, again", watch.Elapsed.TotalMilliseconds);
        }

        await using var served = await Served.StartAsync(program, folder, home);
        await served.AskAsync(new() { ["do"] = "trust" });
        var cells = await served.CellsAsync(Chapter);
        Say("first calculation of a chapter, nothing kept", await served.CalculateAsync(Chapter, cells, "chapter"));
        Say("the same again", await served.CalculateAsync(Chapter, cells, "chapter"));
        Say("one cell", [.. await Each(20, _ => served.CalculateAsync(Chapter, [cells[^1]], "cell"))]);
        Say("slider to sheet", [.. await Each(60, i => served.SheetAsync(new() { ["do"] = "try", ["name"] = "P", ["value"] = Watts(100 + i), ["dragging"] = true }))]);
        Say("slider to recalculated chapter", [.. await Each(5, i => served.MovedAsync(Chapter, cells, Watts(110 + (5 * i))))]);
    }

    private async Task MemoryAsync(string folder, string home)
    {
        await using var served = await Served.StartAsync(program, folder, home);
        await served.AskAsync(new() { ["do"] = "trust" });
        var cells = await served.CellsAsync(Chapter);
        await served.CalculateAsync(Chapter, cells, "chapter");
        for (var i = 0; i < 10; i++)
            await served.MovedAsync(Chapter, cells, Watts(101 + i));
        var (before, server) = (served.CellsMegabytes(), served.Megabytes());
        for (var i = 0; i < 200; i++)
            await served.MovedAsync(Chapter, cells, Watts(100 + (i % 37)));
        Console.WriteLine(FormattableString.Invariant($"200 moves of a target: cells' process {before:0} MB to {served.CellsMegabytes():0} MB, server {server:0} MB to {served.Megabytes():0} MB"));

        var added = (string)(await served.AskAsync(new() { ["do"] = "add", ["chapter"] = Chapter, ["after"] = cells[^1], ["kind"] = "code" }))["cell"]!;
        await served.AskAsync(new() { ["do"] = "edit", ["chapter"] = Chapter, ["cell"] = added, ["source"] = "System.Threading.Thread.Sleep(10_000);" });
        await served.CompleteAsync(Chapter, cells[^1]);
        await served.AskAsync(new() { ["do"] = "calculate", ["chapter"] = Chapter, ["what"] = "cell", ["cell"] = added });
        await Task.Delay(1000);
        Say("completion during a cell of ten seconds", [.. await Each(20, _ => served.CompleteAsync(Chapter, cells[^1]))]);
    }

    private static async Task<List<double>> Each(int count, Func<int, Task<double>> take)
    {
        var all = new List<double>();
        for (var i = 0; i < count; i++)
            all.Add(await take(i));
        return all;
    }

    private static string Watts(int power) => power.ToString(CultureInfo.InvariantCulture) + " W";

    private static void Say(string what, params double[] milliseconds)
    {
        Array.Sort(milliseconds);
        Console.WriteLine(milliseconds.Length == 1
            ? FormattableString.Invariant($"{what}: {milliseconds[0]:0} ms")
            : FormattableString.Invariant($"{what}: median {milliseconds[milliseconds.Length / 2]:0} ms, worst {milliseconds[^1]:0} ms of {milliseconds.Length}"));
    }
}
