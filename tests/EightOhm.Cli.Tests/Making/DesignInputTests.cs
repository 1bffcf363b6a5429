using EightOhm.Cli.Making;
using EightOhm.Quantities;

namespace EightOhm.Cli.Tests.Making;

/// <summary>Inputs are found by the syntax of a cell, and written back so that they read as a person would write them.</summary>
public class DesignInputTests
{
    private const string Cell =
        """
        var P = design.Target("P", 100.W, "rated power");
        design.Choose("R_f", 2.24.kOhm,
            "feedback, two resistors" + " in series");
        var n = design.Choose("n", 3, because: "pairs");
        design.Assume("T_a", (-10).degC);
        var bridge = design.Part<RectifierBridge>("bridge", "cards/bridge.json");
        design.Choose("x", 2 * y, "no literal"); // design.Target("not", 1.V)
        var s = "design.Target(\"neither\", 1.V)";
        """;

    [Fact]
    public void The_inputs_of_a_cell_are_found_with_value_and_reason()
    {
        var inputs = DesignInput.Of(Cell);
        Assert.Equal(["P", "R_f", "n", "T_a", "bridge"], inputs.Select(i => i.Name));
        Assert.Equal(["100 W", "2.24 kΩ", "3", "−10 °C", "cards/bridge.json"], inputs.Select(i => i.IsPart ? (string)i.Value : QuantityFormat.Short(i.Value)));
        Assert.Equal(["rated power", "feedback, two resistors in series", "pairs", null, null], inputs.Select(i => i.Words?.Text));
        Assert.Equal("RectifierBridge", inputs[4].CardType);
    }

    [Theory]
    [InlineData("100.W", "60 W", "60.W")]
    [InlineData("100.W", "5 kW", "5.kW")]
    [InlineData("2.24.kOhm", "1070 Ω", "1.07.kOhm")]
    [InlineData("0.22.Ohm", "0.1 Ω", "0.1.Ohm")]
    [InlineData("2.24.kOhm", "0.05 Ω", "50.mOhm")]
    [InlineData("35.degC", "50 °C", "50.degC")]
    [InlineData("35.degC", "-10 °C", "(-10).degC")]
    [InlineData("3", "12", "12")]
    [InlineData("6.0", "4", "4.0")]
    [InlineData("112.dB", "100", "100.ratio")]
    [InlineData("40.V_per_us", "17 V/µs", "17.V_per_us")]
    [InlineData("10.percent", "5 %", "5.percent")]
    [InlineData("new JouleIntegral(100)", "8.1 A²s", "new JouleIntegral(8.1)")]
    [InlineData("3.0.nV_rtHz", "4.5 nV/√Hz", "4.5.nV_rtHz")]
    [InlineData("1.2.V", "0.775 V", "0.775.V")]
    public void A_value_is_written_in_its_own_unit_where_that_reads_and_reads_back_as_itself(string code, string value, string written)
    {
        var input = DesignInput.Of($"design.Target(\"x\", {code});")[0];
        var given = QuantityText.Parse(value, input.Code!.Kind);
        Assert.Equal(written, input.Code.Write(given));
        Assert.Equal(input.Code.Kind.ToSi(given), input.Code.Kind.ToSi(DesignInput.Of($"design.Target(\"x\", {written});")[0].Value), Math.Abs(input.Code.Kind.ToSi(given)) * 1e-9);
    }

    [Fact]
    public void Only_the_values_and_reasons_of_inputs_change()
    {
        var template = DesignTemplate.Of([("01.ipynb", Template.Notebook(Cell))]);
        var (_, bytes) = template.With(i => i.Name switch { "n" => ("4", "\"four\""), "P" => ("60.W", null), _ => default((string?, string?)) }).Single();
        Assert.Equal(Cell.Replace("100.W", "60.W", StringComparison.Ordinal).Replace("\"n\", 3, because: \"pairs\"", "\"n\", 4, because: \"four\"", StringComparison.Ordinal), Template.Source(bytes));
    }

    [Fact]
    public void Outputs_are_not_copied()
    {
        var template = DesignTemplate.Of([("01.ipynb", Template.Notebook(Cell, """[{"output_type":"stream","name":"stdout","text":["old"]}]"""))]);
        Assert.DoesNotContain("old", System.Text.Encoding.UTF8.GetString(template.With(_ => default).Single().Bytes), StringComparison.Ordinal);
    }
}
