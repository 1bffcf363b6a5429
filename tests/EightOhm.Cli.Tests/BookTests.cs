using System.Text.RegularExpressions;

namespace EightOhm.Cli.Tests;

public sealed partial class BookTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Pages_name_their_neighbours_and_the_index_names_the_first_headings()
    {
        foreach (var name in new[] { "01", "02", "03" })
            shop.Notebook(name, "1");

        await shop.RunAsync(shop.Notebooks);

        var middle = Page("02");
        Assert.Contains("<a class=\"home\" href=\"index.html\">", middle, StringComparison.Ordinal);
        Assert.Contains("<a rel=\"prev\" href=\"01.html\">Previous<span class=\"title\">: 1 Chapter 01</span></a>", middle, StringComparison.Ordinal);
        Assert.Contains("<a rel=\"next\" href=\"03.html\">Next<span class=\"title\">: 3 Chapter 03</span></a>", middle, StringComparison.Ordinal);
        Assert.DoesNotContain("rel=\"prev\"", Page("01"), StringComparison.Ordinal);
        Assert.DoesNotContain("rel=\"next\"", Page("03"), StringComparison.Ordinal);
        Assert.Equal(
            ["1 Chapter 01", "2 Chapter 02", "3 Chapter 03"],
            ChapterLink().Matches(Page("index")).Select(m => Tag().Replace(m.Groups[1].Value, "")));
    }

    [Fact]
    public async Task Code_is_tinted_without_losing_a_character_and_the_package_line_is_folded()
    {
        const string Code = "var a = 0x1F; // <note> & more\nvar b = $\"{a} < \\\"q\\\"\" + @\"x\" + 'c';\n/* t */ if (a > 1) { }";
        shop.Notebook("a", Code);

        await shop.RunAsync(shop.Notebooks);

        var boxes = CodeBox().Matches(Page("a")).Select(m => m.Groups[1].Value).ToList();
        Assert.Equal(Code, System.Net.WebUtility.HtmlDecode(Tag().Replace(boxes[1], "")));
        Assert.Contains("<span class=\"c\">// &lt;note&gt; &amp; more</span>", boxes[1], StringComparison.Ordinal);
        Assert.Contains("<span class=\"n\">0x1F</span>", boxes[1], StringComparison.Ordinal);
        Assert.Contains("<span class=\"k\">var</span>", boxes[1], StringComparison.Ordinal);
        Assert.Contains("<details class=\"packages\">", Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task HTML_outputs_stand_as_they_are_and_text_is_escaped()
    {
        shop.Notebook("a", "HTML(\"<b>bold</b>\")", "\"<i>text</i>\"");

        await shop.RunAsync(shop.Notebooks);

        Assert.Contains("<div class=\"output\"><b>bold</b></div>", Page("a"), StringComparison.Ordinal);
        Assert.Contains("<pre>&lt;i&gt;text&lt;/i&gt;</pre>", Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_come_into_the_page_and_links_to_notebooks_lead_to_pages()
    {
        shop.File("p.png", "png");
        shop.File("a.ipynb", """
            {"cells":[{"cell_type":"markdown","metadata":{},"attachments":{"q.png":{"image/png":"QUJD"}},
              "source":"![beside](p.png) ![carried](attachment:q.png) ![far](https://example.org/x.png) [next](b.ipynb#part)"}],
             "metadata":{},"nbformat":4,"nbformat_minor":5}
            """);

        await shop.RunAsync(shop.Notebooks);

        Assert.Contains("<img src=\"data:image/png;base64,cG5n\" alt=\"beside\"", Page("a"), StringComparison.Ordinal);
        Assert.Contains("<img src=\"data:image/png;base64,QUJD\" alt=\"carried\"", Page("a"), StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=\"http", Page("a"), StringComparison.Ordinal);
        Assert.Contains("<a href=\"b.html#part\">next</a>", Page("a"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_book_is_the_same_on_every_run_and_loads_nothing_from_elsewhere()
    {
        shop.Notebook("a", "1 + 1");

        await shop.RunAsync(shop.Notebooks);
        var first = shop.Everything();
        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(first, shop.Everything());
        foreach (var page in Directory.GetFiles(shop.Book, "*.html").Select(File.ReadAllText))
        {
            Assert.DoesNotMatch("(src|href)=\"(https?:)?//", page);
            Assert.DoesNotContain(shop.Folder, page, StringComparison.Ordinal);
        }
    }

    private string Page(string name) => File.ReadAllText(Path.Combine(shop.Book, name + ".html"));

    [GeneratedRegex("<li><a href=\"[^\"]*\">(.*?)</a>")]
    private static partial Regex ChapterLink();

    [GeneratedRegex("<pre class=\"code\" tabindex=\"0\"><code>(.*?)</code></pre>", RegexOptions.Singleline)]
    private static partial Regex CodeBox();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();
}
