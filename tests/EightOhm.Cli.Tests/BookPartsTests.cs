using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace EightOhm.Cli.Tests;

/// <summary>Contents, numbers, links, folded code, search, symbols and glossary.</summary>
public sealed class BookPartsTests : IDisposable
{
    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Sections_formulas_and_figures_are_numbered_and_have_anchors_of_their_own()
    {
        shop.Cells("05-supply", Workshop.Cell("markdown", "# 5 The supply\n\nWhich rail?\n\n## One\n\n### Below\n"), Package, Workshop.Cell("code", "var P = 100.W; var R = 8.Ohm;\nExplain(() => Sqrt(P * R))"),
            Workshop.Cell("markdown", "## One"), Workshop.Cell("code", "var f = new[] { 1.0, 2.0 };\nFigure.Line(\"A line\", new Axis(\"x\", \"s\"), new Axis(\"y\", \"V\"), new LineSeries(\"one\", f, f))"), Workshop.Cell("code", "Explain(() => P / R)"));

        var ran = await shop.RunAsync(shop.Notebooks);

        Assert.Equal("", ran.Error);
        var page = Page("05-supply");
        Assert.Equal(["5 The supply"], Texts(page, "h1"));
        Assert.Equal(["5.1 One", "5.2 One"], Texts(page, "h2"));
        Assert.Equal(["one", "one-2"], page.QuerySelectorAll("h2").Select(h => h.Id!));
        Assert.Equal(["(5.1)", "(5.2)"], Texts(page, ".eo-working > a.no"));
        Assert.NotNull(page.QuerySelector("#formula-5\\.1"));
        Assert.Equal(["Figure 5.1"], Texts(page, "figure#figure-5\\.1 figcaption"));
        Assert.Equal(["#one", "#below", "#one-2"], page.QuerySelectorAll("nav.contents a").Select(a => a.GetAttribute("href")!));
        Assert.Equal(page.QuerySelectorAll("[id]").Length, page.QuerySelectorAll("[id]").Select(e => e.Id).Distinct().Count());
    }

    [Fact]
    public async Task A_chapter_named_in_a_text_is_a_link_to_it()
    {
        shop.Cells("course/05a-rails", Workshop.Cell("markdown", "# 5a Rails\n\nSee chapter 6, chapters 5 and 99, not `chapter 6`; chapter 6 V is none."));
        shop.Cells("course/06-stage", Workshop.Cell("markdown", "# 6 Stage"));
        shop.Cells("tern-100/06-stage", Workshop.Cell("markdown", "# 6 The stage\n\nChapter 5 says why, chapters 5a and 6 too."));

        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(["chapter 6|../course/06-stage.html", "chapter 6|../course/06-stage.html"], Links(Page("course/05a-rails")));
        Assert.Equal(["Chapter 5|../course/05a-rails.html", "chapters 5a|../course/05a-rails.html"], Links(Page("tern-100/06-stage")));
    }

    [Theory]
    [InlineData("amp.json", null, true)]
    [InlineData("amp.json", "folded", false)]
    [InlineData("record.json", null, false)]
    [InlineData("record.json", "open", true)]
    public async Task Code_is_open_in_a_course_and_folded_in_a_design_unless_a_tag_says_otherwise(string record, string? tag, bool open)
    {
        var cell = Workshop.Cell("code", $"var design = DesignRecord.Open(\"{record}\");");
        if (tag is not null)
            cell["metadata"]!["tags"] = new System.Text.Json.Nodes.JsonArray(tag);
        shop.Cells("a", Package, cell);

        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(open, Page("a").QuerySelector("details.code-cell")!.HasAttribute("open"));
    }

    [Fact]
    public async Task A_bare_value_is_named_by_the_line_that_gives_it()
    {
        shop.Notebook("a", "var V_pk = 40.V;\nV_pk", "new[] { V_pk, 2 * V_pk }");

        await shop.RunAsync(shop.Notebooks);

        Assert.Equal(["V_pk = 40 V", "V_pk = 40 V", "2 * V_pk = 80 V"], Texts(Page("a"), "p.named-value").Select(t => t.Replace("40.00", "40", StringComparison.Ordinal).Replace("80.00", "80", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Each_table_can_be_saved_as_comma_separated_values_without_a_network()
    {
        shop.Notebook("a", "new OutputRating(100.W, 8.Ohm)");

        await shop.RunAsync(shop.Notebooks);

        var link = Page("a").QuerySelector("a.table-file")!;
        Assert.Equal("a-table-1.csv", link.GetAttribute("download"));
        var csv = Uri.UnescapeDataString(link.GetAttribute("href")!["data:text/csv;charset=utf-8,".Length..]);
        Assert.StartsWith("\uFEFFfigure,symbol,value\r\n", csv, StringComparison.Ordinal);
        Assert.Contains("28.28 V", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_index_says_what_is_not_met_by_how_much_before_the_chapters()
    {
        shop.Notebook("course/01-a", "1");
        shop.Cells("course/02-b", Workshop.Cell("markdown", "# 2 Rails\n\n> **Caution.** Mains kill.\n\nThe supply is a story. How low does the rail fall? It falls."));
        shop.Notebook(
            "tern-100/01-specification",
            "var design = DesignRecord.Open(\"record.json\");\ndesign.Name = \"An invented tern\";\ndesign.Target(\"V_pk\", 45.V, \"peak of the output\");\ndesign.Choose(\"V_rail\", 40.V);\ndesign.Require(\"swing\", \"V_pk\").AtMost(\"V_rail\");");

        await shop.RunAsync(shop.Notebooks);

        var index = Page("index");
        Assert.StartsWith("Not met by this design.", index.QuerySelector(".verdict.not-met")!.TextContent, StringComparison.Ordinal);
        Assert.Matches(@"^Not met, over by 5(\.\d+)?\sV\. swing: 45(\.\d+)?\sV; asked is at most 40(\.\d+)?\sV \(V_rail\)\.$", index.QuerySelector(".failures li")!.TextContent);
        Assert.NotNull(index.QuerySelector("tr.not-met"));
        Assert.Contains("How low does the rail fall?", index.QuerySelector(".chapters")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["An invented tern: compliance", "Course", "The papers of An invented tern"], Texts(index, "h2"));
        var symbol = Page("symbols").QuerySelectorAll("tr").Single(r => r.TextContent.Contains("peak of the output", StringComparison.Ordinal));
        Assert.Equal("tern-100/01-specification.html", symbol.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task The_search_looks_in_the_words_of_every_section_and_leads_to_it()
    {
        shop.Cells("tern-100/05-supply", Workshop.Cell("markdown", "# 5 Supply\n\n## The rail\n\nA reservoir \"feeds\" </script> it."));
        shop.Notebook("tern-100/06-b", "1");

        await shop.RunAsync(shop.Notebooks);

        var words = await File.ReadAllTextAsync(Path.Combine(shop.Book, "search-index.js"));
        Assert.Contains("tern-100/05-supply.html#the-rail", words, StringComparison.Ordinal);
        Assert.Contains("A reservoir", words, StringComparison.Ordinal);
        Assert.DoesNotContain("</script", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_word_of_the_glossary_stands_once_with_one_sentence()
    {
        var terms = Book.GlossaryPage.Terms();
        Assert.True(terms.Count > 50);
        Assert.Equal(terms.Count, terms.Select(t => t.Term).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(terms, t => Assert.EndsWith(".", t.Says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("index", "notebook-index.html")]
    [InlineData("Glossary", "notebook-Glossary.html")]
    public async Task A_notebook_named_as_a_page_of_the_book_steps_aside(string name, string page)
    {
        shop.Notebook(name, "1");

        await shop.RunAsync(shop.Notebooks);

        Assert.Contains($"Chapter {name}", await File.ReadAllTextAsync(Path.Combine(shop.Book, page)), StringComparison.Ordinal);
        Assert.Contains($"href=\"{page}\"", Page("index").DocumentElement.OuterHtml, StringComparison.Ordinal);
    }

    private static System.Text.Json.Nodes.JsonObject Package => Workshop.Cell("code", "#r \"nuget: EightOhm.Notebook, 0.1.0\"");

    private static IEnumerable<string> Texts(IDocument page, string selector) =>
        page.QuerySelectorAll(selector).Select(e => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

    private static IEnumerable<string> Links(IDocument page) => page.QuerySelectorAll("section.text a").Select(a => $"{a.TextContent}|{WebUtility.HtmlDecode(a.GetAttribute("href"))}");

    private IDocument Page(string name) => new HtmlParser().ParseDocument(File.ReadAllText(Path.Combine(shop.Book, name + ".html")));
}
