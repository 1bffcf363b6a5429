namespace EightOhm.Cells.Tests.Editing;

public sealed class HoverTests(Asked asked) : IClassFixture<Asked>
{
    [Fact]
    public async Task A_formula_tells_its_signature_units_range_and_source()
    {
        var cells = Chapters.Cells("course/03-noise-first-look");
        var cell = cells.First(c => c.Contains("ThermalNoise.VoltageDensity(1.kOhm", StringComparison.Ordinal));
        var at = cell.IndexOf("VoltageDensity", StringComparison.Ordinal);
        var answer = await asked.Assistant.HoverAsync([.. cells.TakeWhile(c => c != cell)], cell, at + 3);
        Assert.NotNull(answer);
        Assert.Equal("VoltageDensity", cell[answer.From..answer.To]);
        foreach (var part in new[]
        {
            "<code>VoltageNoiseDensity ThermalNoise.VoltageDensity(ElectricResistance R, Temperature T)</code>",
            "Open-circuit noise voltage density of a resistance",
            "<dt>R</dt><dd>Ω. The resistance; 0 Ω or more.</dd>",
            "Its temperature; above 0 K.",
            "<dt>gives</dt><dd>The density, rms, in V/√Hz.</dd>",
            "<dt>refuses</dt><dd>The resistance is negative",
            "<dt>source</dt><dd>S. Franco",
            "4.058 nV/√Hz",
        })
            Assert.Contains(part, answer.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("var P = 100.|W;", "Power int.W", "So many watts.")]
    [InlineData("bridge|", "RectifierBridge bridge", "")]
    [InlineData("V_p|k", "ElectricPotential V_pk", "<dt>unit</dt><dd>V</dd>")]
    [InlineData("new Output|Rating(1.W, 8.Ohm)", "new OutputRating(Power power, ElectricResistance load)", "greater than 0 Ω")]
    [InlineData("Bud|get(rated[0])", "SwingBudget Budget(OutputRating r)", "")]
    [InlineData("Rectifier|Bridge b;", "class RectifierBridge", "four diodes in one case")]
    [InlineData("var x = new List<Pow|er>();", "struct Power", "")]
    public async Task A_name_tells_what_it_is(string cell, string signature, string words)
    {
        var answer = await asked.Hovered(cell, asked.Supply);
        Assert.NotNull(answer);
        Assert.Contains($"<code>{signature}</code>", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_a_cell_writes_of_its_own_is_text_and_not_markup()
    {
        var answer = await asked.Hovered("Own|(1)", "/// <summary>Less than &lt;script&gt;alert(1)&lt;/script&gt; that.</summary>\ndouble Own<T>(T x) => 1;");
        Assert.NotNull(answer);
        Assert.DoesNotContain("<script", answer.Html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", answer.Html, StringComparison.Ordinal);
        Assert.Contains("Own&lt;int&gt;(int x)", answer.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("var a = 1 |+ 2;")]
    [InlineData("// a rem|ark")]
    [InlineData("\"a te|xt\"")]
    [InlineData("nobo|dy")]
    [InlineData("|")]
    public async Task Where_nothing_is_known_nothing_is_said(string cell) =>
        Assert.Null(await asked.Hovered(cell));
}
