using System.Xml.Linq;
using EightOhm.Display.Figures;
using EightOhm.Ratings;

namespace EightOhm.Display.Tests.Figures;

public class SheetDiagramTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static SheetAudit Wrong => SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").Sensitivity("1.2 V", "8 Ω").Gain("30 dB")
        .SlewRate("40 V/µs").FullPowerBandwidth("100 kHz", "8 Ω").Audit();

    [Fact]
    public void Each_equation_has_a_dot_at_each_of_its_figures_and_a_contradiction_crosses()
    {
        var svg = XDocument.Parse(SheetDiagram.Draw(Wrong).Svg).Root!;
        Assert.Equal(3, svg.Elements(Svg + "circle").Count());
        Assert.Equal(3, svg.Elements(Svg + "path").Count(p => ((string)p.Attribute("d")!).Contains("l10 10", StringComparison.Ordinal)));
        Assert.Single(svg.Elements(Svg + "path"), p => (string?)p.Attribute("stroke-dasharray") is not null);
        Assert.Contains("● one equation   × cannot all be true", svg.Elements(Svg + "text").Select(t => t.Value));
        Assert.Equal(["100 W", "1.2 V", "30 dB", "40 V/µs", "100 kHz"], svg.Elements(Svg + "text").Where(t => (string?)t.Attribute("text-anchor") == "end").Select(t => t.Value));
    }

    [Fact]
    public void It_says_the_same_in_words() => Assert.Equal(
        "Rival as a set of equations: rated power into 8 Ω 100 W, slew rate 40 V/µs, full-power bandwidth into 8 Ω 100 kHz stand in one equation; "
        + "rated power into 8 Ω 100 W, sensitivity for rated power into 8 Ω 1.2 V, gain 30 dB cannot all be true.",
        SheetDiagram.Words(Wrong));

    [Fact]
    public void It_is_one_picture_that_needs_no_script_and_knows_the_dark()
    {
        var html = SheetDiagram.Render(Wrong);
        Assert.Contains("<img src=\"data:image/svg+xml;base64,", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme:dark", SheetDiagram.Draw(Wrong).Svg, StringComparison.Ordinal);
        Assert.Equal(html, SheetDiagram.Render(Wrong));
    }

    [Fact]
    public void A_sheet_without_figures_is_not_drawn() =>
        Assert.Contains("no figures", Assert.Throws<ArgumentException>(() => SheetDiagram.Render(SpecSheet.Named("Rival").Audit())).Message, StringComparison.Ordinal);
}
