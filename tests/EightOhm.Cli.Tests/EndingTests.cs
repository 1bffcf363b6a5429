using System.Diagnostics;

namespace EightOhm.Cli.Tests;

public sealed class EndingTests : IDisposable
{
    private readonly Workshop shop = new();

    private string Sign => Path.Combine(shop.Folder, "running");

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_cell_over_the_limit_ends_the_process_and_nothing_is_written()
    {
        shop.Notebook("a", "1 + 1", "while (true) { }");
        var before = shop.Everything();

        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--save", "--limit", "1.5");
        var ran = await Child.EndAsync(process);

        Assert.Equal(4, ran.Code);
        Assert.Contains("a.ipynb, cell 4 ran longer than 1.5 s", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
    }

    [SkippableTheory]
    [InlineData("EightOhm.Work.Checkpoint();")] // a loop of the library
    [InlineData("")] // a loop that nobody can stop
    public async Task An_interruption_ends_the_process_at_once_and_nothing_is_written(string poll)
    {
        Skip.If(OperatingSystem.IsWindows(), "Windows has no signal to send to another process");
        shop.Notebook("a", $"System.IO.File.WriteAllText(@\"{Sign}\", \"\");\nwhile (true) {{ {poll} }}");
        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--save");
        await Child.SeeAsync(Sign, process);
        var before = shop.Everything();

        var watch = Stopwatch.StartNew();
        using (Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
        {
        }

        var ran = await Child.EndAsync(process);

        Assert.True(watch.ElapsedMilliseconds < 1000, $"took {watch.ElapsedMilliseconds} ms");
        Assert.Equal(130, ran.Code);
        Assert.Contains("nothing was written", ran.Error, StringComparison.Ordinal);
        foreach (var hidden in before.Keys.Where(k => k.StartsWith(".book", StringComparison.Ordinal)).ToList())
            before.Remove(hidden);
        Assert.Equal(before, shop.Everything());
    }
}
