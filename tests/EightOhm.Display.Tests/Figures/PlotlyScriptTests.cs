using AngleSharp.Html.Parser;
using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class PlotlyScriptTests
{
    [Fact]
    public void The_version_is_the_bundle_s_own() => Assert.Matches(@"^\d+\.\d+\.\d+$", PlotlyScript.Version);

    [Fact]
    public void The_bundle_keeps_its_licence_and_is_about_a_megabyte()
    {
        Assert.Contains("Licensed under the MIT license", PlotlyScript.Text);
        Assert.InRange(PlotlyScript.Text.Length, 900_000, 1_200_000);
    }

    [Fact]
    public void The_element_is_one_script_that_its_text_cannot_end()
    {
        var body = new HtmlParser().ParseDocument("<body>" + PlotlyScript.LoadHtml()).Body!;
        var script = Assert.Single(body.Children);
        Assert.Equal(PlotlyScript.Text, script.TextContent);
    }

    [Fact]
    public void The_night_colours_and_the_breakpoint_are_filled_in()
    {
        Assert.Contains($"\"{Palette.Ink.Light}\":\"{Palette.Ink.Dark}\"", PlotlyScript.Text);
        Assert.DoesNotContain("/*B", PlotlyScript.Text);
    }

    [Fact]
    public void Every_colour_of_the_interactive_chart_has_a_night_colour()
    {
        foreach (var figure in (Figure[])[SampleFigures.Lines, SampleFigures.Groups])
        {
            var colours = System.Text.RegularExpressions.Regex.Matches(PlotlyFigure.Json(figure, Scene.Both(figure)), "\"(#[0-9a-f]{6})\"");
            Assert.NotEmpty(colours);
            Assert.All(colours.Select(m => m.Groups[1].Value), c => Assert.Contains(c, Palette.ByNight.Keys));
        }
    }
}
