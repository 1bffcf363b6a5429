using System.Globalization;
using System.Xml.Linq;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Names => SampleFigures.Names;

    private static XElement Layout(string svg, string name) =>
        XDocument.Parse(svg).Root!.Elements(Svg + "g").Single(g => (string?)g.Attribute("class") == name);

    private static string[] Texts(XElement layout) =>
        [.. layout.Elements(Svg + "text").Select(t => string.Join(' ', t.Nodes().Select(n => n is XElement e ? e.Value : n.ToString())))];

    private static IEnumerable<TextBlock> AllText(Scene s) => s.TickLabels.Concat(s.Labels.Select(l => l.Text)).Concat(s.Legend.Select(l => l.Text));

    private static Scene[] Scenes(Figure figure) => Scene.Both(figure) is var (wide, narrow) ? [wide, narrow] : [];

    [Fact]
    public void Every_label_is_in_the_picture()
    {
        var texts = Texts(Layout(SvgWriter.Write(SampleFigures.Lines), "wide"));
        foreach (var label in (string[])["What the rated power asks of the rails", "Tern 100 (invented), sine wave", "Resistive load.", "rated power", "output voltage, peak",
            "into 8 Ω", "into 4 Ω", "100 W, 8 Ω → 40.0 V", "180 W, 4 Ω", "rail, 45 V", "1 W", "10 W", "100 W", "0", "60 V"])
            Assert.Contains(label, texts);
        Assert.Equal(2, texts.Count(t => t == "rated power"));
    }

    [Fact]
    public void Bars_have_their_values_and_labels() =>
        Assert.Empty(((string[])["8 Ω", "4 Ω", "2 Ω", "5.00 A", "10.0 A", "20.0 A", "current limit"]).Except(Texts(Layout(SvgWriter.Write(SampleFigures.Bars), "wide"))));

    [Fact]
    public void The_height_of_a_bar_is_its_value()
    {
        var (wide, _) = Scene.Both(SampleFigures.Bars);
        Assert.Equal(4, wide.Bars[2].Box.Height / wide.Bars[0].Box.Height, 9);
    }

    [Theory, MemberData(nameof(Names))]
    public void Text_stays_off_the_edges(string name)
    {
        foreach (var scene in Scenes(SampleFigures.ByName(name)))
            Assert.All(AllText(scene), text => Assert.True(new Box(0, 0, scene.Width, scene.Height).Holds(text.Bounds), string.Join(' ', text.Lines)));
    }

    [Theory, MemberData(nameof(Names))]
    public void No_two_texts_overlap(string name)
    {
        foreach (var scene in Scenes(SampleFigures.ByName(name)))
        {
            var texts = AllText(scene).ToArray();
            foreach (var (i, a) in texts.Index())
                foreach (var b in texts[(i + 1)..])
                    Assert.False(a.Bounds.Overlaps(b.Bounds), $"{string.Join(' ', a.Lines)} / {string.Join(' ', b.Lines)} at {scene.Width}");
        }
    }

    [Fact]
    public void Marks_lie_where_their_values_say_and_their_labels_inside_the_frame()
    {
        foreach (var scene in Scenes(SampleFigures.Lines))
        {
            Assert.Equal(2, scene.Dots.Count);
            Assert.All(scene.Dots, dot => Assert.True(scene.Frame.Holds(dot)));
            Assert.All(scene.Labels.Where(l => l.Text.Role is TextRole.Mark or TextRole.Limit), l => Assert.True(scene.Frame.Holds(l.Text.Bounds)));
            // 100 W is at log(100)/log(200) of the axis from 1 to 200 W.
            Assert.Equal(scene.Frame.Left + scene.Frame.Width * Math.Log(100) / Math.Log(200), scene.Dots[0].X, 6);
            Assert.Equal(scene.Frame.Bottom - scene.Frame.Height * 40 / 60, scene.Dots[0].Y, 6);
        }
    }

    [Fact]
    public void A_long_title_wraps()
    {
        var long40 = string.Join(' ', Enumerable.Repeat("amplifier", 20));
        foreach (var scene in Scenes(SampleFigures.Lines with { Title = long40 }))
        {
            var title = scene.Labels.Single(l => l.Text.Role == TextRole.Title).Text;
            Assert.True(title.Lines.Count > 1);
            Assert.Equal(long40, string.Join(' ', title.Lines));
            Assert.True(title.Bounds.Right <= scene.Width && scene.Frame.Height >= 140);
        }
    }

    [Fact]
    public void Names_that_have_no_room_at_the_line_ends_go_to_a_legend()
    {
        var flat = Enumerable.Range(0, 6).Select(i => new LineSeries($"case {i}", [0, 1], [1, 2 + i * 1e-3])).ToArray();
        foreach (var scene in Scenes(Figure.Line("t", new Axis("x"), new Axis("y"), flat)))
        {
            Assert.Equal(flat.Select(s => s.Name), scene.Legend.Select(l => l.Text.Lines[0]));
            Assert.DoesNotContain(scene.Labels, l => l.Text.Role == TextRole.End);
        }
        Assert.NotEmpty(Scene.Both(SampleFigures.Ellipse).Wide.Legend);
        Assert.Empty(Scene.Both(SampleFigures.Lines).Wide.Legend);
    }

    [Fact]
    public void Series_differ_without_colour()
    {
        Assert.Equal(6, Enumerable.Range(0, 6).Select(Palette.Dash).Distinct().Count());
        Assert.Equal(6, Enumerable.Range(0, 6).Select(Palette.Shape).Distinct().Count());
        Assert.Equal(6, Enumerable.Range(0, 6).Select(Palette.Hatch).Distinct().Count());
        var lines = Layout(SvgWriter.Write(SampleFigures.Lines), "wide").Descendants(Svg + "path").ToArray();
        Assert.Null(lines.Single(p => (string?)p.Attribute("class") == "l0").Attribute("stroke-dasharray"));
        Assert.NotNull(lines.Single(p => (string?)p.Attribute("class") == "l1").Attribute("stroke-dasharray"));
    }

    [Theory, MemberData(nameof(Names))]
    public void The_picture_is_the_same_twice_and_under_every_culture(string name)
    {
        var here = FigureHtml.Render(SampleFigures.ByName(name));
        foreach (var culture in (string[])["de-DE", "ru-RU", "sv-SE", "ar-SA"])
        {
            string there = "";
            var thread = new Thread(() => there = FigureHtml.Render(SampleFigures.ByName(name)));
            (thread.CurrentCulture, thread.CurrentUICulture) = (new CultureInfo(culture), new CultureInfo(culture));
            thread.Start();
            thread.Join();
            Assert.Equal(here, there);
        }
    }

    [Theory]
    [InlineData(new[] { 5.0 }, new[] { 3.0 })]
    [InlineData(new[] { 0.0 }, new[] { 0.0 })]
    [InlineData(new[] { 1.0, 2, 3 }, new[] { 7.0, 7, 7 })]
    [InlineData(new[] { 2.0, 2 }, new[] { 0.0, 1 })]
    [InlineData(new[] { -1e-12, 1e-12 }, new[] { 1e12, -1e12 })]
    [InlineData(new[] { 1.0, 2 }, new[] { 1000.0, 1000.000001 })]
    public void Degenerate_data_still_make_a_picture(double[] x, double[] y)
    {
        var figure = SampleFigures.Points(x, y);
        Assert.DoesNotContain("NaN", SvgWriter.Write(figure));
        foreach (var scene in Scenes(figure))
        {
            Assert.All(scene.Curves[0].Points, p => Assert.True(scene.Frame.Grow(0.01).Holds(p)));
            Assert.NotEmpty(scene.XTicks);
            Assert.NotEmpty(scene.YTicks);
        }
    }

    [Fact]
    public void All_zero_bars_still_make_a_picture() =>
        Assert.DoesNotContain("NaN", SvgWriter.Write(Figure.Bars("t", new Axis("x"), new Axis("y", "A"), new BarSeries("", ["a", "b"], [0, 0]))));

    [Fact]
    public void A_long_series_keeps_its_peaks_in_few_points()
    {
        double[] t = [.. Enumerable.Range(0, 20_000).Select(i => i / 20_000.0)];
        var curve = Scene.Both(SampleFigures.Points(t, [.. t.Select(x => x is > 0.5 and < 0.5001 ? 9 : x)])).Wide.Curves[0];
        var thinned = curve.Thinned(0.1);
        Assert.True(thinned.Count < 20, $"{thinned.Count} points");
        Assert.Equal(curve.Points.Min(p => p.Y), thinned.Min(p => p.Y));
    }

    [Fact]
    public void Labels_are_text_and_never_markup() =>
        Assert.Contains("<b>&\"R_E\"</b>", Texts(Layout(SvgWriter.Write(SampleFigures.Bars with { Title = "<b>&\"R_E\"</b>" }), "wide")).Select(System.Net.WebUtility.HtmlDecode));
}
