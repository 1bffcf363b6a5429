using System.Diagnostics;
using EightOhm.Cells.Running;
using EightOhm.Cli.Output;
using EightOhm.Cli.Running;

namespace EightOhm.Cli.Tests;

/// <summary>Files that others put there: pipes, links in a ring, what is huge or deep, what is set to be read only.</summary>
public sealed class OddFilesTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [SkippableFact]
    public async Task Pipes_are_not_waited_for_and_rings_of_links_are_told()
    {
        Skip.If(OperatingSystem.IsWindows(), "Windows has no such pipes");
        shop.Notebook("a", "1");
        foreach (var name in new[] { "x.json", "y.svg" })
            (await StartAsync("mkfifo", Path.Combine(shop.Notebooks, name))).Dispose();
        shop.Cells("b", Workshop.Cell("markdown", "![y](y.svg)"));
        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks)).Code);

        File.CreateSymbolicLink(Path.Combine(shop.Notebooks, "ring.ipynb"), Path.Combine(shop.Notebooks, "ring.ipynb"));
        var ran = await shop.RunAsync(shop.Notebooks);
        Assert.Equal(2, ran.Code);
        Assert.Contains("ring.ipynb cannot be read", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Huge_and_deep_notebooks_are_refused_in_words()
    {
        using (var file = File.Create(shop.File("a.ipynb", "")))
            file.SetLength(OrdinaryFile.Most + 1);
        Assert.Contains("more than 64 MB is not read", (await shop.RunAsync(shop.Notebooks)).Error, StringComparison.Ordinal);

        shop.File("a.ipynb", new string('[', 100_000));
        Assert.Contains("stand deeper in each other", (await shop.RunAsync(shop.Notebooks)).Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    [System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
    public async Task A_link_stays_a_link_rights_stay_and_what_is_read_only_stays()
    {
        Skip.If(OperatingSystem.IsWindows(), "links and rights of another kind");
        var real = Path.Combine(shop.Folder, "real.ipynb");
        var link = shop.Notebook("a", "1 + 1");
        File.Move(link, real);
        File.CreateSymbolicLink(link, real);
        File.SetUnixFileMode(real, UnixFileMode.UserRead | UnixFileMode.UserWrite);

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        Assert.Equal(real, new FileInfo(link).LinkTarget);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(real));
        Assert.NotEmpty(Workshop.SavedOutputs(real)[1]);
        File.SetUnixFileMode(real, UnixFileMode.UserRead);
        var ran = await shop.RunAsync(shop.Notebooks, "--save");
        Assert.Equal(2, ran.Code);
        Assert.Contains("a.ipynb is set to be read only", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_cell_prints_without_end_is_cut_with_a_word()
    {
        var path = shop.Notebook("a", "for (var i = 0; i < 40_000; i++) Console.WriteLine(new string('x', 40));");

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        var outputs = Workshop.SavedOutputs(path)[1];
        Assert.Equal(2, outputs.Count);
        Assert.Equal(PrintedText.Most, outputs[0]!["text"]!.AsArray().Sum(l => ((string)l!).Length));
        Assert.Contains("more than 1 million characters", (string)outputs[1]!["text"]![0]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_done_outside_of_cells_has_its_limit_too()
    {
        using var end = new ManualResetEventSlim();
        var failure = await Assert.ThrowsAsync<RunFailure>(() => Stage.RunAsync("Reading the records", TimeSpan.FromMilliseconds(50), () => end.Wait(TimeSpan.FromMinutes(1)), CancellationToken.None));
        end.Set();

        Assert.Equal(4, failure.ExitCode);
        Assert.Contains("Reading the records took longer than 0.05 s", failure.Message, StringComparison.Ordinal);
        Assert.Equal(TimeSpan.FromMinutes(1), Stage.LimitOf(TimeSpan.FromSeconds(5)));
        Assert.Equal(TimeSpan.FromMinutes(2), Stage.LimitOf(TimeSpan.FromMinutes(2)));
    }

    [Fact]
    public async Task A_run_says_what_it_found_of_a_killed_one()
    {
        shop.Notebook("a", "1");
        shop.File(SavePromise.File, "{\"Bo");
        shop.File(".a.ipynb.2147483646.tmp", "half");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(0, ran.Code);
        Assert.Contains("ended before it put anything in place", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["a.ipynb"], shop.BesideNotebooks());
    }

    private static async Task<Process> StartAsync(string program, params string[] args)
    {
        var process = Process.Start(program, args);
        await process.WaitForExitAsync();
        return process;
    }
}
