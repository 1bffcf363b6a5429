using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using EightOhm.Cli.Tests.Live;

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
        Copy(design, Path.Combine(root, "all"), _ => true);
        // With the chapters after it, the rest of a move would be calculated for minutes, 200 times.
        Copy(design, Path.Combine(root, "few"), name => string.CompareOrdinal(name, "05") < 0 || name == "record.json");
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

    private static void Copy(string from, string to, Func<string, bool> takes)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var place = Path.GetRelativePath(from, file);
            if (place.EndsWith(".ipynb", StringComparison.Ordinal) && !takes(place) || place.StartsWith('.'))
                continue;
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(to, place))!);
            File.Copy(file, Path.Combine(to, place));
        }
    }

    // The program, and a socket that speaks as the page does.
    private sealed class Served(Process process, LiveClient page) : IAsyncDisposable
    {
        public static async Task<Served> StartAsync(string program, string folder, string home)
        {
            var start = new ProcessStartInfo("dotnet", [program, "open", folder, "--no-browser"]) { RedirectStandardOutput = true };
            start.Environment["HOME"] = start.Environment["XDG_DATA_HOME"] = home;
            var process = Process.Start(start)!;
            string? line;
            do
                line = await process.StandardOutput.ReadLineAsync();
            while (line is not null && !line.StartsWith("Open at ", StringComparison.Ordinal));
            var page = await LiveClient.EnterAsync(line!["Open at ".Length..].Trim());
            await page.UntilAsync(m => (string?)m["type"] == "sheet");
            return new Served(process, page);
        }

        public Task<JsonObject> AskAsync(JsonObject wish) => page.AskAsync(wish);

        public async Task<string[]> CellsAsync(string chapter)
        {
            await page.WishAsync(new() { ["do"] = "chapter", ["chapter"] = chapter });
            var news = await page.UntilAsync(m => (string?)m["type"] == "chapter");
            return [.. news["cells"]!.AsArray().Where(c => (string)c!["kind"]! == "code" && ((string)c["source"]!).Length > 0).Select(c => (string)c!["id"]!)];
        }

        public async Task<double> CalculateAsync(string chapter, string[] cells, string what)
        {
            var watch = Stopwatch.StartNew();
            await page.WishAsync(new() { ["do"] = "calculate", ["chapter"] = chapter, ["what"] = what, ["cell"] = cells[0] });
            await CurrentAsync(cells);
            var took = watch.Elapsed.TotalMilliseconds;
            await page.UntilAsync(m => (string?)m["type"] == "sheet" && m["busy"] is null);
            return took;
        }

        public async Task<double> SheetAsync(JsonObject wish)
        {
            var watch = Stopwatch.StartNew();
            var id = await page.WishAsync(wish);
            await page.UntilAsync(m => (string?)m["type"] == "sheet");
            var took = watch.Elapsed.TotalMilliseconds;
            await page.ReplyAsync(id);
            return took;
        }

        /// <summary>Lets go of the slider at a value; until the cells of the chapter that hang on it are calculated.</summary>
        public async Task<double> MovedAsync(string chapter, string[] cells, string value)
        {
            // What was said of 200 moves would be more than is measured.
            page.Seen.Clear();
            var watch = Stopwatch.StartNew();
            await page.WishAsync(new() { ["do"] = "try", ["name"] = "P", ["value"] = value, ["dragging"] = false });
            var (open, took) = (new HashSet<string>(), 0.0);
            await page.UntilAsync(m =>
            {
                if ((string?)m["type"] == "cell" && (string?)m["chapter"] == chapter && cells.Contains((string)m["cell"]!["id"]!))
                {
                    var id = (string)m["cell"]!["id"]!;
                    if ((string)m["cell"]!["state"]! is "stale" or "waiting" or "running")
                        open.Add(id);
                    else if (open.Remove(id) && open.Count == 0)
                        took = watch.Elapsed.TotalMilliseconds;
                }

                // The chapter in hand is calculated first; the rest need not be waited for.
                return took > 0 && open.Count == 0 || (string?)m["type"] == "sheet" && m["busy"] is null && watch.Elapsed.TotalSeconds > 1;
            });
            return took;
        }

        public async Task<double> CompleteAsync(string chapter, string cell)
        {
            const string Text = "design.Cho";
            var watch = Stopwatch.StartNew();
            await AskAsync(new() { ["do"] = "complete", ["chapter"] = chapter, ["cell"] = cell, ["source"] = Text, ["offset"] = Text.Length });
            return watch.Elapsed.TotalMilliseconds;
        }

        public double Megabytes() => Megabytes(process.Id);

        /// <summary>The larger of its two processes for cells: the other is the spare.</summary>
        public double CellsMegabytes() => Process.GetProcesses().Where(p => Status(p.Id, "PPid:") == process.Id).Max(p => Megabytes(p.Id));

        public async ValueTask DisposeAsync()
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
            await page.DisposeAsync();
        }

        private static double Megabytes(int id) => Status(id, "VmRSS:") / 1024.0;

        private static long Status(int id, string field)
        {
            try
            {
                return File.ReadLines($"/proc/{id}/status").Where(l => l.StartsWith(field, StringComparison.Ordinal))
                    .Select(l => long.Parse(l[field.Length..].Replace("kB", "", StringComparison.Ordinal).Trim(), CultureInfo.InvariantCulture)).FirstOrDefault();
            }
            catch (IOException)
            {
                return 0;
            }
        }

        private async Task CurrentAsync(IEnumerable<string> cells)
        {
            var left = cells.ToHashSet();
            await page.UntilAsync(m => (string?)m["type"] == "cell" && (string)m["cell"]!["state"]! == "current" && left.Remove((string)m["cell"]!["id"]!) && left.Count == 0);
        }
    }
}
