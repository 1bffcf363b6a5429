using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using EightOhm.Cli.Tests.Live;

namespace EightOhm.Benchmarks;

/// <summary>The program on a folder of its own, and a socket that speaks as the page does.</summary>
/// <param name="process">The program.</param>
/// <param name="page">The page.</param>
internal sealed class Served(Process process, LiveClient page) : IAsyncDisposable
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
        var news = await ChapterAsync(chapter);
        return [.. news["cells"]!.AsArray().Where(c => (string)c!["kind"]! == "code" && ((string)c["source"]!).Length > 0).Select(c => (string)c!["id"]!)];
    }

    /// <summary>A chapter as the page has it.</summary>
    public async Task<JsonObject> ChapterAsync(string chapter)
    {
        await page.WishAsync(new() { ["do"] = "chapter", ["chapter"] = chapter });
        return await page.UntilAsync(m => (string?)m["type"] == "chapter");
    }

    /// <summary>The inputs of the only design.</summary>
    public async Task<List<JsonObject>> InputsAsync()
    {
        await page.WishAsync(new() { ["do"] = "put-back" });
        var news = await page.UntilAsync(m => (string?)m["type"] == "inputs");
        return [.. news["designs"]![0]!["groups"]!.AsArray().SelectMany(g => g!["rows"]!.AsArray()).Select(r => (JsonObject)r!)];
    }

    /// <summary>Wishes for something, and hears all that is said until nothing is left to be calculated.</summary>
    /// <returns>Whether it was done; false when it was refused.</returns>
    public async Task<bool> QuietAsync(JsonObject wish, Action<JsonObject> hear)
    {
        page.Seen.Clear();
        var id = await page.WishAsync(wish);
        var (isDone, isRefused, isQuiet) = (false, false, false);
        await page.UntilAsync(m =>
        {
            hear(m);
            if ((string?)m["type"] == "reply" && (int?)m["id"] == id)
                (isDone, isRefused) = (true, m["refused"] is not null);
            if ((string?)m["type"] == "sheet")
                isQuiet = m["busy"] is null;
            return isRefused || isDone && isQuiet;
        });
        return !isRefused;
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
