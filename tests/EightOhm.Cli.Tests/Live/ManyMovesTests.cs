using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using EightOhm.Cli.Live;
using Xunit.Abstractions;

namespace EightOhm.Cli.Tests.Live;

/// <summary>After any move everything that is shown is what a run of its own shows: the entries, the requirements, and what each cell stored.</summary>
public sealed class ManyMovesTests(ITestOutputHelper output) : IDisposable
{
    private const string Design = "tern-100";

    private readonly LiveShop shop = new();
    private readonly Dictionary<string, string> set = new(StringComparer.Ordinal);

    public void Dispose() => shop.Dispose();

    // A run of all chapters costs half a minute of the processor: all of them and many moves are for patient runs.
    private static readonly bool IsSlow = Environment.GetEnvironmentVariable("EIGHTOHM_SLOW") == "1";

    [Fact]
    public async Task After_random_moves_all_is_as_a_run_with_the_same_values_has_it()
    {
        Repository.Copy(Path.Combine(Repository.Notebooks, Design), shop.Shop.Notebooks, name => IsSlow || name.StartsWith("03", StringComparison.Ordinal));
        var fresh = Path.Combine(shop.Shop.Folder, "fresh");
        Repository.Copy(shop.Shop.Notebooks, fresh, _ => true);
        var random = new Random(IsSlow ? 7 : 5);
        await using var bench = shop.OpenReal();
        foreach (var chapter in bench.All()[0]["chapters"]!.AsArray())
            bench.Chapter((string)chapter!["id"]!);
        for (int i = 1, moves = IsSlow ? 20 : 2; i <= moves; i++)
        {
            shop.News.Clear();
            var watch = Stopwatch.StartNew();
            var name = Move(bench, random);
            await bench.IdleAsync();
            var took = watch.Elapsed;
            var ran = shop.News.Where(n => (string?)n["type"] == "cell" && (string?)n["cell"]!["state"] == "running").Select(n => $"{n["chapter"]} {n["cell"]!["id"]}").Distinct().Count();
            Say(FormattableString.Invariant($"{i}: {name} = {set[name]}: {ran} cells ran, {took.TotalSeconds:0.0} s"));
            Assert.DoesNotContain(shop.News, n => (string?)n["type"] == "trouble");
            bench.Keep();
            await bench.SaveAsync();
            if (!IsSlow && i < moves)
                continue;
            await RunAsync(fresh);
            Same(fresh, name);
        }
    }

    // An input among those that the chapters make, somewhere on its slider: mostly near, now and then anywhere.
    private string Move(Workbench bench, Random random)
    {
        var rows = bench.All()[2]["designs"]![0]!["groups"]!.AsArray().SelectMany(g => g!["rows"]!.AsArray())
            .Where(r => r!["slider"] is not null && r["chapters"]!.AsArray().Count > 0).ToList();
        while (true)
        {
            var row = rows[random.Next(rows.Count)]!;
            var (slider, name) = (row["slider"]!, (string)row["name"]!);
            var at = slider["values"] is JsonArray values ? (int)slider["at"]! / (values.Count - 1.0) : (double)slider["at"]!;
            var place = random.Next(4) == 0 ? random.NextDouble() : Math.Clamp(at + (0.3 * (random.NextDouble() - 0.5)), 0, 1);
            var before = (string)row["value"]!;
            var value = bench.Try("", name, null, place, isDragging: false);
            set[name] = value;
            if (value != before)
                return name;
        }
    }

    // On the design as it was before all moves; in a process of its own where nobody is in a hurry.
    private async Task RunAsync(string fresh)
    {
        foreach (var file in Directory.GetFiles(fresh))
            File.Copy(Path.Combine(Repository.Notebooks, Design, Path.GetFileName(file)), file, overwrite: true);
        string[] sets = [.. set.SelectMany(s => new[] { "--set", $"{s.Key}={s.Value}" })];
        if (!IsSlow)
        {
            // The compiler is warm here.
            var ran = await shop.Shop.RunAsync(fresh, ["--save", .. sets]);
            Assert.Equal("", ran.Error);
            return;
        }

        var start = new ProcessStartInfo("dotnet", [typeof(CommandLine).Assembly.Location, "run", fresh, "--save", "--out", shop.Shop.Book, "--limit", "900", .. sets])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["HOME"] = start.Environment["XDG_DATA_HOME"] = shop.Shop.Folder;
        using var process = Process.Start(start)!;
        var (said, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode is ExitCode.Done or ExitCode.NotMet, $"{process.ExitCode}: {await error}\n{await said}");
    }

    private void Same(string fresh, string moved)
    {
        var record = Path.Combine(fresh, "record.json");
        Assert.Equal(File.ReadAllText(record), File.ReadAllText(shop.Record));
        foreach (var notebook in Directory.GetFiles(fresh, "*.ipynb"))
        {
            var (ran, live) = (Workshop.SavedOutputs(notebook), Workshop.SavedOutputs(shop.File(Path.GetFileNameWithoutExtension(notebook))));
            for (var i = 0; i < ran.Length; i++)
                Assert.True(ran[i].ToJsonString() == live[i].ToJsonString(), string.Create(CultureInfo.InvariantCulture, $"{moved} moved: {Path.GetFileName(notebook)}, code cell {i + 1}\nrun:  {ran[i].ToJsonString()}\nlive: {live[i].ToJsonString()}"));
        }
    }

    private void Say(string line)
    {
        output.WriteLine(line);
        // Many moves take long: what was found so far can be read while they run.
        if (Environment.GetEnvironmentVariable("EIGHTOHM_MOVES_LOG") is { Length: > 0 } log)
            File.AppendAllText(log, line + Environment.NewLine);
    }
}
