using System.Text.Json;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class FigureSliderTests
{
    private static Figure Family => Figure.Line("Family", new Axis("output", "V"), new Axis("gain"),
        [.. Enumerable.Range(0, 4).Select(k => new LineSeries($"{k + 1} A", [-1, 0, 1], [0.9, 0.8 + 0.05 * k, 0.9 + 0.01 * k]))]) with
    {
        Limits = [Limit.Horizontal(0.85, "rule"), Limit.Vertical(0.5, "level")],
        Marks = [new(0, 0.9, "mark")],
        Slider = new FigureSlider("idle < current", ["1 A", "2 A", "3 A"]) { Start = 1 },
    };

    private static JsonElement Spec(Figure figure) => JsonDocument.Parse(new HtmlParser().ParseDocument(FigureHtml.Render(figure))
        .QuerySelector("script[type='application/json']")!.TextContent).RootElement;

    [Fact]
    public void Each_step_brings_its_own_series_to_the_front()
    {
        var spec = Spec(Family);
        var data = spec.GetProperty("data").EnumerateArray().ToArray();
        foreach (var layout in new[] { spec.GetProperty("layout"), spec.GetProperty("layout").GetProperty("meta") })
        {
            var slider = Assert.Single(layout.GetProperty("sliders").EnumerateArray());
            Assert.Equal(1, slider.GetProperty("active").GetInt32());
            Assert.Equal("idle &lt; current: ", slider.GetProperty("currentvalue").GetProperty("prefix").GetString());
            var steps = slider.GetProperty("steps").EnumerateArray().ToArray();
            Assert.Equal(["1 A", "2 A", "3 A"], steps.Select(s => s.GetProperty("label").GetString()!));
            foreach (var (k, step) in steps.Index())
            {
                Assert.Equal("restyle", step.GetProperty("method").GetString());
                var traces = step.GetProperty("args")[1].EnumerateArray().Select(t => t.GetInt32()).ToArray();
                // The traces are the series, in their order: not the limits before them nor the marks behind.
                Assert.Equal(Family.Series.Select(s => s.Name), traces.Select(t => data[t].GetProperty("name").GetString()!));
                var opacity = step.GetProperty("args")[0].GetProperty("opacity").EnumerateArray().Select(o => o.GetDouble()).ToArray();
                Assert.Equal(4, opacity.Length);
                Assert.All(opacity.Index(), o => Assert.Equal(o.Index == k || o.Index == 3, o.Item == 1));
            }
        }
    }

    [Fact]
    public void The_picture_begins_at_the_start() =>
        Assert.Equal([null, 0.4, 1, 0.4, 1], Spec(Family).GetProperty("data").EnumerateArray().Skip(1).Take(5)
            .Select(t => t.TryGetProperty("opacity", out var o) ? o.GetDouble() : (double?)null));

    [Fact]
    public void The_slider_has_its_own_room_below_the_picture()
    {
        var (with, without) = (Spec(Family).GetProperty("layout"), Spec(Family with { Slider = null }).GetProperty("layout"));
        double Of(JsonElement layout, string name) => layout.GetProperty(name).GetDouble();
        Assert.Equal(92, Of(with, "height") - Of(without, "height"), 1e-9);
        Assert.Equal(92, Of(with.GetProperty("margin"), "b") - Of(without.GetProperty("margin"), "b"), 1e-9);
        Assert.False(without.TryGetProperty("sliders", out _));
        // It starts below the words of the axis and the note.
        var pad = with.GetProperty("sliders")[0].GetProperty("pad").GetProperty("t").GetDouble();
        Assert.Equal(Of(without.GetProperty("margin"), "b"), pad, 0.2);
    }

    [Fact]
    public void The_static_picture_is_the_whole_family_without_a_slider()
    {
        var svg = SvgWriter.Write(Family);
        foreach (var series in Family.Series)
            Assert.Contains($">{series.Name}<", svg);
        Assert.DoesNotContain("opacity", svg);
        Assert.DoesNotContain("script", svg);
        Assert.Equal(Regex.Count(SvgWriter.Write(Family with { Slider = null }), "<path"), Regex.Count(svg, "<path"));
    }

    [Fact]
    public void Every_colour_of_the_slider_has_a_night_colour() =>
        Assert.All(Regex.Matches(PlotlyFigure.Json(Family, Scene.Both(Family)), "\"(#[0-9a-fA-F]{3,8})\"").Select(m => m.Groups[1].Value), c => Assert.Contains(c, Palette.ByNight.Keys));

    [Fact]
    public void A_slider_that_has_no_series_for_a_step_is_refused()
    {
        Assert.Contains("5 steps for 4 series", Assert.Throws<ArgumentException>(() => Family with { Slider = new("x", ["1", "2", "3", "4", "5"]) }).Message);
        Assert.Throws<ArgumentException>(() => SampleFigures.Bars with { Slider = new("x", ["1", "2"]) });
        Assert.Throws<ArgumentException>(() => new FigureSlider("x", ["1"]));
        Assert.Contains("cannot begin at 3", Assert.Throws<ArgumentException>(() => new FigureSlider("x", ["1", "2", "3"]) { Start = 3 }).Message);
    }

    [Fact]
    public void The_words_tell_of_the_slider_and_ids_follow_it()
    {
        Assert.Contains("slider over idle < current", Family.AltText);
        Assert.NotEqual(FigureHtml.Render(Family), FigureHtml.Render(Family with { Slider = new("idle < current", ["1 A", "2 A"]) }));
        Assert.Equal(FigureHtml.Render(Family), FigureHtml.Render(Family));
    }

    [Fact]
    public void The_script_keeps_the_slider_where_the_reader_put_it() => Assert.Contains("slider.active = before.active", PlotlyScript.Text);
}
