namespace EightOhm.Cli.Tests;

public sealed class RecordTests : IDisposable
{
    // Not "record": at the start of a line a script takes that word for a declaration.
    private const string Chapter =
        "var design = DesignRecord.Open(\"amp.json\");\n" +
        "design.Name = \"An invented amplifier\";\n" +
        "var P = design.Target(\"P\", 100.W);\n" +
        "var R_L = design.Target(\"R_L\", 8.Ohm);\n" +
        "design.Target(\"V_min\", 28.V);\n" +
        "design.Derive(\"V_rms\", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));\n" +
        "design.Require(\"drives the hall\", \"V_rms\").AtLeast(\"V_min\");\n" +
        "Console.Write(design.EntryOf(\"V_rms\").Reads);";

    private readonly Workshop shop = new();

    private string Record => Path.Combine(shop.Notebooks, "amp.json");

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task The_compliance_sheet_is_printed_and_stands_in_the_index()
    {
        shop.Notebook("a", Chapter);

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        Assert.Matches(@"drives the hall\s+28\.28 V\s+at least 28\.?0* V \(V_min\)\s+1\.0\d? %.*\s+met", ran.Output);
        var index = await File.ReadAllTextAsync(Path.Combine(shop.Book, "index.html"));
        Assert.Contains("<h1>An invented amplifier</h1>", index, StringComparison.Ordinal);
        Assert.Contains(">drives the hall</td>", index, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_save_the_record_goes_to_the_book_alone()
    {
        shop.Notebook("a", Chapter);

        await shop.RunAsync(shop.Notebooks);

        Assert.False(File.Exists(Record));
        Assert.True(File.Exists(Path.Combine(shop.Book, "amp.json")));
        Assert.Contains("href=\"amp.json\"", await File.ReadAllTextAsync(Path.Combine(shop.Book, "index.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Save_puts_outputs_and_record_back_and_a_second_time_changes_nothing()
    {
        shop.Notebook("a", Chapter);

        await shop.RunAsync(shop.Notebooks, "--save");
        Assert.True(File.Exists(Record));
        var first = shop.Everything();
        await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(first, shop.Everything());
    }

    [Fact]
    public async Task A_setting_reaches_the_cells_and_leaves_the_stored_record_alone()
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");
        var stored = await File.ReadAllTextAsync(Record);

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "P=50 W", "--set", "R_L = 4 Ω");

        Assert.Equal("", ran.Error);
        Assert.Matches(@"14\.14 V\s+at least 28.*not met", ran.Output);
        Assert.Equal(stored, await File.ReadAllTextAsync(Record));
    }

    [Fact]
    public async Task A_saved_setting_stays_until_it_is_given_back_to_the_chapter()
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");
        var before = await File.ReadAllTextAsync(Record);
        await shop.RunAsync(shop.Notebooks, "--save", "--set", "P=50 W");
        Assert.Matches(@"20 V\s+at least 28.*not met", (await shop.RunAsync(shop.Notebooks)).Output);

        var ran = await shop.RunAsync(shop.Notebooks, "--save", "--set", "P=");

        Assert.Equal("", ran.Error);
        Assert.Equal(before, await File.ReadAllTextAsync(Record));
    }

    [Theory]
    [InlineData("V_rms=30 V", "V_rms is derived from P and R_L")]
    [InlineData("Q=30 V", "the record has no Q", "P", "R_L")]
    [InlineData("P=30 V", "P is Power", "30 V")]
    [InlineData("P=30 furlongs", "P", "furlongs")]
    [InlineData("P", "name=value with unit")]
    [InlineData("=3 W", "name=value with unit")]
    public async Task A_setting_that_cannot_be_is_refused_before_anything_runs(string setting, params string[] words)
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");
        var before = shop.Everything();

        var ran = await shop.RunAsync(shop.Notebooks, "--save", "--set", setting);

        Assert.Equal(2, ran.Code);
        Assert.Equal("", ran.Output);
        Assert.StartsWith($"--set '{setting}'", ran.Error, StringComparison.Ordinal);
        foreach (var word in words)
            Assert.Contains(word, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
    }

    [Fact]
    public async Task A_setting_without_a_record_says_how_to_make_one()
    {
        shop.Notebook("a", Chapter);

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "P=50 W");

        Assert.Equal(2, ran.Code);
        Assert.Contains("there is no record beside the notebooks yet", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_damaged_record_is_refused_with_its_line_and_left_as_it_is()
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");
        await File.WriteAllTextAsync(Record, (await File.ReadAllTextAsync(Record)).Replace("\"P\"", "\"P", StringComparison.Ordinal));
        var before = shop.Everything();

        var ran = await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(2, ran.Code);
        Assert.Matches(@"amp\.json, line \d+: ", ran.Error);
        Assert.Equal(before, shop.Everything());
    }

    [Fact]
    public async Task Other_JSON_beside_the_notebooks_is_left_out_of_the_book()
    {
        shop.File("card.json", "{}");
        shop.Notebook("a", "1");

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks)).Code);

        Assert.False(File.Exists(Path.Combine(shop.Book, "card.json")));
    }

    [Fact]
    public async Task A_notebook_changed_by_another_program_during_the_run_is_not_written_over()
    {
        var notebook = shop.Notebook("a", $"System.IO.File.AppendAllText(@\"{Path.Combine(shop.Notebooks, "a.ipynb")}\", \" \");");

        var ran = await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(2, ran.Code);
        Assert.Contains("a.ipynb was changed by another program", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith(" ", await File.ReadAllTextAsync(notebook), StringComparison.Ordinal);
        Assert.False(Directory.Exists(shop.Book));
    }
}
