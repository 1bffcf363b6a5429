using EightOhm.Cli.Live;
using EightOhm.Cli.Live.Cells;

namespace EightOhm.Cli.Tests.Live;

/// <summary>What can be opened, by whom, and what is said where it cannot.</summary>
public sealed class OpeningTests : IDisposable
{
    private readonly LiveShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_folder_without_notebooks_and_a_notebook_that_is_none_are_told()
    {
        Directory.CreateDirectory(shop.Shop.Notebooks);
        Assert.Contains("There are no notebooks", Assert.Throws<RunFailure>(() => shop.OpenScripted()).Message, StringComparison.Ordinal);

        shop.Shop.File("a.ipynb", "no notebook");
        Assert.Contains("a.ipynb is not JSON", Assert.Throws<RunFailure>(() => shop.OpenScripted()).Message, StringComparison.Ordinal);

        shop.Shop.File("a.ipynb", "{\"cells\": [], \"nbformat\": 4, \"metadata\": {\"kernelspec\": {\"language\": \"python\"}}}");
        Assert.Contains("a.ipynb is written in python", Assert.Throws<RunFailure>(() => shop.OpenScripted()).Message, StringComparison.Ordinal);
        await Task.CompletedTask;
    }

    [Fact]
    public void One_folder_has_one_owner_and_what_a_killed_one_left_is_taken_over()
    {
        shop.Shop.Notebook("a", "1");
        using (FolderLock.Take(shop.Shop.Notebooks))
        {
            var refusal = Assert.Throws<RunFailure>(() => FolderLock.Take(shop.Shop.Notebooks));
            Assert.Contains($"is open already, by process {Environment.ProcessId}", refusal.Message, StringComparison.Ordinal);
        }

        Assert.False(File.Exists(Path.Combine(shop.Shop.Notebooks, FolderLock.File)));
        // The number of this process, but started at another time: it was another program's.
        shop.Shop.File(FolderLock.File, $"{{\"Process\": {Environment.ProcessId}, \"Started\": 1}}");
        using (FolderLock.Take(shop.Shop.Notebooks))
        {
            // Taken over.
        }

        shop.Shop.File(FolderLock.File, "cut o");
        using (FolderLock.Take(shop.Shop.Notebooks))
        {
            // Taken over as well.
        }
    }

    [Fact]
    public void A_folder_is_trusted_once_it_was_trusted()
    {
        var list = new TrustedFolders(Path.Combine(shop.Shop.Folder, "data", "trusted.txt"));
        Assert.False(list.Has(shop.Shop.Notebooks));
        list.Add(shop.Shop.Notebooks);
        Assert.True(new TrustedFolders(Path.Combine(shop.Shop.Folder, "data", "trusted.txt")).Has(shop.Shop.Notebooks + "/../notebooks"));
        Assert.False(list.Has(shop.Shop.Folder));
    }

    [Fact]
    public async Task A_folder_that_the_person_has_run_or_made_is_trusted()
    {
        var list = new TrustedFolders(Path.Combine(shop.Shop.Folder, "trusted.txt"));
        var notebook = shop.Shop.Notebook("a", "1");
        async Task<int> Do(params string[] args)
        {
            using var said = new StringWriter();
            return await CommandLine.InvokeAsync(args, said, said, live: false, list);
        }

        Assert.Equal(2, await Do("run", notebook, "--out", shop.Shop.Book, "--set", "P=1 W"));
        Assert.False(list.Has(shop.Shop.Notebooks));
        Assert.Equal(0, await Do("run", notebook, "--out", shop.Shop.Book));
        Assert.True(list.Has(shop.Shop.Notebooks));

        var made = Path.Combine(shop.Shop.Folder, "made");
        Assert.Equal(0, await Do("new", made));
        Assert.True(list.Has(made));
        Assert.False(list.Has(shop.Shop.Folder));
    }

    [Fact]
    public void What_a_killed_one_has_left_is_swept_and_what_belongs_to_somebody_stays()
    {
        string Left(string name, string? owner)
        {
            var folder = Directory.CreateDirectory(Path.Combine(shop.Shop.Folder, name)).FullName;
            if (owner is not null)
                File.WriteAllText(Path.Combine(folder, "owner.json"), owner);
            return folder;
        }

        using var mine = WorkingFolder.Make(shop.Shop.Folder);
        var killed = Left("eightohm-open-killed", $"{{\"Process\": {Environment.ProcessId}, \"Started\": 1}}");
        var (begun, old) = (Left("eightohm-open-begun", null), Left("eightohm-open-old", null));
        var other = Left("eightohm-other", null);
        foreach (var aged in new[] { old, other })
            Directory.SetLastWriteTimeUtc(aged, DateTime.UtcNow.AddDays(-2));

        string made;
        using (var next = WorkingFolder.Make(shop.Shop.Folder))
        {
            made = next.Path;
            Assert.Equal([false, false, true, true, true, true], new[] { killed, old, begun, other, mine.Path, made }.Select(Directory.Exists));
        }

        Assert.False(Directory.Exists(made));
    }

    [Fact]
    public async Task The_address_is_printed_and_an_end_by_the_person_is_a_good_end()
    {
        shop.Shop.Notebook("a", "1");
        using var output = new StringWriter();
        using var stop = new CancellationTokenSource();
        var list = new TrustedFolders(Path.Combine(shop.Shop.Folder, "trusted.txt"));
        var opener = new Opener(output, copy => new ScriptedCells(copy), new NoAssistant(), list);

        var running = opener.RunAsync(new OpenRequest(shop.Shop.Notebooks, 0, OpensBrowser: false), stop.Token);
        for (var i = 0; i < 600 && !output.ToString().Contains("window", StringComparison.Ordinal); i++)
            await Task.Delay(50);
        var address = output.ToString().Split('\n')[0]["Open at ".Length..].Trim();
        await using (var page = await LiveClient.EnterAsync(address))
        {
            await page.AskAsync(new System.Text.Json.Nodes.JsonObject { ["do"] = "trust" });
            await stop.CancelAsync();
            await page.UntilAsync(m => (string?)m["type"] == "ended");
        }

        Assert.Equal(0, await running);
        Assert.True(list.Has(shop.Shop.Notebooks));
        Assert.False(File.Exists(Path.Combine(shop.Shop.Notebooks, FolderLock.File)));
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("65536")]
    [InlineData("http")]
    public async Task A_port_that_is_none_is_refused(string port)
    {
        shop.Shop.Notebook("a", "1");
        using var output = new StringWriter();
        using var error = new StringWriter();

        var code = await CommandLine.InvokeAsync(["open", shop.Shop.Notebooks, "--port", port], output, error, live: false);

        Assert.Equal(2, code);
        Assert.Contains($"--port must be a whole number from 0 to 65535 (was '{port}')", error.ToString(), StringComparison.Ordinal);
    }
}
