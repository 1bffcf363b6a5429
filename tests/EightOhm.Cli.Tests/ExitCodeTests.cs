namespace EightOhm.Cli.Tests;

public sealed class ExitCodeTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("", 0)] // a course has no requirements
    [InlineData("amp.Require(\"a\", \"P\").AtLeast(\"P_min\");", 0)]
    [InlineData("amp.Require(\"a\", \"P_min\").AtLeast(\"P\");", 1)]
    [InlineData("amp.Require(\"a\", \"not_there\").AtLeast(\"P\");", 1)]
    public async Task The_code_says_how_the_requirements_stand(string require, int code)
    {
        shop.Notebook("a", $"var amp = DesignRecord.Open(\"amp.json\");\namp.Target(\"P\", 100.W);\namp.Target(\"P_min\", 50.W);\n{require}");

        Assert.Equal(code, (await shop.RunAsync(shop.Notebooks)).Code);
    }

    [Fact]
    public async Task The_sheet_is_counted_in_words_and_shows_failures_first()
    {
        shop.Notebook(
            "a",
            "var amp = DesignRecord.Open(\"amp.json\");\namp.Target(\"P\", 100.W);\namp.Target(\"P_min\", 50.W);\n" +
            "amp.Require(\"good one\", \"P\").AtLeast(\"P_min\");\namp.Require(\"untold one\", \"Q\").AtLeast(\"P\");\namp.Require(\"bad one\", \"P_min\").AtLeast(\"P\");\namp.Require(\"good two\", \"P_min\").AtMost(\"P\");");

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Contains("\n2 met, 1 not met, 1 cannot be told.\n", ran.Output, StringComparison.Ordinal);
        Assert.Matches("(?s)bad one.*untold one.*good one.*good two", ran.Output);
        var index = await File.ReadAllTextAsync(Path.Combine(shop.Book, "index.html"));
        Assert.Matches("(?s)Caution.*2 met, 1 not met, 1 cannot be told.*bad one.*untold one.*good one.*<h2>Chapters</h2>", index);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("run", "--help")]
    [InlineData("book", "--help")]
    public async Task The_help_tells_the_codes(params string[] args)
    {
        using var output = new StringWriter();
        Assert.Equal(0, await CommandLine.InvokeAsync(args, output, TextWriter.Null, live: false));

        foreach (var code in new[] { "0 ", "1 ", "2 ", "3 ", "4 ", "130 ", "143" })
            Assert.Contains(code, output.ToString(), StringComparison.Ordinal);
        Assert.Equal(2, output.ToString().Split("Exit codes:").Length);
    }

    [Fact]
    public async Task The_program_says_its_version()
    {
        using var output = new StringWriter();
        Assert.Equal(0, await CommandLine.InvokeAsync(["--version"], output, TextWriter.Null, live: false));
        Assert.Matches(@"^EightOhm \d+\.\d+\.\d+\n$", output.ToString().ReplaceLineEndings("\n"));
    }
}
