namespace EightOhm.Cli.Tests;

/// <summary>The book as one document; what Chromium makes of it is looked at in the browser tests.</summary>
public sealed class PrintTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Without_a_Chromium_the_words_say_so_before_anything_runs()
    {
        shop.Notebook("a", "System.IO.File.WriteAllText(\"ran.txt\", \"\");");
        var path = Environment.GetEnvironmentVariable("PATH");
        Environment.SetEnvironmentVariable("PATH", shop.Folder);
        try
        {
            var ran = await BookAsync("--pdf", Path.Combine(shop.Folder, "amp.pdf"));

            Assert.Equal(2, ran.Code);
            Assert.Contains("No Chromium was found", ran.Error, StringComparison.Ordinal);
            Assert.Equal(["notebooks"], Directory.GetFileSystemEntries(shop.Folder).Select(Path.GetFileName));
            Assert.False(File.Exists(Path.Combine(shop.Notebooks, "ran.txt")));
        }
        finally
        {
            Environment.SetEnvironmentVariable("PATH", path);
        }
    }

    [Theory]
    [InlineData("amp.txt", "ends in .pdf")]
    [InlineData("there.pdf", "is no PDF file")]
    public async Task A_file_that_is_no_document_is_refused(string name, string words)
    {
        shop.Notebook("a", "1");
        await File.WriteAllTextAsync(Path.Combine(shop.Folder, "there.pdf"), "own");
        var before = shop.Everything();

        var ran = await BookAsync("--pdf", Path.Combine(shop.Folder, name));

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
    }

    [Fact]
    public void The_document_has_a_title_page_contents_and_anchors_of_its_own()
    {
        shop.Cells("course/01-a", Workshop.Cell("markdown", "# 1 One\n\n## Part\n\nSee chapter 2."), Workshop.Cell("code", "var hidden = 1;"));
        shop.Cells("course/02-b", Workshop.Cell("markdown", "# 2 Two\n\n## Part"));
        var content = Content();

        var with = Page(content, withCode: true);
        var without = Page(content, withCode: false);

        Assert.Contains("Revision B", with.QuerySelector(".title-page")!.TextContent.Replace("Revision", "Revision ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("29 November 2026", with.QuerySelector(".title-page")!.TextContent, StringComparison.Ordinal);
        var anchors = with.QuerySelectorAll("[id]").Select(e => e.Id!).ToHashSet();
        Assert.Equal(with.QuerySelectorAll("[id]").Length, anchors.Count);
        Assert.All(with.QuerySelectorAll("a[href^='#']"), a => Assert.Contains(a.GetAttribute("href")![1..], anchors));
        Assert.Contains("#course-02-b--", with.QuerySelectorAll("article a").Select(a => a.GetAttribute("href")));
        Assert.Contains("hidden", with.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("hidden", without.Body!.TextContent, StringComparison.Ordinal);
    }

    private static AngleSharp.Html.Dom.IHtmlDocument Page(Book.BookContent content, bool withCode) =>
        new AngleSharp.Html.Parser.HtmlParser().ParseDocument(Printing.OneDocument.Of(content, new Printing.PrintOptions(withCode, "B", new DateOnly(2026, 11, 29))));

    // What a book of the notebooks tells, without running them.
    private Book.BookContent Content() =>
        new("An invented amplifier", [.. Notebooks.NotebookTree.Open(shop.Notebooks).Notebooks], [], [], "", [], "12345678", new Ends.RunLog());

    private async Task<Ran> BookAsync(params string[] more)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.InvokeAsync(["book", shop.Notebooks, .. more], output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }
}
