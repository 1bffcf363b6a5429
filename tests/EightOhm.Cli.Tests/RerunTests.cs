namespace EightOhm.Cli.Tests;

/// <summary>Only what hangs on what was set runs again, and the book is the one that a run of all cells makes.</summary>
public sealed class RerunTests : IDisposable
{
    private const string Open = "var amp = DesignRecord.Open(\"amp.json\");";

    private readonly Workshop shop = new();

    public RerunTests()
    {
        shop.Notebook(
            "01-sheet",
            Open,
            "var P = amp.Target(\"P\", 100.W);\nvar R_L = amp.Target(\"R_L\", 8.Ohm);\nvar f_max = amp.Target(\"f_max\", 20.kHz);\nvar V_max = amp.Target(\"V_max\", 45.V);",
            "ElectricPotential Peak(Power p) => Sqrt(2 * p * R_L);",
            "Console.Write($\"peak {QuantityFormat.Short(Peak(P))}\");",
            "Console.Write($\"band {QuantityFormat.Short(f_max)}\");",
            "var V_pk = amp.Derive(\"V_pk\", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));");
        shop.Notebook(
            "02-swing",
            Open,
            "amp.Require(\"swing\", \"V_pk\").AtMost(\"V_max\");",
            "var twice = 2 * amp.Get<ElectricPotential>(\"V_pk\");",
            "Console.Write($\"swing {QuantityFormat.Short(twice)}\");",
            "Console.Write(\"the same for all\");");
        shop.Notebook("03-band", Open, "Console.Write(QuantityFormat.Short(amp.Get<Frequency>(\"f_max\")));");
    }

    private string First => Path.Combine(shop.Notebooks, "01-sheet.ipynb");

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Cells_that_do_not_hang_on_what_was_set_keep_their_outputs()
    {
        await shop.RunAsync(shop.Notebooks, "--save");

        var some = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");
        var partly = Book();
        var all = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W", "--full");

        Assert.Equal("", some.Error);
        // Of the third notebook none; of the first two neither the band nor what is the same for all.
        Assert.Matches(@"Ran (\d|1[0-2]) of 16 cells: those that hang on P, with the cells that these need\.", some.Output);
        Assert.Contains("Ran all 16 cells, since --full was given.", all.Output, StringComparison.Ordinal);
        Assert.Equal(Book(), partly);
        Assert.Contains("swing 113.1 V", partly["02-swing.html"], StringComparison.Ordinal);
        Assert.Equal(all.Code, some.Code);
    }

    [Fact]
    public async Task What_was_read_once_is_kept_and_says_the_same_until_the_text_is_another()
    {
        await shop.RunAsync(shop.Notebooks, "--save");
        // The run has read the cells on their way through the compiler.
        var graphs = Directory.GetFiles(Path.Combine(shop.Notebooks, ".eightohm"), "*.graph").ToDictionary(path => path, File.ReadAllBytes);
        Assert.Equal(3, graphs.Count);
        foreach (var path in graphs.Keys)
            File.Delete(path);
        var read = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");
        var first = Book();
        // Read for themselves they say the same.
        Assert.All(graphs, graph => Assert.Equal(graph.Value, File.ReadAllBytes(graph.Key)));

        var kept = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");

        Assert.Equal(read.Output, kept.Output);
        Assert.Equal(first, Book());
        Assert.All(graphs, graph => Assert.Equal(graph.Value, File.ReadAllBytes(graph.Key)));

        // Another's, or damaged: read anew, and written anew.
        foreach (var path in graphs.Keys)
            await File.WriteAllBytesAsync(path, [.. graphs[path].Select(b => (byte)(b + 1))]);
        Assert.Equal(read.Output, (await shop.RunAsync(shop.Notebooks, "--set", "P=200 W")).Output);
        Assert.All(graphs, graph => Assert.Equal(graph.Value, File.ReadAllBytes(graph.Key)));

        // A text that hangs on it now.
        shop.Notebook("03-band", Open, "Console.Write(QuantityFormat.Short(amp.Get<Power>(\"P\")));");
        await shop.RunAsync(shop.Notebooks, "--save");
        await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");
        Assert.Contains("200 W", Book()["03-band.html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_nothing_hangs_on_runs_the_fewest_cells()
    {
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "f_max=40 kHz");

        Assert.Matches(@"Ran [1-9] of 16 cells: those that hang on f_max", ran.Output);
        Assert.Contains("40 kHz", await File.ReadAllTextAsync(Path.Combine(shop.Book, "03-band.html")), StringComparison.Ordinal);
        Assert.Contains("peak 40 V", await File.ReadAllTextAsync(Path.Combine(shop.Book, "01-sheet.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_limit_that_is_named_moves_what_tells_of_its_requirement()
    {
        shop.Notebook("04-limit", Open, "Console.Write(amp.Verdict(\"V_pk\"));", "Console.Write(amp.Verdict(\"swing\"));");
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "V_max=50 V");

        Assert.Equal("", ran.Error);
        Assert.Matches(@"Ran \d+ of 20 cells: those that hang on V_max", ran.Output);
        var page = await File.ReadAllTextAsync(Path.Combine(shop.Book, "04-limit.html"));
        Assert.Equal(2, page.Split("at most 50 V is asked").Length - 1);
        Assert.DoesNotContain("at most 45 V", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_value_that_is_the_same_runs_nothing()
    {
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "P=100 W");

        Assert.Contains("Ran 0 of 16 cells", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing moved with it.", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Outputs_that_are_not_current_are_made_anew_and_the_console_says_why()
    {
        await shop.RunAsync(shop.Notebooks, "--save");
        var kept = shop.Everything();

        await AllRunAsync(First, n => n.Replace("band {", "bandwidth {", StringComparison.Ordinal), "the code of 01-sheet.ipynb, or EightOhm, is not what its outputs were made with");
        await AllRunAsync(First, n => n.Replace("peak 40 V", "peak 41 V", StringComparison.Ordinal), "the outputs of 01-sheet.ipynb were changed since its run");
        await AllRunAsync(First, n => n.Replace("\"eightohm\"", "\"other\"", StringComparison.Ordinal), "01-sheet.ipynb holds no outputs of a run with --save");
        await AllRunAsync(Path.Combine(shop.Notebooks, "amp.json"), r => r.Replace("\"20000", "\"21000", StringComparison.Ordinal).Replace("\"20 kHz", "\"21 kHz", StringComparison.Ordinal), "the record, or a file that 01-sheet.ipynb reads, was changed since its run");

        Assert.Equal(kept.Where(f => !f.Key.StartsWith("book", StringComparison.Ordinal)), shop.Everything().Where(f => !f.Key.StartsWith("book", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_file_that_a_cell_reads_counts_too()
    {
        shop.File("card.txt", "one");
        shop.Notebook("04-card", "Console.Write(System.IO.File.ReadAllText(\"card.txt\"));");
        await shop.RunAsync(shop.Notebooks, "--save");
        Assert.Matches(@"Ran \d+ of 18 cells: those", (await shop.RunAsync(shop.Notebooks, "--set", "P=120 W")).Output);

        await AllRunAsync(shop.File("card.txt", "one"), _ => "two", "the record, or a file that 04-card.ipynb reads, was changed since its run");
    }

    // Changes a file, runs, and puts it back.
    private async Task AllRunAsync(string file, Func<string, string> change, string because)
    {
        var text = await File.ReadAllTextAsync(file);
        var changed = change(text);
        Assert.NotEqual(text, changed);
        await File.WriteAllTextAsync(file, changed);

        Assert.Contains($"cells, since {because}", (await shop.RunAsync(shop.Notebooks, "--set", "P=120 W")).Output, StringComparison.Ordinal);

        await File.WriteAllTextAsync(file, text);
    }

    private Dictionary<string, string> Book() => Directory.GetFiles(shop.Book).ToDictionary(f => Path.GetFileName(f), File.ReadAllText);
}
