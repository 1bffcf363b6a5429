namespace EightOhm.Cli.Tests;

public sealed class RunTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_folder_is_run_in_name_order_and_becomes_a_book()
    {
        shop.Notebook("02-b", "1 + 1");
        shop.Notebook("01-a", "\"from a\"");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        Assert.Equal(0, ran.Code);
        var lines = ran.Output.Split('\n');
        Assert.Matches(@"^01-a  cell 3/3  \d+\.\d s$", lines[0]);
        Assert.Matches(@"^02-b  cell 3/3  \d+\.\d s$", lines[1]);
        Assert.Contains("index.html", lines[^2], StringComparison.Ordinal);
        Assert.Contains("from a", await File.ReadAllTextAsync(Path.Combine(shop.Book, "01-a.html")), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(shop.Book, "02-b.html")));
        Assert.True(File.Exists(Path.Combine(shop.Book, "index.html")));
    }

    [Fact]
    public async Task Notebooks_are_untouched_without_save_and_nothing_is_left_beside_the_book()
    {
        var notebook = shop.Notebook("a", "1 + 1");
        var before = await File.ReadAllTextAsync(notebook);

        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(before, await File.ReadAllTextAsync(notebook));
        Assert.Equal(["book", "notebooks"], Directory.GetFileSystemEntries(shop.Folder).Select(Path.GetFileName).Order());
        Assert.Equal(["a.ipynb"], shop.BesideNotebooks());
    }

    [Fact]
    public async Task Each_notebook_starts_with_nothing_of_the_one_before()
    {
        shop.Notebook("a", "var left = 1;");
        shop.Notebook("b", "left");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(3, ran.Code);
        Assert.Contains("b.ipynb, cell 3, line 1: error CS0103", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_package_line_brings_the_assemblies_at_hand_and_the_rest_of_its_cell_runs()
    {
        shop.File("a.ipynb", """
            {"cells":[{"cell_type":"code","metadata":{},"execution_count":null,"outputs":[],"source":[
              "#r \"nuget: EightOhm.Notebook, 0.1.0\"\n","\n","UnitsNet.Power.FromKilowatts(0.1).Watts"]}],
             "metadata":{},"nbformat":4,"nbformat_minor":5}
            """);

        var ran = await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal("", ran.Error);
        Assert.Contains("100", Workshop.SavedOutputs(Path.Combine(shop.Notebooks, "a.ipynb"))[0].ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cells_find_the_files_beside_their_notebook()
    {
        shop.File("card.txt", "a card");
        shop.Notebook("a", "Console.Write(System.IO.File.ReadAllText(\"card.txt\"))");
        var home = Environment.CurrentDirectory;

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        Assert.Equal(home, Environment.CurrentDirectory);
        Assert.Contains("a card", await File.ReadAllTextAsync(Path.Combine(shop.Book, "a.html")), StringComparison.Ordinal);
    }
}
