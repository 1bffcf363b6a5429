using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using EightOhm.Cli.Live;

namespace EightOhm.Cli.Tests.Live;

/// <summary>Cells in a process of their own: what they show is what a run shows, and what they do to their process is told.</summary>
public sealed class RealCellsTests : IAsyncLifetime, IDisposable
{
    private readonly LiveShop shop = new();

    public Task InitializeAsync() => shop.SavedAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task After_moves_every_shown_value_is_that_of_a_run_with_the_same_set()
    {
        await using var bench = shop.OpenReal();
        bench.Chapter("01-targets");
        bench.Try("", "P", "150 W", null, isDragging: false);
        await bench.IdleAsync();
        bench.Try("", "R_in", "22 kΩ", null, isDragging: false);
        await bench.IdleAsync();
        bench.Try("", "P", "120 W", null, isDragging: false);
        await bench.IdleAsync();
        Assert.DoesNotContain(shop.News, n => (string?)n["type"] == "trouble");
        var sheet = LiveShop.Sheet(bench);
        bench.Keep();
        await bench.SaveAsync();
        var live = Outputs();
        var liveRecord = File.ReadAllText(shop.Record);

        // The same from the design as it was.
        await shop.Shop.RunAsync(shop.Shop.Notebooks, "--save", "--full", "--set", "P=", "--set", "R_in=");
        var ran = await shop.Shop.RunAsync(shop.Shop.Notebooks, "--save", "--set", "P=120 W", "--set", "R_in=22 kΩ");

        Assert.Equal("", ran.Error);
        Assert.Equal(Outputs(), live);
        Assert.Equal(File.ReadAllText(shop.Record), liveRecord);
        Assert.Equal(2, (int)sheet["tally"]!["met"]!);
        Assert.Contains("2 met", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_endless_cell_is_stopped_and_the_others_are_there_again()
    {
        await using var bench = shop.OpenReal();
        var endless = bench.Add("01-targets", null, "code");
        bench.Edit("01-targets", endless, "while (true);");
        bench.Calculate("01-targets", "cell", endless);
        await UntilAsync(() => LiveShop.State(bench, "01-targets", 0) == "running");
        // It is at work in its process, not only on its way there.
        await Task.Delay(500);

        bench.Stop();
        await bench.IdleAsync();
        Assert.Equal("edited", LiveShop.State(bench, "01-targets", 0));

        bench.Delete("01-targets", endless);
        bench.Calculate("01-targets", "cell", LiveShop.Id(bench, "01-targets", 4));
        await bench.IdleAsync();
        Assert.Equal("current", LiveShop.State(bench, "01-targets", 4));
        Assert.Contains("47 kΩ", Html(bench, "01-targets", 4), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_process_of_cells_leaves_nothing_in_the_temporary_folder()
    {
        string process;
        await using (var bench = shop.OpenReal())
        {
            var asks = bench.Add("01-targets", null, "code");
            bench.Edit("01-targets", asks, "Environment.ProcessId");
            bench.Calculate("01-targets", "cell", asks);
            await bench.IdleAsync();
            process = Regex.Match(Html(bench, "01-targets", 0), @"\d{2,}").Value;
            Assert.NotEqual("", process);
        }

        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(Path.GetTempPath()), entry => Path.GetFileName(entry).Contains($"-{process}-", StringComparison.Ordinal));
    }

    [SkippableFact]
    public async Task A_process_that_was_ended_before_it_came_to_the_cell_is_another_and_the_cell_runs()
    {
        Skip.IfNot(Directory.Exists("/proc/self"), "The process of the cells is found by its folder in /proc, which this system has not.");
        await using var bench = shop.OpenReal();
        bench.Calculate("01-targets", "design", null);
        await bench.IdleAsync();
        var process = Path.GetFileName(Assert.Single(Directory.GetDirectories("/proc"), IsOfTheCells));

        // It hears nothing while it is held, and is gone then.
        Signal("-STOP");
        bench.Calculate("01-targets", "cell", LiveShop.Id(bench, "01-targets", 4));
        await UntilAsync(() => LiveShop.State(bench, "01-targets", 4) == "running");
        await Task.Delay(200);
        Signal("-KILL");
        await bench.IdleAsync();

        Assert.Equal("current", LiveShop.State(bench, "01-targets", 4));
        Assert.Contains("47 kΩ", Html(bench, "01-targets", 4), StringComparison.Ordinal);
        Assert.DoesNotContain(shop.News, n => (string?)n["type"] == "kernel" && (string?)n["state"] == "ended");

        void Signal(string name) => System.Diagnostics.Process.Start("kill", [name, process]).WaitForExit();

        bool IsOfTheCells(string process)
        {
            try
            {
                return Directory.ResolveLinkTarget(process + "/cwd", returnFinalTarget: false)?.FullName == shop.Shop.Notebooks;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // It is no process, has ended, or is somebody else's.
                return false;
            }
        }
    }

    [Theory]
    [InlineData("Environment.Exit(7)", "It ended the whole process with code 7")]
    [InlineData("new System.Threading.Thread(() => throw new InvalidOperationException(\"boo\")).Start(); System.Threading.Thread.Sleep(20000);", "A thread that a cell had started threw InvalidOperationException: boo")]
    [InlineData("var all = new List<byte[]>(); while (true) { var more = new byte[64 << 20]; Array.Fill(more, (byte)1); all.Add(more); }", "It wanted more memory than")]
    public async Task A_cell_that_ends_its_process_is_told_with_its_cell_and_nothing_else_is_lost(string code, string words)
    {
        await using var bench = shop.OpenReal();
        bench.Calculate("01-targets", "chapter", null);
        await bench.IdleAsync();
        var culprit = bench.Add("01-targets", LiveShop.Id(bench, "01-targets", 3), "code");
        bench.Edit("01-targets", culprit, code);

        bench.Calculate("01-targets", "cell", culprit);
        await bench.IdleAsync();

        var cell = LiveShop.Cell(bench, "01-targets", 4);
        Assert.Equal("failed", (string)cell["state"]!);
        Assert.StartsWith(words, (string)cell["error"]!["words"]!, StringComparison.Ordinal);
        Assert.Contains(shop.News, n => (string?)n["type"] == "kernel" && (string?)n["state"] == "ended");
        bench.Delete("01-targets", culprit);
        bench.Calculate("01-targets", "cell", LiveShop.Id(bench, "01-targets", 4));
        await bench.IdleAsync();
        Assert.Contains("47 kΩ", Html(bench, "01-targets", 4), StringComparison.Ordinal);
        Assert.Equal("current", LiveShop.State(bench, "01-targets", 4));
    }

    [Fact]
    public async Task A_cell_without_an_answer_leaves_what_hangs_on_it_undecided_and_a_fault_is_at_its_line()
    {
        await using var bench = shop.OpenReal();
        var cell = LiveShop.Id(bench, "01-targets", 3);
        bench.Edit("01-targets", cell, "throw new ShortfallException(\"The rail\", 1.V, \"it sags\", \"Try more.\");\n" + LiveShop.Peak);
        bench.Calculate("01-targets", "cell", cell);
        await bench.IdleAsync();
        Assert.Equal("noAnswer", (string)LiveShop.Cell(bench, "01-targets", 3)["outcome"]!);
        Assert.Equal(1, (int)LiveShop.Sheet(bench)["tally"]!["cannotTell"]!);

        bench.Edit("01-targets", cell, LiveShop.Peak + "\nvar x = 100.W + 1.V;");
        bench.Calculate("01-targets", "cell", cell);
        await bench.IdleAsync();
        Assert.Equal(3, (int)LiveShop.Cell(bench, "01-targets", 3)["error"]!["line"]!);

        bench.Edit("01-targets", cell, LiveShop.Peak);
        bench.Calculate("01-targets", "cell", cell);
        await bench.IdleAsync();
        Assert.Equal("current", LiveShop.State(bench, "01-targets", 3));
        Assert.Equal(2, (int)LiveShop.Sheet(bench)["tally"]!["met"]!);
    }

    [Fact]
    public async Task A_new_design_is_calculated_and_its_record_is_made_with_the_first_save()
    {
        await using var bench = shop.OpenReal();
        File.Delete(shop.Record);
        await bench.TakeFileAsync(null);
        Assert.Empty(bench.All()[1]["designs"]!.AsArray());

        bench.Calculate("01-targets", "design", null);
        await bench.IdleAsync();
        Assert.Equal(2, (int)LiveShop.Sheet(bench)["tally"]!["met"]!);
        Assert.False(File.Exists(shop.Record));
        await bench.SaveAsync();
        Assert.True(File.Exists(shop.Record));
    }

    [Fact]
    public async Task What_a_cell_prints_is_shown_while_it_runs()
    {
        await using var bench = shop.OpenReal();
        var slow = bench.Add("02-later", null, "code");
        // It waits until its first words were seen.
        var seen = Path.Combine(shop.Shop.Folder, "seen");
        bench.Edit("02-later", slow, $"Console.WriteLine(\"turn 0\"); while (!File.Exists(@\"{seen}\")) System.Threading.Thread.Sleep(20); Console.WriteLine(\"turn 9\");");
        bench.Calculate("02-later", "cell", slow);
        await UntilAsync(() => shop.News.Any(n => (string?)n["type"] == "printed" && ((string)n["html"]!).Contains("turn 0", StringComparison.Ordinal)));
        Assert.DoesNotContain("turn 9", Html(bench, "02-later", 0), StringComparison.Ordinal);
        await File.WriteAllTextAsync(seen, "");
        await bench.IdleAsync();

        Assert.Contains("turn 9", Html(bench, "02-later", 0), StringComparison.Ordinal);
    }

    private static string Html(Workbench bench, string chapter, int place) => string.Concat(LiveShop.Cell(bench, chapter, place)["outputs"]!.AsArray().Select(o => (string)o!));

    private static async Task UntilAsync(Func<bool> isSo)
    {
        for (var i = 0; i < 1200 && !isSo(); i++)
            await Task.Delay(50);
        Assert.True(isSo());
    }

    private string Outputs() => string.Join("\n", new[] { "01-targets", "02-later" }.SelectMany(c => Workshop.SavedOutputs(shop.File(c))).Select(o => o.ToJsonString()));
}
