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
        shop.Notebook("a", "1 + 1", "while (true) System.Threading.Thread.Sleep(1);");
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

    [Fact]
    public async Task A_cell_that_ends_the_whole_process_is_named_and_nothing_is_written()
    {
        // What the runtime says of a stack has thousands of lines; the last one is ours.
        await Task.WhenAll(
            EndedAsync("Environment.Exit(0);", "ended the whole process with code 0, as Environment.Exit does"),
            EndedAsync("int Down(int n) => Down(n + 1) + 1;\nDown(0)", "called itself without end"),
            EndedAsync(
                "new System.Threading.Thread(() => throw new InvalidOperationException(\"boom\")).Start();\nSystem.Threading.Thread.Sleep(5000);",
                "a thread that a cell had started threw InvalidOperationException: boom"),
            EndedAsync("async void Fire() { await System.Threading.Tasks.Task.Yield(); throw new FormatException(\"later\"); }\nFire();\nSystem.Threading.Thread.Sleep(5000);", "threw FormatException: later"),
            EndedAsync("Environment.FailFast(\"now\");", "ended the process by force"),
            EndedAsync("System.Diagnostics.Process.GetCurrentProcess().Kill();", "ended by signal 9"));
    }

    [SkippableFact]
    public async Task A_watcher_that_is_killed_takes_the_run_with_it()
    {
        Skip.If(OperatingSystem.IsWindows(), "Windows ends child processes in other ways");
        using var shop = new Workshop();
        var sign = Path.Combine(shop.Folder, "running");
        shop.Notebook("a", $"System.IO.File.WriteAllText(@\"{sign}\", Environment.ProcessId.ToString());\nwhile (true) {{ }}");
        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--limit", "600");
        await Child.SeeAsync(sign, process);
        await Task.Delay(100);
        using var inner = Process.GetProcessById(int.Parse(await File.ReadAllTextAsync(sign), CultureInfo.InvariantCulture));

        process.Kill();

        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await inner.WaitForExitAsync(patience.Token);
        Assert.False(Directory.Exists(shop.Book));
    }

    private static async Task EndedAsync(string cell, string how)
    {
        using var shop = new Workshop();
        shop.Notebook("a", "DesignRecord.Open(\"amp.json\").Target(\"V\", 1.V)", cell);
        var before = shop.Everything();

        using var process = Child.Start("run", shop.Notebooks, "--out", shop.Book, "--save");
        var ran = await Child.EndAsync(process);

        Assert.Equal(3, ran.Code);
        Assert.Contains("a.ipynb, cell 4: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(how, ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("nothing was written.", ran.Error.TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything().Where(f => !f.Key.StartsWith(".book", StringComparison.Ordinal)));
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
