using System.Text.Json.Nodes;
using AngleSharp.Html.Parser;

namespace EightOhm.Cli.Tests;

/// <summary>A text from another may hold anything; a folder may hold a person's own files.</summary>
public sealed class BookSafetyTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("<iframe src=\"https://example.org\"></iframe>")]
    [InlineData("<a href=\"javascript:alert(1)\">x</a>")]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](data:text/html,alert(1))")]
    [InlineData("<a href=\"data:text/html,alert(1)\">x</a>")]
    [InlineData("<svg onload=alert(1)><script>alert(1)</script></svg>")]
    [InlineData("<form action=\"https://example.org\"><button>alert(1)</button></form>")]
    [InlineData("<p style=\"background:url(https://example.org)\" onclick=\"alert(1)\">x</p>")]
    [InlineData("<object data=\"alert(1)\"></object><embed src=\"alert(1)\"><base href=\"https://example.org\"><meta http-equiv=\"refresh\" content=\"0\"><link rel=stylesheet href=\"alert(1)\">")]
    [InlineData("<img src=\"https://example.org/alert(1).png\">")]
    [InlineData("<math><mtext><style><img src=x onerror=alert(1)></style></mtext></math>")]
    public async Task What_could_run_or_load_is_taken_out_of_a_text(string markdown)
    {
        shop.Cells("a", Workshop.Cell("markdown", $"before\n\n{markdown}\n\nafter"));

        await shop.RunAsync(shop.Notebooks);

        var page = new HtmlParser().ParseDocument(Page("a"));
        var text = page.QuerySelector("section.text")!;
        Assert.Empty(text.QuerySelectorAll("script, iframe, object, embed, base, meta, link, form, button, svg, style"));
        Assert.DoesNotContain(text.QuerySelectorAll("*").SelectMany(e => e.Attributes), a =>
            a.Name.StartsWith("on", StringComparison.Ordinal) || a.Name == "style" || a.Value.Contains("script:", StringComparison.OrdinalIgnoreCase)
            || a.Value.StartsWith("data:text", StringComparison.Ordinal) || (a.Name == "src" && !a.Value.StartsWith("data:image/", StringComparison.Ordinal)));
        Assert.Contains("before", text.TextContent, StringComparison.Ordinal);
        Assert.Contains("after", text.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plain_HTML_in_a_text_stays()
    {
        shop.Cells("a", Workshop.Cell("markdown", "V<sub>CE</sub> and <b>x²</b> [far](https://example.org/a)\n\n- [x] done\n\n| a | b |\n|---|--:|\n| 1 | 2 |"));

        await shop.RunAsync(shop.Notebooks);

        foreach (var piece in new[] { "V<sub>CE</sub>", "<b>x²</b>", "<a href=\"https://example.org/a\">far</a>", "checked", "<td" })
            Assert.Contains(piece, Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_page_says_what_it_may_load()
    {
        shop.Notebook("a", "1");

        await shop.RunAsync(shop.Notebooks);

        foreach (var page in Directory.GetFiles(shop.Book, "*.html").Select(File.ReadAllText))
            Assert.Contains("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'self';", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_come_from_the_notebooks_own_folder_alone()
    {
        File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(shop.Folder, "other")).FullName, "s.png"), "secret");
        shop.File("in/p.png", "own");
        if (!OperatingSystem.IsWindows())
        {
            File.CreateSymbolicLink(Path.Combine(shop.Notebooks, "l.png"), Path.Combine(shop.Folder, "other", "s.png"));
            Directory.CreateSymbolicLink(Path.Combine(shop.Notebooks, "d"), Path.Combine(shop.Folder, "other"));
        }

        shop.Cells("a", Workshop.Cell("markdown", $"![a](../other/s.png) ![b]({Path.Combine(shop.Folder, "other", "s.png")}) ![c](l.png) ![d](d/s.png) ![e](..%2Fother%2Fs.png) ![f](in/p.png)"));

        await shop.RunAsync(shop.Notebooks);

        Assert.DoesNotContain(Convert.ToBase64String("secret"u8), Page("a"), StringComparison.Ordinal);
        Assert.Contains(Convert.ToBase64String("own"u8), Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_persons_own_files_stay_and_what_an_earlier_book_had_more_goes()
    {
        shop.Notebook("a", "1");
        shop.Notebook("part/b", "1");
        await shop.RunAsync(shop.Notebooks);
        Directory.CreateDirectory(Path.Combine(shop.Book, ".git"));
        foreach (var own in new[] { "notes.txt", ".git/config", "mine.html" })
            File.WriteAllText(Path.Combine(shop.Book, own), "own");
        Directory.Delete(Path.Combine(shop.Notebooks, "part"), recursive: true);

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(0, ran.Code);
        foreach (var own in new[] { "notes.txt", ".git/config", "mine.html" })
            Assert.Equal("own", await File.ReadAllTextAsync(Path.Combine(shop.Book, own)));
        Assert.False(Directory.Exists(Path.Combine(shop.Book, "part")));
        Assert.True(File.Exists(Path.Combine(shop.Book, "a.html")));
    }

    [Fact]
    public async Task A_persons_own_file_in_the_place_of_a_page_stops_the_book()
    {
        shop.Notebook("a", "1");
        await shop.RunAsync(shop.Notebooks);
        shop.Notebook("b", "1");
        await File.WriteAllTextAsync(Path.Combine(shop.Book, "b.html"), "own");
        var before = shop.Everything();

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal(2, ran.Code);
        Assert.Contains("holds 'b.html', which is not of the book", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, shop.Everything());
    }

    [Fact]
    public async Task What_a_killed_run_left_is_swept()
    {
        shop.Notebook("a", "1");
        // No process has this number.
        Directory.CreateDirectory(Path.Combine(shop.Folder, ".book.2147483646.new"));

        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(["book", "notebooks"], Directory.GetFileSystemEntries(shop.Folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Control_characters_reach_neither_terminal_nor_page()
    {
        shop.Notebook(
            "a",
            "var design = DesignRecord.Open(\"amp.json\");\ndesign.Target(\"V\", 1.V);\ndesign.Require(\"evil \\u001b[2J\\u202e\\u0007\", \"V\").AtMost(\"V\");\nConsole.Write(\"out \\u001b[31m\");");

        var ran = await shop.RunAsync(shop.Notebooks);

        foreach (var text in new[] { ran.Output, ran.Error, Page("a"), Page("index") })
            Assert.DoesNotMatch("[\\u0000-\\u0008\\u000b-\\u001f\\u007f-\\u009f\\u202a-\\u202e]", text);
    }

    [Theory]
    [InlineData("""{"cells":[{"cell_type":"markdown","metadata":"x","source":"x","attachments":[]}],"metadata":"x","nbformat":4}""")]
    [InlineData("""{"cells":[{"cell_type":"code","metadata":[],"source":"","outputs":"x"}],"metadata":{"kernelspec":7,"language_info":"x"},"nbformat":4}""")]
    public async Task Sound_JSON_of_odd_shape_is_run(string notebook)
    {
        JsonNode.Parse(notebook);
        shop.File("a.ipynb", notebook);

        Assert.Equal(0, (await shop.RunAsync(shop.Notebooks)).Code);
    }

    private string Page(string name) => File.ReadAllText(Path.Combine(shop.Book, name + ".html"));
}
