using AngleSharp.Html.Parser;
using EightOhm.Display.Formulas;

namespace EightOhm.Display.Tests.Formulas;

public class SymbolHtmlTests
{
    [Theory]
    [InlineData("V_CEO", "<i>V</i><sub>_CEO</sub>")]
    [InlineData("θ_JC of one", "<i>θ</i><sub>_JC</sub> of one")]
    [InlineData("theta_JC", "<i>θ</i><sub>_JC</sub>")]
    [InlineData("at V_CE, with h_FE.", "at <i>V</i><sub>_CE</sub>, with <i>h</i><sub>_FE</sub>.")]
    [InlineData("SNR_1W and H3_min", "SNR<sub>_1W</sub> and H3<sub>_min</sub>")]
    [InlineData("A·B_fb < 1", "A&#183;<i>B</i><sub>_fb</sub> &lt; 1")]
    [InlineData("I_C_min", "<i>I</i><sub>_C,min</sub>")]
    [InlineData("P/R_L", "P/<i>R</i><sub>_L</sub>")]
    [InlineData("√(V_r/V_m)", "√(<i>V</i><sub>_r</sub>/<i>V</i><sub>_m</sub>)")]
    [InlineData("dT_s", "<i>dT</i><sub>_s</sub>")]
    [InlineData("tc_BE", "tc<sub>_BE</sub>")]
    public void A_symbol_has_its_subscript(string text, string html) =>
        Assert.Equal(html, SymbolHtml.Write(text).Replace("<span style=\"font-size:0\">_</span>", "_", StringComparison.Ordinal));

    [Theory]
    [InlineData("output_npn")]
    [InlineData("cards/R_E.json")]
    [InlineData("a_b_c.json")]
    [InlineData("28.28 V")]
    [InlineData("nV_rtHz")]
    [InlineData("2_5")]
    public void A_name_that_is_no_symbol_stays(string text) => Assert.Equal(text, SymbolHtml.Write(text));

    [Theory]
    [InlineData("V_CEO at I_C & <b>")]
    [InlineData("f_T")]
    public void Without_its_tags_the_text_is_the_console_s(string text) =>
        Assert.Equal(text, new HtmlParser().ParseDocument($"<td>{SymbolHtml.Write(text)}</td>").Body!.TextContent);
}
