using EightOhm.Cells;

namespace EightOhm.Notebook.Tests;

public class TextLiftTests
{
    private const string Of = "EightOhm.Quantities.InText.Of(";

    [Theory]
    [InlineData("$\"{x}\"", "$\"{" + Of + "x)}\"")]
    [InlineData("$\"{x,8:mV} and {y}\"", "$\"{" + Of + "x),8:mV} and {" + Of + "y)}\"")]
    [InlineData("$\"{f($\"{a}\")}\"", "$\"{" + Of + "f($\"{" + Of + "a)}\"))}\"")]
    [InlineData("$$\"\"\"{{x}}\"\"\"", "$$\"\"\"{{" + Of + "x)}}\"\"\"")]
    public void Each_value_of_a_text_passes_through(string cell, string rewritten) => Assert.Equal(rewritten, TextLift.Rewrite(cell));

    [Theory]
    [InlineData("var a = \"{x}\";")]
    [InlineData("const string a = $\"{b}c\";")]
    [InlineData("$\"{5} {\"text\"}\"")]
    [InlineData("$\"{x\"")]
    [InlineData("var price = \"5 $\";")]
    public void Constants_and_what_is_no_text_stay(string cell) => Assert.Same(cell, TextLift.Rewrite(cell));
}

[Collection(Cells.Kernels)]
public class TextInACellTests(Cells cells) : IClassFixture<Cells>
{
    [Theory]
    [InlineData("""$"{25.degC} {4.7.kOhm} {220.uF} {1.81e-6.V}" """, "25 °C 4.7 kΩ 220 µF 1.81 µV")]
    [InlineData("""$"{28.28427.V:mV} {28.28427.V:3} {28.28427.V.In("dBV")}" """, "28280 mV 28.3 V 29.03 dBV")]
    [InlineData("""Say($"{3} pairs share {9.486833.A:3}.")""", "3 pairs share 9.49 A.")]
    [InlineData("""string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{25.degC}")""", "25 °C")]
    [InlineData("""28.28427.V.In("mV")""", "28280 mV")]
    [InlineData("""new[] { 1.V.In("mV"), 2.V.In("mV") }""", "1000 mV, 2000 mV")]
    public async Task A_quantity_in_a_text_reads_as_the_trade_writes_it(string cell, string text) =>
        Assert.Equal(text, (await cells.Shown("System.Globalization.CultureInfo.CurrentCulture = new(\"de-DE\");\n" + cell))["text/plain"]);
}
