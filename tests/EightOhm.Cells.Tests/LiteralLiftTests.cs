namespace EightOhm.Cells.Tests;

public sealed class LiteralLiftTests
{
    [Theory]
    [InlineData("Explain(() => Sqrt(100.W * 8.Ohm))", "Explain(() => Sqrt(EightOhm.Quantities.Literals.get_W(100) * EightOhm.Quantities.Literals.get_Ohm(8)))")]
    [InlineData("tern.Derive(\"V\", (Power P) => Sqrt(P * 4.7.kOhm))", "tern.Derive(\"V\", (Power P) => Sqrt(P * EightOhm.Quantities.Literals.get_kOhm(4.7)))")]
    [InlineData("Explain(() => -3.dB * 2)", "Explain(() => -EightOhm.Quantities.Literals.get_dB(3) * 2)")]
    [InlineData("Explain(() => T + (-10).degC)", "Explain(() => T + EightOhm.Quantities.Literals.get_degC((-10)))")]
    [InlineData("Explain(() => (1.5).V / R)", "Explain(() => EightOhm.Quantities.Literals.get_V((1.5)) / R)")]
    [InlineData("Explain(() => (2 * 1.5).V)", "Explain(() => EightOhm.Quantities.Literals.get_V((2 * 1.5)))")]
    public void Literals_inside_a_lambda_argument_become_calls_of_their_getters(string cell, string lifted) =>
        Assert.Equal(lifted, LiteralLift.Rewrite(cell));

    [Theory]
    [InlineData("Explain(() => Pow(Ra, 1.0/6))", "Explain(() => Pow(Ra, EightOhm.Explaining.FormulaSteps.Kept(1.0)/6))")]
    [InlineData("Explain(() => (1 / 6.0).V)", "Explain(() => EightOhm.Quantities.Literals.get_V((EightOhm.Explaining.FormulaSteps.Kept(1) / 6.0)))")]
    [InlineData("Explain(() => x * (2 + 1) / (4 * 1.0/3))", "Explain(() => x * (2 + 1) / (EightOhm.Explaining.FormulaSteps.Kept(4) * 1.0/3))")]
    [InlineData("Explain(() => x + 1.0 / 2 / 3)", "Explain(() => x + EightOhm.Explaining.FormulaSteps.Kept(1.0) / 2 / 3)")]
    public void A_quotient_of_numbers_keeps_its_numbers_apart(string cell, string lifted) =>
        Assert.Equal(lifted, LiteralLift.Rewrite(cell));

    [Theory]
    [InlineData("xs.Where(x => x is > 1.0 / 3)")]
    [InlineData("xs.Select(x => { const double third = 1.0 / 3; return x * third; })")]
    [InlineData("var third = 1.0 / 3;")]
    [InlineData("var P = 100.W;")]
    [InlineData("Explain(() => Sqrt(P * R_L))")]
    [InlineData("xs.Select(x => x.W)")]
    [InlineData("Func<Power> f = () => 100.W;")]
    [InlineData("Explain(() => \"100.W\".Length)")]
    public void Everything_else_stays_the_very_same_text(string cell) =>
        Assert.Same(cell, LiteralLift.Rewrite(cell));

    [Fact]
    public void Lines_keep_their_numbers()
    {
        const string Cell = "var a = 1;\nExplain(() =>\n    Sqrt(100.W *\n    8.Ohm))\nvar b = 2;";
        Assert.Equal(Cell.Count(c => c == '\n'), LiteralLift.Rewrite(Cell).Count(c => c == '\n'));
    }
}
