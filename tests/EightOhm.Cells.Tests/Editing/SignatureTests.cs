using EightOhm.Cells.Editing;

namespace EightOhm.Cells.Tests.Editing;

public sealed class SignatureTests(Asked asked) : IClassFixture<Asked>
{
    private async Task<(Signature Form, int Parameter)> Active(string marked, params IReadOnlyList<string> before)
    {
        var answer = await asked.Called(marked, before);
        Assert.NotNull(answer);
        return (answer.Signatures[answer.Active], answer.Parameter);
    }

    [Theory]
    [InlineData("new OutputRating(|", 0)]
    [InlineData("new OutputRating(|)", 0)]
    [InlineData("new OutputRating(100.W, |", 1)]
    [InlineData("new OutputRating(100.W, |)", 1)]
    [InlineData("new OutputRating(100.W|, 8.Ohm)", 0)]
    [InlineData("new OutputRating(load: |8.Ohm, power: 100.W)", 1)]
    [InlineData("OutputRating rated = new(100.W, |)", 1)]
    public async Task A_constructor_says_what_it_asks_for_and_where_the_caret_is(string cell, int parameter)
    {
        var (form, at) = await Active(cell);
        Assert.Equal("new OutputRating(Power power, ElectricResistance load)", form.Label);
        Assert.Equal(parameter, at);
        Assert.Equal(["Power power", "ElectricResistance load"], form.Parameters.Select(p => p.Label));
    }

    [Fact]
    public async Task A_parameter_tells_its_unit_and_range()
    {
        var (form, _) = await Active("new OutputRating(|");
        Assert.Equal("Ω. Rated load, resistive; greater than 0 Ω.", form.Parameters[1].Documentation);
        Assert.Contains("Makes a rating.", form.Documentation, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_form_that_fits_what_is_written_is_the_active_one()
    {
        var (volts, _) = await Active("Sqrt(100.W * 8.Ohm|)");
        Assert.Equal("ElectricPotential Maths.Sqrt(SquaredVoltage square)", volts.Label);
        var (number, _) = await Active("Sqrt(2.0|");
        Assert.Equal("double Maths.Sqrt(double number)", number.Label);
    }

    [Fact]
    public async Task The_innermost_call_is_meant()
    {
        var (inner, at) = await Active("Explain(() => ThermalNoise.VoltageDensity(1.kOhm, |25.degC))");
        Assert.StartsWith("VoltageNoiseDensity ThermalNoise.VoltageDensity(", inner.Label, StringComparison.Ordinal);
        Assert.Equal(1, at);
        var (outer, _) = await Active("Math.Abs(Math.Sqrt(4.0)|)");
        Assert.Contains("Abs(", outer.Label, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_function_of_an_earlier_cell_has_its_words()
    {
        var (form, at) = await Active("Driven(output_npn, |", asked.Supply);
        Assert.Equal("ElectricCurrent Driven(Transistor q, ElectricCurrent I_p)", form.Label);
        Assert.Equal(1, at);
    }

    [Fact]
    public async Task Words_that_are_inherited_are_read_where_they_were_written()
    {
        var (form, at) = await Active("design.Choose(\"R_E\", |", asked.Supply);
        Assert.Equal(1, at);
        Assert.Contains("finite", form.Parameters[1].Documentation, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("|new OutputRating(1.W, 8.Ohm)")]
    [InlineData("new OutputRating(1.W, 8.Ohm)|;")]
    [InlineData("var x = (1 + |2);")]
    [InlineData("Enumerable.Range(0, 3).Select(i => { var q = |3; return q; })")]
    [InlineData("Nowhere(|")]
    public async Task Outside_a_call_there_is_nothing(string cell) =>
        Assert.Null(await asked.Called(cell));
}
