using System.Diagnostics;
using System.Globalization;

namespace EightOhm.Cli.Tests;

/// <summary>What ends a process, in processes of their own, side by side: most of each is the wait for its compiler.</summary>
public sealed class EndingTests
{
    [Fact]
    public async Task A_cell_over_the_limit_ends_the_process_and_nothing_is_written()
    {
        using var shop = new Workshop();
        shop.Notebook("a", "1 + 1", "while (true) { }");
        var before = shop.Everything();

        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--save", "--limit", "9.5");
        var ran = await Child.EndAsync(process);

        Assert.Equal(4, ran.Code);
        Assert.Contains("a.ipynb, cell 4 ran longer than 9.5 s", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
    }

    [SkippableFact]
    public async Task A_signal_ends_the_process_at_once_with_its_own_code_and_nothing_is_written()
    {
        Skip.If(OperatingSystem.IsWindows(), "Windows has no signal to send to another process");
        const string Library = "EightOhm.Work.Checkpoint();"; // a loop of the library; the other is one that nobody can stop

        await Task.WhenAll(SignalledAsync("INT", 130, Library), SignalledAsync("TERM", 143, ""), SignalledAsync("HUP", 129, ""));
    }

    private static async Task SignalledAsync(string signal, int code, string poll)
    {
        using var shop = new Workshop();
        var sign = Path.Combine(shop.Folder, "running");
        shop.Notebook("a", $"System.IO.File.WriteAllText(@\"{sign}\", \"\");\nwhile (true) {{ {poll} }}");
        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--save", "--limit", "600");
        await Child.SeeAsync(sign, process);
        var before = shop.Everything();

        using (Process.Start("kill", [$"-{signal}", process.Id.ToString(CultureInfo.InvariantCulture)]))
        {
        }

        var ran = await Child.EndAsync(process);

        Assert.Equal(code, ran.Code);
        Assert.Contains("nothing was written", ran.Error, StringComparison.Ordinal);
        foreach (var hidden in before.Keys.Where(k => k.StartsWith(".book", StringComparison.Ordinal)).ToList())
            before.Remove(hidden);
        Assert.Equal(before, shop.Everything());
        Assert.Equal(["notebooks", "running"], Directory.GetFileSystemEntries(shop.Folder).Select(Path.GetFileName).Order());
    }
}
