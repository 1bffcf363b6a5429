using System.Xml.Linq;
using EightOhm.Display.Tables;
using EightOhm.Quantities;
using EightOhm.Ratings;

namespace EightOhm.Display.Tests.Tables;

public class TableTests
{
    [Fact]
    public void A_value_of_ours_is_a_table_of_its_figures_with_their_symbols()
    {
        var table = Facts.Of(new OutputRating(100.W, 8.Ohm));
        Assert.Equal(
            """
            output rating
            figure        symbol    value
            power         P         100 W
            load          R_L         8 Ω
            rms voltage   V_rms   28.28 V
            peak voltage  V_pk       40 V
            rms current   I_rms   3.536 A
            peak current  I_pk        5 A
            """.ReplaceLineEndings("\n"),
            table.ToString());
        Assert.True(Facts.Has(typeof(OutputRating)));
        Assert.False(Facts.Has(typeof(object)));
    }

    [Fact]
    public void HTML_keeps_figures_to_the_right_and_escapes_its_text()
    {
        var html = XElement.Parse(new Table(["what", "value"], [["a < b & c", "5 V"]], [1], "a \"b\"").ToHtml());
        Assert.Equal("a \"b\"", html.Element("caption")!.Value);
        Assert.Equal(["left", "right"], html.Descendants("th").Select(h => h.Attribute("align")!.Value));
        Assert.Equal(["a < b & c", "5 V"], html.Descendants("td").Select(d => d.Value));
        Assert.Equal("right", html.Descendants("td").Last().Attribute("align")!.Value);
    }
}
