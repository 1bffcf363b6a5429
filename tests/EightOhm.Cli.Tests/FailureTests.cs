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

        Assert.Equal(1, ran.Code);
        Assert.Equal("a.ipynb, cell 4, line 2: error CS0103: The name 'y' does not exist in the current context\n", ran.Error);
    }

    [Fact]
    public async Task A_failure_in_a_function_of_the_cell_names_its_own_line()
    {
        shop.Notebook("a", "double Half(double x)\n{\n    if (x < 0)\n        throw new ArgumentException(\"x must not be negative (was \" + x + \").\");\n    return x / 2;\n}\nHalf(-1)");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(1, ran.Code);
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
    public async Task A_failed_run_leaves_the_book_and_the_notebooks_of_before()
    {
        shop.Notebook("a", "1 + 1");
        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks)).Code);
        shop.Notebook("b", "throw new InvalidOperationException(\"no\");");
        var before = shop.Everything();

        Assert.Equal(1, (await shop.RunAsync(shop.Notebooks, "--save")).Code);

        Assert.Equal(before, shop.Everything());
    }

    [Fact]
    public async Task The_first_failing_cell_ends_the_run()
    {
        var seen = Path.Combine(shop.Folder, "seen");
        shop.Notebook("a", "throw new InvalidOperationException(\"first\");", $"System.IO.File.WriteAllText({Literal(seen)}, \"\");");
        shop.Notebook("b", "throw new InvalidOperationException(\"second\");");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("a.ipynb, cell 3, line 1: first\n", ran.Error);
        Assert.False(File.Exists(seen));
    }

    private static string Literal(string text) => "@\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
