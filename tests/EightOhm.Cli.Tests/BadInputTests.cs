namespace EightOhm.Cli.Tests;

public sealed class BadInputTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public Task A_missing_notebook_is_named() => RefusedAsync(Path.Combine(shop.Folder, "none.ipynb"), [], "There is no notebook or folder", "none.ipynb");

    [Fact]
    public Task A_folder_without_notebooks_is_named()
    {
        shop.File("notes.txt", "");
        return RefusedAsync(shop.Notebooks, [], "There are no notebooks (.ipynb) in the folder", shop.Notebooks);
    }

    [Fact]
    public Task A_notebook_that_is_not_JSON_is_named_with_the_line() =>
        RefusedAsync(shop.File("a.ipynb", "{\n \"cells\": [,]\n}"), [], "a.ipynb is not JSON (line 2)", "nbformat 4");

    [Fact]
    public Task JSON_that_is_not_a_notebook_is_told_apart() =>
        RefusedAsync(shop.File("a.ipynb", "{}"), [], "a.ipynb is JSON but not a notebook", "\"cells\"");

    [Theory]
    [InlineData("""{"cells":[],"cells":[],"nbformat":4}""", "cells")]
    [InlineData("""{"cells":[],"metadata":{"kernelspec":{"name":"a","name":"b"}},"nbformat":4}""", "name")]
    public Task A_key_that_stands_twice_is_refused(string text, string key) =>
        RefusedAsync(shop.File("a.ipynb", text), [], "a.ipynb is not sound JSON: an object holds the same key twice", $"'{key}'");

    [Fact]
    public Task An_older_format_is_refused_with_the_format_allowed() =>
        RefusedAsync(shop.File("a.ipynb", """{"cells":[],"nbformat":3}"""), [], "nbformat 3", "nbformat 4 is needed");

    [Fact]
    public Task Another_language_is_refused() => RefusedAsync(
        shop.File("a.ipynb", """{"cells":[],"metadata":{"kernelspec":{"language":"python"}},"nbformat":4}"""), [], "written in python", "C#");

    [Fact]
    public Task A_foreign_package_is_refused_with_cell_and_line() => RefusedAsync(
        shop.Notebook("a", "var x = 1;\n#r \"nuget: Other.Thing, 1.0\""), [], "a.ipynb, cell 3, line 2", "Other.Thing", "EightOhm.Notebook");

    [Fact]
    public Task A_newer_package_than_this_tool_is_refused_with_both_versions() => RefusedAsync(
        shop.Notebook("a", "#r \"nuget: EightOhm.Notebook, 99.1.0\""), [], "99.1.0", "this is eightohm " + EightOhm.Cells.BuildVersion.Text, "Update the tool");

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("1e3")]
    [InlineData("soon")]
    [InlineData("NaN")]
    public Task A_limit_that_is_no_time_is_refused(string limit) =>
        RefusedAsync(shop.Notebook("a", "1"), ["--limit", limit], "--limit must be a number of seconds", limit);

    [Fact]
    public Task An_unknown_option_is_refused_with_the_options_allowed() =>
        RefusedAsync(shop.Notebook("a", "1"), ["--colour"], "'--colour'", "[--set] [--out] [--full] [--save] [--limit]");

    [Fact]
    public Task An_out_folder_below_a_file_is_refused()
    {
        var file = shop.File("plain", "");
        return RefusedAsync(shop.Notebook("a", "1"), ["--out", Path.Combine(file, "book")], "cannot be written: 'plain' is a file", "--out");
    }

    [Fact]
    public Task An_out_folder_that_holds_other_things_than_a_book_is_refused() =>
        RefusedAsync(shop.Notebook("a", "1"), ["--out", shop.Notebooks], "holds other things than a book of ours", "--out");

    [Fact]
    public Task A_read_only_out_folder_is_refused() =>
        RefusedAsync(shop.Notebook("a", "1"), ["--out", ReadOnly()], "cannot be written", "--out");

    // Modes do not stop root; /proc stops everybody.
    private string ReadOnly()
    {
        if (Environment.IsPrivilegedProcess && Directory.Exists("/proc"))
            return "/proc/eightohm";
        Directory.CreateDirectory(shop.Book);
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(shop.Book, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        else
            new DirectoryInfo(shop.Book).Attributes |= FileAttributes.ReadOnly;
        return shop.Book;
    }

    /// <summary>Exit code 2, the words expected, no cell run, and not one file changed.</summary>
    private async Task RefusedAsync(string notebooks, string[] more, params string[] words)
    {
        var before = shop.Everything();

        var ran = await shop.RunAsync(notebooks, more);

        Assert.Equal(2, ran.Code);
        Assert.Equal("", ran.Output);
        foreach (var word in words)
            Assert.Contains(word, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
        Assert.False(File.Exists(Path.Combine(shop.Book, "index.html")));
    }
}
