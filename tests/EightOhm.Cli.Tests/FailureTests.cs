namespace EightOhm.Cli.Tests;

public sealed class FailureTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_compile_error_names_notebook_cell_line_and_the_compilers_words()
    {
        shop.Notebook("a", "1", "var x = 1;\nx + y");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(3, ran.Code);
        Assert.Equal("a.ipynb, cell 4, line 2: error CS0103: The name 'y' does not exist in the current context\n", ran.Error);
    }

    [Fact]
    public async Task A_failure_in_a_function_of_the_cell_names_its_own_line()
    {
        shop.Notebook("a", "double Half(double x)\n{\n    if (x < 0)\n        throw new ArgumentException(\"x must not be negative (was \" + x + \").\");\n    return x / 2;\n}\nHalf(-1)");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(3, ran.Code);
        Assert.Equal("a.ipynb, cell 3, line 4: x must not be negative (was -1).\n", ran.Error);
    }

    [Fact]
    public async Task A_failure_in_a_function_of_an_earlier_cell_names_the_line_that_called_it()
    {
        shop.Notebook("a", "void Fail() => throw new InvalidOperationException(\"no solution\");", "var a = 1;\n\nFail();");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("a.ipynb, cell 4, line 3: no solution\n", ran.Error);
    }

    [Fact]
    public async Task A_failure_in_the_package_cell_keeps_the_line_number()
    {
        shop.File("a.ipynb", """
            {"cells":[{"cell_type":"code","metadata":{},"execution_count":null,"outputs":[],"source":[
              "#r \"nuget: EightOhm.Notebook, 0.1.0\"\n","\n","nothing"]}],
             "metadata":{},"nbformat":4,"nbformat_minor":5}
            """);

        Assert.StartsWith("a.ipynb, cell 1, line 3: error CS0103", (await shop.RunAsync(shop.Notebooks)).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_failed_cell_leaves_notebooks_and_record_as_they_were_and_the_book_shows_it()
    {
        var notebook = shop.Notebook("a", "throw new InvalidOperationException(\"no\");", "\"the cell after\"");
        var before = await File.ReadAllTextAsync(notebook);

        var ran = await shop.RunAsync(shop.Notebooks, "--save");

        Assert.Equal(3, ran.Code);
        Assert.Equal("a.ipynb, cell 3, line 1: no\n", ran.Error);
        Assert.Contains("notebooks and the record were left as they were", ran.Output, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(notebook));
        var page = await File.ReadAllTextAsync(Path.Combine(shop.Book, "a.html"));
        Assert.Contains("<strong>This cell failed:</strong> no</div>", page, StringComparison.Ordinal);
        Assert.Contains("the cell after", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_failing_cell_is_told_and_what_uses_it_does_not_run()
    {
        var seen = Path.Combine(shop.Folder, "seen");
        shop.Notebook("a", "var x = int.Parse(\"first\");", $"System.IO.File.WriteAllText({Literal(seen)}, x.ToString());");
        shop.Notebook("b", "throw new InvalidOperationException(\"second\");");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(3, ran.Code);
        Assert.Equal(2, ran.Error.TrimEnd().Split('\n').Length);
        Assert.StartsWith("a.ipynb, cell 3, line 1: The input string 'first'", ran.Error, StringComparison.Ordinal);
        Assert.Contains("(With it 1 cell was not calculated.)\nb.ipynb, cell 3, line 1: second\n", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(seen));
        Assert.Contains("<strong>Not calculated:</strong> it needs x, which failed in a.ipynb, cell 3: The input string", System.Net.WebUtility.HtmlDecode(await File.ReadAllTextAsync(Path.Combine(shop.Book, "a.html"))), StringComparison.Ordinal);
    }

    private static string Literal(string text) => "@\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
