using System.Diagnostics;
using System.Globalization;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Killed;

/// <summary>A process that is killed while it puts book, notebooks and record in their places: the next run completes it or takes it back.</summary>
public sealed class PlacingTests
{
    private const int AtRandom = 100;
    private const int SideBySide = 4;

    [Theory]
    [InlineData("save")]
    [InlineData("book")]
    public async Task Killed_before_any_step_all_is_of_one_run_after_the_next(string what)
    {
        var ended = 0;
        var seen = new System.Collections.Concurrent.ConcurrentDictionary<int, bool>();
        await Parallel.ForEachAsync(Enumerable.Range(1, 60), new ParallelOptions { MaxDegreeOfParallelism = SideBySide }, async (step, _) =>
        {
            // They are begun in order: where one came to its end, there is no later step to be killed at.
            if (Volatile.Read(ref ended) > 0)
                return;
            using var place = new Place();
            NumberedRun.Publish(place.Folder, 1, saves: true, Disk.Real);
            if (await RunAsync("publish", place.Folder, "2", Text(step), what) == 0)
            {
                Interlocked.Increment(ref ended);
                return;
            }

            // The one that recovers may be killed as well, at any step of its own.
            await RunAsync("recover", place.Folder, "0", Text((step % 7) + 1));
            NumberedRun.Recover(place.Folder, Disk.Real);

            var (book, saved) = NumberedRun.State(place.Folder);
            Assert.Equal(what == "save" ? book : 1, saved);
            seen[book] = true;
            Assert.Empty(NumberedRun.Recover(place.Folder, Disk.Real));
        });

        // Each step was stopped at: a number beyond the last step comes to the end.
        Assert.True(ended > 0, "more steps than the test stops at");
        Assert.Equal([1, 2], seen.Keys.Order());
    }

    [Fact]
    public async Task Killed_at_random_all_is_of_one_run_after_the_next()
    {
        var kills = 0;
        await Parallel.ForEachAsync(Enumerable.Range(0, SideBySide), async (worker, _) =>
        {
            using var place = new Place();
            NumberedRun.Publish(place.Folder, 1, saves: true, Disk.Real);
            var random = new Random(worker);
            for (var i = 0; i < AtRandom / SideBySide; i++)
            {
                var before = NumberedRun.State(place.Folder).Saved;
                using var victim = Start("loop", place.Folder, Text(before + 1));
                var reported = int.Parse((await victim.StandardOutput.ReadLineAsync(CancellationToken.None))!, CultureInfo.InvariantCulture);
                await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * 25), CancellationToken.None);
                victim.Kill();
                while (await victim.StandardOutput.ReadLineAsync(CancellationToken.None) is { } line)
                    reported = int.TryParse(line, out var n) ? Math.Max(reported, n) : reported;
                await victim.WaitForExitAsync(CancellationToken.None);
                Interlocked.Increment(ref kills);

                NumberedRun.Recover(place.Folder, Disk.Real);

                var (book, saved) = NumberedRun.State(place.Folder);
                Assert.Equal(book, saved);
                // What the process reported as done is there; at most the next one is too.
                Assert.InRange(saved - reported, 0, 1);
            }
        });

        Assert.Equal(AtRandom, kills);
    }

    [Fact]
    public async Task What_a_person_changed_after_the_kill_is_left_and_told()
    {
        var told = new HashSet<string>();
        for (var step = 1; step < 30; step++)
        {
            using var place = new Place();
            NumberedRun.Publish(place.Folder, 1, saves: true, Disk.Real);
            if (await RunAsync("publish", place.Folder, "2", Text(step), "save") == 0)
                break;
            var mine = Path.Combine(NumberedRun.Notebooks(place.Folder), "record.json");
            await File.WriteAllTextAsync(mine, "mine");

            var said = string.Join(" ", NumberedRun.Recover(place.Folder, Disk.Real));

            Assert.Equal("mine", await File.ReadAllTextAsync(mine));
            told.Add(said.Contains("was taken back", StringComparison.Ordinal) ? "back" : said.Contains("record.json had been changed", StringComparison.Ordinal) ? "left" : "");
            Assert.Empty(Directory.GetFiles(NumberedRun.Notebooks(place.Folder), ".*"));
        }

        Assert.Contains("back", told);
        Assert.Contains("left", told);
    }

    [Theory]
    [InlineData("""{"Book":null,"Files":[{"Place":"../out.json","Written":".out.json.1.tmp","Before":null}]}""")]
    [InlineData("""{"Book":null,"Files":[{"Place":"run.sh","Written":".run.sh.1.tmp","Before":null}]}""")]
    [InlineData("""{"Book":"/","Files":[{"Place":"a.json","Written":"../x","Before":null}]}""")]
    [InlineData("""{"Book":null,"Files":[nu""")]
    [InlineData("[]")]
    [InlineData("")]
    public void A_promise_that_leads_elsewhere_or_is_cut_off_moves_nothing(string promise)
    {
        using var place = new Place();
        NumberedRun.Publish(place.Folder, 1, saves: true, Disk.Real);
        foreach (var stray in new[] { ".out.json.1.tmp", "notebooks/.run.sh.1.tmp", "x" })
            File.WriteAllText(Path.Combine(place.Folder, stray), "other");
        File.WriteAllText(Path.Combine(NumberedRun.Notebooks(place.Folder), SavePromise.File), promise);

        var said = Assert.Single(NumberedRun.Recover(place.Folder, Disk.Real));

        Assert.Contains("as they were", said, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(place.Folder, "out.json")));
        Assert.False(File.Exists(Path.Combine(NumberedRun.Notebooks(place.Folder), "run.sh")));
        Assert.True(File.Exists(Path.Combine(place.Folder, "x")));
    }

    private static async Task<int> RunAsync(params string[] args)
    {
        using var process = Start(args);
        await process.WaitForExitAsync();
        Assert.Equal("", await process.StandardError.ReadToEndAsync());
        return process.ExitCode;
    }

    private static Process Start(params string[] args)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var arg in args.Prepend(typeof(Program).Assembly.Location).Prepend("exec"))
            start.ArgumentList.Add(arg);
        // It has little to do: to compile it well would take longer.
        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }

    private static string Text(int n) => n.ToString(CultureInfo.InvariantCulture);

    private sealed class Place : IDisposable
    {
        public Place() => Directory.CreateDirectory(Path.Combine(NumberedRun.Notebooks(Folder), "part"));

        public string Folder { get; } = Directory.CreateTempSubdirectory("eightohm-killed-").FullName;

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
