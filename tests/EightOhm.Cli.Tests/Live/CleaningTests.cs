using System.Text.Json.Nodes;
using AngleSharp.Html.Parser;
using EightOhm.Cli.Book;
using EightOhm.Cli.Live;

namespace EightOhm.Cli.Tests.Live;

/// <summary>Stored outputs show what they show, and can do nothing.</summary>
public sealed class CleaningTests
{
    [Theory]
    [InlineData("<script>alert(1)</script>", "script")]
    [InlineData("<figure class=\"eo-figure\"><script src=\"x\" type=\"application/json\"></script></figure>", "script")]
    [InlineData("<script type=\"application/json\">{}</script>", "script")]
    [InlineData("<style>body{display:none}</style>", "style")]
    [InlineData("<form action=\"x\"><input><button>go</button></form>", "form")]
    [InlineData("<iframe src=\"https://evil.example\"></iframe>", "iframe")]
    [InlineData("<img src=\"https://evil.example/pixel\">", "https")]
    [InlineData("<a href=\"javascript:alert(1)\">x</a>", "javascript")]
    [InlineData("<a href=\"data:text/html,x\">x</a>", "data:")]
    [InlineData("<div onclick=\"x()\">x</div>", "onclick")]
    [InlineData("<div style=\"position:fixed;inset:0;z-index:9\">x</div>", "position")]
    [InlineData("<div class=\"sheet tally eo-box\">x</div>", "tally")]
    [InlineData("<picture><source srcset=\"https://evil.example/x\"></picture>", "evil")]
    [InlineData("<math><mtext><img src=x onerror=alert(1)></mtext></math>", "onerror")]
    [InlineData("<svg><animate onbegin=alert(1)></svg>", "onbegin")]
    public void What_runs_asks_or_covers_is_gone(string html, string part) => Assert.DoesNotContain(part, CleanOutput.Of(html), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void An_output_that_stands_too_deep_in_itself_is_told_of()
    {
        Assert.Equal("<p>Elements of this output stand too deep in each other to be shown.</p>", CleanOutput.Of(string.Concat(Enumerable.Repeat("<div>", 20_000))));
        Assert.Equal(string.Concat(Enumerable.Repeat("<div>", 500)) + "a" + string.Concat(Enumerable.Repeat("</div>", 500)), CleanOutput.Of(string.Concat(Enumerable.Repeat("<div>", 500)) + "a"));
    }

    [Fact]
    public void Every_output_of_the_course_and_the_design_shows_what_it_showed()
    {
        var outputs = Directory.GetFiles(Repository.Notebooks, "*.ipynb", SearchOption.AllDirectories)
            .SelectMany(f => Workshop.SavedOutputs(f).SelectMany(o => OutputHtml.Each(o, "")))
            .ToList();

        Assert.True(outputs.Count > 200);
        foreach (var html in outputs)
            Assert.Equal(Plain(html), Plain(CleanOutput.Of(html)));
    }

    // Parsed and written again, so that only what was removed differs.
    private static string Plain(string html)
    {
        var body = new HtmlParser().ParseDocument($"<!doctype html><body>{html}</body>").Body!;
        foreach (var styled in body.QuerySelectorAll("[style]"))
            styled.SetAttribute("style", string.Concat((styled.GetAttribute("style") ?? "").Where(c => c is not (' ' or ';'))));
        foreach (var data in body.QuerySelectorAll("script"))
            data.TextContent = JsonNode.Parse(data.TextContent)!.ToJsonString();
        return string.Join('\n', body.QuerySelectorAll("*").Select(e => $"{e.LocalName} {string.Join(' ', e.Attributes.OrderBy(a => a.Name, StringComparer.Ordinal).Select(a => $"{a.Name}={a.Value}"))}")) + body.TextContent;
    }
}
