namespace EightOhm.Notebook.Tests;

/// <summary>Loads as a chapter types them: facts, least values, a chart, the working.</summary>
public sealed class LoadsInACellTests(Cells cells) : IClassFixture<Cells>
{
    private const string Box = "new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6)";

    [Theory]
    [InlineData(Box, "29 Ω")]
    [InlineData(Box + ".Least()", "2.901 Ω")]
    [InlineData(Box + ".Through(Cable.Iec(10.m, 2.5.mm2))", "5.9596 Ω")]
    [InlineData("new PhaseLoad(4.Ohm, 45.deg).Ellipse(46.V, 46.V, 1.kHz, 0.Ohm, 1)", "374.1 W")]
    [InlineData("new[] { new ResistiveLoad(8.Ohm).Asks(\"resistor\", 40.V), new PhaseLoad(4.Ohm, 45.deg).Asks(\"phase\", 38.V) }", "–")]
    [InlineData("new PhaseLoad(4.Ohm, 45.deg).Through(Cable.Awg(3.m, 14))", "µH")]
    [InlineData("Cable.Awg(10.m, 14, temperature: 40.degC)", "mΩ")]
    [InlineData(Box + ".Sweep(10.Hz, 20.kHz)", "20 kHz")]
    public async Task Each_is_a_table_of_facts(string code, string holds)
    {
        var shown = await cells.Shown(code);
        Assert.True(shown["text/plain"].Contains(holds, StringComparison.Ordinal), shown["text/plain"]);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_load_s_chart_is_one_line()
    {
        var shown = await cells.Shown($"Charts.Load({Box}, 40.V)");
        Assert.Contains("2.901 Ω", shown["text/plain"], StringComparison.Ordinal);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_equivalent_resistors_show_their_working()
    {
        var shown = await cells.Shown("Explain(() => EquivalentResistor.Peak(4.Ohm, 45.deg))");
        Assert.Contains("1.414 Ω", shown["text/plain"], StringComparison.Ordinal);
        Assert.Contains("sin(30° − 2 · δ/3)", shown["text/plain"], StringComparison.Ordinal);
    }
}
