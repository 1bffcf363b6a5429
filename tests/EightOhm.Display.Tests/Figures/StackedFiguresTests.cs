using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using EightOhm.Display.Figures;
using EightOhm.Display.Tables;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Display.Tests.Figures;

public class StackedFiguresTests
{
    private static readonly SteadySupply Solved = new RectifierSupply(35.V, 50.Hz, 0.204.Ohm, 0.9.V, 30.mF).SteadyState(RailCurrent.Constant(3.233.A));
    private static readonly StackedFigures Stack = Charts.Supply(Solved, [("peak output", 40.V), ("losses", 44.78.V)]);

    [Fact]
    public void The_frames_stand_in_line_on_a_page_and_on_a_telephone()
    {
        var scenes = Scene.InLine(Stack.Figures);
        foreach (var pick in new Func<(Scene Wide, Scene Narrow), Scene>[] { s => s.Wide, s => s.Narrow })
        {
            Assert.Equal(pick(scenes[0]).Frame.Left, pick(scenes[1]).Frame.Left, 1e-9);
            Assert.Equal(pick(scenes[0]).Frame.Right, pick(scenes[1]).Frame.Right, 1e-9);
            Assert.Equal(pick(scenes[0]).At(0.01, 45).X, pick(scenes[1]).At(0.01, 10).X, 1e-9);
        }
    }

    [Fact]
    public void Each_figure_is_complete_in_light_and_dark_and_interactive_beside()
    {
        var page = new HtmlParser().ParseDocument(FigureHtml.Render(Stack));
        Assert.Equal(2, page.QuerySelectorAll("figure.eo-figure").Length);
        Assert.Equal(2, page.QuerySelectorAll("figure.eo-figure > script[type='application/json']").Length);
        Assert.Equal(2, page.QuerySelectorAll("figure.eo-figure").Select(f => f.Id).Distinct().Count());
        foreach (var image in page.QuerySelectorAll("img"))
        {
            var svg = System.Text.Encoding.UTF8.GetString(Convert.FromBase64String(image.GetAttribute("src")!.Split(',')[1]));
            Assert.Contains("prefers-color-scheme:dark", svg);
        }

        var margins = page.QuerySelectorAll("script").Select(s => Regex.Match(s.TextContent, "\"margin\":\\{\"l\":([0-9.]+),\"r\":([0-9.]+)").Value).ToArray();
        Assert.StartsWith("\"margin\"", margins[0]);
        Assert.Equal(margins[0].Split(",\"r\"")[0], margins[1].Split(",\"r\"")[0]);
    }

    [Fact]
    public void The_ledger_s_levels_lie_across_the_rail()
    {
        Assert.Equal([40, 44.78], Stack.Figures[0].Limits.Select(l => l.Value));
        Assert.Contains("losses", Stack.AltText);
        Assert.Empty(Stack.Figures[1].Limits);
    }

    [Fact]
    public void What_has_no_common_axis_is_refused()
    {
        var line = Stack.Figures[0];
        var other = Figure.Line("other", new Axis("frequency", "Hz"), new Axis("y"), new LineSeries("", [1.0, 2], [1.0, 2]));
        Assert.Contains("frequency", Assert.Throws<ArgumentException>(() => new StackedFigures(line, other)).Message);
        Assert.Throws<ArgumentException>(() => new StackedFigures(line));
        Assert.Throws<ArgumentException>(() => new StackedFigures(line, Figure.Bars("bars", new Axis("time", "s"), new Axis("y"), new BarSeries("b", ["a"], [1.0]))));
    }

    [Fact]
    public void The_estimates_read_as_a_table_with_signed_errors()
    {
        var table = RectifierTables.Estimates(Solved.BesideTextbook());
        Assert.Equal(7, table.Rows.Count);
        Assert.StartsWith("+", table.Rows[0][3]);
        Assert.StartsWith("−", table.Rows[5][3]);
        Assert.DoesNotContain("NaN", table.ToString());
    }
}
