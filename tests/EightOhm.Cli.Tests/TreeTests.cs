namespace EightOhm.Cli.Tests;

/// <summary>A folder of folders: a course and designs, one book of all.</summary>
public sealed class TreeTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_course_and_its_designs_are_one_book_in_order()
    {
        MakeTree();

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        Assert.Equal(1, ran.Code);
        Assert.Equal(
            ["course/01-a", "plover-50/01-specification", "tern-100/01-specification", "tern-100/02-swing"],
            ran.Output.Split('\n').TakeWhile(l => l.Contains("  cell ", StringComparison.Ordinal)).Select(l => l[..l.IndexOf("  ", StringComparison.Ordinal)]));
        foreach (var file in new[] { "index.html", "course/01-a.html", "tern-100/02-swing.html", "tern-100/record.json", "plover-50/record.json" })
            Assert.True(File.Exists(Path.Combine(shop.Book, file)), file);
        Assert.Contains("the card of tern-100", await File.ReadAllTextAsync(Path.Combine(shop.Book, "tern-100", "02-swing.html")), StringComparison.Ordinal);
        Assert.Contains("An invented plover: 1 met.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("An invented tern: 1 not met.", ran.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Notebooks, "tern-100", "record.json")));
    }

    [Fact]
    public async Task What_is_set_moves_every_design_that_has_it_and_saves_each_in_its_place()
    {
        MakeTree();
        await shop.RunAsync(shop.Notebooks, "--save");
        var course = await File.ReadAllTextAsync(Path.Combine(shop.Notebooks, "course", "01-a.ipynb"));

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "V_rail=60 V");

        Assert.Equal("", ran.Error);
        Assert.Equal(0, ran.Code);
        Assert.Contains("Set for this run: An invented plover: V_rail = 60", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Set for this run: An invented tern: V_rail = 60", ran.Output, StringComparison.Ordinal);
        // Nothing of the course hangs on it.
        Assert.Matches(@"Ran \d of 8 cells: those that hang on V_rail, with the cells that these need\.", ran.Output);
        Assert.Equal(course, await File.ReadAllTextAsync(Path.Combine(shop.Notebooks, "course", "01-a.ipynb")));
    }

    [Fact]
    public async Task A_second_save_changes_nothing_whether_one_design_is_run_or_all()
    {
        MakeTree();
        await shop.RunAsync(shop.Notebooks, "--save");
        var before = shop.Everything().Where(f => f.Key.StartsWith("notebooks", StringComparison.Ordinal)).ToList();

        await shop.RunAsync(Path.Combine(shop.Notebooks, "tern-100"), "--save");
        await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(before, shop.Everything().Where(f => f.Key.StartsWith("notebooks", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_name_in_no_record_is_answered_with_the_nearest_of_all()
    {
        MakeTree();
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "V_rial=60 V");

        Assert.Equal(2, ran.Code);
        Assert.Contains("none of the records has V_rial. Did you mean V_rail?", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_one_design_has_no_answer_for_leaves_the_other_alone()
    {
        MakeTree();
        shop.Notebook("plover-50/02-lost", "var design = DesignRecord.Open(\"record.json\");\nvar lost = 1.V;\nthrow new ShortfallException(\"The rail\", 1.V, \"it sags\", \"Try more.\");");
        shop.Notebook("tern-100/03-more", "var lost = 2;\nlost");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Contains("No answer in plover-50/02-lost.ipynb, cell 3", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("not calculated", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_notebook_in_another_language_is_named_and_left_out()
    {
        shop.Notebook("a", "1");
        shop.File("b.ipynb", """{"cells":[],"metadata":{"kernelspec":{"name":"python3"}},"nbformat":4}""");
        shop.File("c.ipynb", """{"cells":[],"metadata":{"language_info":{"name":"julia"}},"nbformat":4}""");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(0, ran.Code);
        Assert.Contains("b.ipynb is written in Python and was left out.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("c.ipynb is written in julia and was left out.", ran.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Book, "b.html")));
    }

    [Fact]
    public async Task A_folder_of_other_languages_alone_says_so()
    {
        shop.File("b.ipynb", """{"cells":[],"metadata":{"kernelspec":{"name":"python3"}},"nbformat":4}""");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(2, ran.Code);
        Assert.Contains("b.ipynb is written in Python", ran.Error, StringComparison.Ordinal);
    }

    private void MakeTree()
    {
        shop.Notebook("course/01-a", "1 + 1");
        shop.Notebook(".hidden/01-a", "this is not C#");
        Design("tern-100", "An invented tern", 40);
        Design("plover-50", "An invented plover", 50);
        shop.File("tern-100/cards/card.txt", "the card of tern-100");
        shop.Notebook("tern-100/02-swing", "Console.Write(System.IO.File.ReadAllText(\"cards/card.txt\"))");
    }

    private void Design(string folder, string name, int rail) => shop.Notebook(
        folder + "/01-specification",
        $"var design = DesignRecord.Open(\"record.json\");\ndesign.Name = \"{name}\";\ndesign.Target(\"V_pk\", 45.V);\ndesign.Choose(\"V_rail\", {rail}.V);\ndesign.Require(\"swing\", \"V_pk\").AtMost(\"V_rail\");");
}
