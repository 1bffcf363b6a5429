using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class FigureHtmlTests
{
    public static TheoryData<string> Names => SampleFigures.Names;

    private static IElement Parse(string html) => new HtmlParser().ParseDocument(html).QuerySelector("figure.eo-figure")!;

    private static JsonElement Spec(Figure figure) =>
        JsonDocument.Parse(Parse(FigureHtml.Render(figure)).QuerySelector("script[type='application/json']")!.TextContent).RootElement;

    private static string[] Strings(JsonElement list) => [.. list.EnumerateArray().Select(e => e.GetString()!)];

    [Fact]
    public void The_fragment_holds_the_complete_picture_and_its_words()
    {
        var image = Parse(FigureHtml.Render(SampleFigures.Lines)).QuerySelector("img")!;
        const string prefix = "data:image/svg+xml;base64,";
        var source = image.GetAttribute("src")!;
        Assert.StartsWith(prefix, source);
        Assert.Equal(SvgWriter.Write(SampleFigures.Lines), Encoding.UTF8.GetString(Convert.FromBase64String(source[prefix.Length..])));
        Assert.Equal(SampleFigures.Lines.AltText, image.GetAttribute("alt"));
    }

    [Fact]
    public void Without_its_scripts_the_fragment_is_the_picture_and_no_words()
    {
        var figure = Parse(FigureHtml.Render(SampleFigures.Lines));
        foreach (var script in figure.QuerySelectorAll("script")) script.Remove();
        Assert.Equal("", figure.TextContent.Trim());
        Assert.Single(figure.QuerySelectorAll("img"));
    }

    [Theory, MemberData(nameof(Names))]
    public void Both_pictures_have_the_same_ticks(string name)
    {
        var figure = SampleFigures.ByName(name);
        var layout = Spec(figure).GetProperty("layout");
        var (wide, narrow) = Scene.Both(figure);
        foreach (var (scene, json) in new[] { (wide, layout), (narrow, layout.GetProperty("meta")) })
        {
            Assert.Equal(scene.TickLabels.Select(t => string.Join("<br>", t.Lines)),
                Strings(json.GetProperty("xaxis").GetProperty("ticktext")).Concat(Strings(json.GetProperty("yaxis").GetProperty("ticktext"))));
            Assert.Equal(scene.Rulers.Y.Max, json.GetProperty("yaxis").GetProperty("range")[1].GetDouble(), 6);
            Assert.Equal(scene.Labels.Count, json.GetProperty("annotations").GetArrayLength());
        }
    }

    [Fact]
    public void The_interactive_chart_has_every_value_and_the_axes_of_the_figure()
    {
        var spec = Spec(SampleFigures.Lines);
        var traces = spec.GetProperty("data").EnumerateArray().ToArray();
        Assert.Equal(5, traces.Length);
        var line = traces.Single(t => t.TryGetProperty("name", out var name) && name.GetString() == "into 8 Ω");
        Assert.Equal(200, line.GetProperty("x").GetArrayLength());
        // Six digits are kept.
        Assert.Equal(Math.Sqrt(2 * 200 * 8), line.GetProperty("y")[199].GetDouble(), tolerance: 0.00005);
        Assert.Equal("log", spec.GetProperty("layout").GetProperty("xaxis").GetProperty("type").GetString());
        Assert.Equal(Math.Log10(200), spec.GetProperty("layout").GetProperty("xaxis").GetProperty("range")[1].GetDouble(), 6);
    }

    [Fact]
    public void The_edge_of_a_logarithmic_axis_lies_a_hair_outside_the_last_value()
    {
        // The page takes the logarithm of 0.1 for a little more than −1: a mark there must not fall outside.
        var range = Spec(Figure.Line("step", Axis.Log("time", "s"), new Axis("current", "A"), new LineSeries("current", [1e-3, 0.1], [0, 1]))).GetProperty("layout").GetProperty("xaxis").GetProperty("range");
        Assert.InRange(range[0].GetDouble(), -3 - 1e-6, -3 - 1e-8);
        Assert.InRange(range[1].GetDouble(), -1 + 1e-8, -1 + 1e-6);
    }

    [Fact]
    public void A_line_of_200_points_stays_under_20_kB()
    {
        var figure = Figure.Line("Voltage", Axis.Log("rated power", "W"), new Axis("voltage", "V"), SampleFigures.Voltage(8)) with { Marks = [new(100, 40, "100 W → 40.0 V")] };
        Assert.InRange(Encoding.UTF8.GetByteCount(FigureHtml.Render(figure)), 1000, 20_000);
    }

    [Theory, MemberData(nameof(Names))]
    public void Nothing_is_fetched_and_nothing_is_random(string name)
    {
        var html = FigureHtml.Render(SampleFigures.ByName(name));
        var svg = SvgWriter.Write(SampleFigures.ByName(name)).Replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
        Assert.DoesNotContain("http", html);
        Assert.DoesNotContain("http", svg);
        Assert.DoesNotMatch(new Regex("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}"), html + svg);
        Assert.DoesNotContain("src=\"/", html);
    }

    [Fact]
    public void Ids_follow_the_content()
    {
        var id = Parse(FigureHtml.Render(SampleFigures.Bars)).Id;
        Assert.Matches("^eo-[0-9a-f]{10}$", id);
        Assert.NotEqual(id, Parse(FigureHtml.Render(SampleFigures.Bars with { Title = "other" })).Id);
    }

    [Fact]
    public void A_label_cannot_break_out_of_the_fragment()
    {
        var figure = Parse(FigureHtml.Render(SampleFigures.Bars with { Title = "</script><script>alert(1)</script>\"><b>" }));
        Assert.Single(figure.QuerySelectorAll("script"));
        Assert.Empty(figure.QuerySelectorAll("b"));
    }
}
