using System.Net;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using EightOhm.Display.Formulas;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Tests.Explaining;
using static EightOhm.Explaining.Workings;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Display.Tests.Formulas;

public partial class MathMlTests
{
    [Fact]
    public void Stripped_of_its_tags_it_is_the_line_of_text() =>
        RandomNodes.WithValues.Sample(node => Assert.Equal(Packed(MathText.Write(node)), Packed(Stripped(MathMl.Write(node)))), iter: 5_000);

    [Fact]
    public void It_is_well_formed_and_each_root_fraction_and_name_is_what_it_is_called() =>
        RandomNodes.WithValues.Sample(
            node =>
            {
                var maths = XElement.Parse(MathMl.Write(node));
                var nodes = MathNodes.All(node).ToList();
                Assert.Equal("math", maths.Name.LocalName);
                Assert.Equal(nodes.OfType<RootNode>().Count(), maths.Descendants("msqrt").Count());
                Assert.Equal(nodes.OfType<FractionNode>().Count(), maths.Descendants("mfrac").Count());
                Assert.Equal(nodes.OfType<PowerNode>().Count(), maths.Descendants("msup").Count());
                var names = nodes.OfType<NameNode>().Select(n => n.Text).Concat(nodes.OfType<CallNode>().Select(n => n.Name))
                    .SelectMany(n => Symbols.Split(n) is var (stem, sub) && sub.Length > 0 ? new[] { stem, sub } : [stem]);
                Assert.Equal(names.Order(StringComparer.Ordinal), maths.Descendants("mi").Select(e => e.Value).Order(StringComparer.Ordinal));
                Assert.All(maths.Descendants("mphantom"), e => Assert.Equal("0", e.Parent!.Attribute("width")?.Value));
            },
            iter: 3_000);

    [Fact]
    public void A_working_is_well_formed_HTML_with_its_source_and_its_called_formulas()
    {
        var rating = new EightOhm.Ratings.OutputRating(100.W, 8.Ohm);
        var V_in = 1.2.V;
        var html = XElement.Parse(ExplanationHtml.Write(Explain(() => rating.GainFrom(V_in))));
        Assert.Equal(2, html.Descendants("div").Count(d => (string?)d.Attribute("class") == "eo-source"));
        Assert.Single(html.Descendants("li"));
        Assert.Single(html.Descendants("div"), d => (string?)d.Attribute("class") == "eo-where");
        Assert.Contains("[1]", html.Descendants("small").First(d => (string?)d.Attribute("class") == "eo-ref").Value, StringComparison.Ordinal);
        Assert.Single(html.Descendants("msqrt"), r => !r.Descendants("mn").Any());
        Assert.Contains("Boylestad & Nashelsky", html.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Stripped_of_its_tags_a_whole_working_is_its_text()
    {
        var (V, Z, phi) = (40.V, 8.Ohm, 60.deg);
        var (V_drive, R_E, I_s, V_T) = (0.7.V, 0.22.Ohm, 1e-12.A, 25.mV);
        var rating = new EightOhm.Ratings.OutputRating(100.W, 8.Ohm);
        var box = new EightOhm.Loads.ResistiveLoad(8.Ohm);
        var f = 1.kHz;
        Explanation[] all =
        [
            Explain(() => EightOhm.OutputStages.ClassB.Worst(V, Z, phi)), Explain(() => EightOhm.OutputStages.EmitterBias.Current(V_drive, R_E, I_s, V_T)),
            Explain(() => rating.GainFrom(V)), Explain(() => 2 * box.Magnitude(f)), Explain(() => V > 2 * V),
        ];
        foreach (var shown in all)
        {
            Assert.Equal(Packed(shown.ToString()), Packed(Stripped(ExplanationHtml.Write(shown))));
            Assert.All(shown.Sources, source => Assert.Contains(source[..5], Latex.Write(shown), StringComparison.Ordinal));
            Assert.Equal(shown.Where.Count > 0, Latex.Write(shown).Contains("\\text{where }", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Each_cell_name_is_an_identifier_with_its_subscript()
    {
        var P = 100.W;
        var R_L = 8.Ohm;
        var line = Explain(() => Sqrt(P * R_L)).Lines[0];
        var maths = XElement.Parse(MathMl.Write(line.InSymbols));
        Assert.Equal(["P", "R", "L"], maths.Descendants("mi").Select(e => e.Value));
        Assert.Equal("√(P·R_L)", Packed(maths.Value));
        Assert.Equal("\\sqrt{P \\cdot R_{\\text{L}}}", Latex.Write(line.InSymbols));
        Assert.Equal("\\sqrt{100\\,\\text{W} \\cdot 8\\,\\text{Ω}}", Latex.Write(line.InNumbers));
    }

    private static string Stripped(string html) => WebUtility.HtmlDecode(Tag().Replace(html, ""));

    private static string Packed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tag();
}
