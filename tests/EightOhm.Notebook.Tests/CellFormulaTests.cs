namespace EightOhm.Notebook.Tests;

/// <summary>A formula that a cell declares shows its working, or a sentence says what keeps it from that.</summary>
[Collection(Cells.Kernels)]
public sealed class CellFormulaTests(Cells cells) : IClassFixture<Cells>
{
    [Fact]
    public async Task A_formula_of_a_partial_type_shows_its_steps_in_a_later_cell()
    {
        await cells.Done("public static partial class Bench { [Formula(\"my notes\")] public static Power Heat(ElectricPotential V, ElectricResistance R) => V * V / R; }");
        Assert.StartsWith("Heat = V^2/R = (40 V)^2/8 Ω = 200 W", (await cells.Shown("var V = 40.V; var R = 8.Ohm; Explain(() => Bench.Heat(V, R))"))["text/plain"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("public static class Closed { [Formula(\"x\")] public static ElectricPotential Third(ElectricPotential V) => V / 3; }", "Closed holds the formula Third, so it must be partial")]
    [InlineData("[Formula(\"x\")] static ElectricPotential Quarter(ElectricPotential V) => V / 4;", "The steps of Quarter cannot be shown: in a cell a [Formula] must stand in a partial type")]
    public async Task Where_steps_are_missing_a_sentence_says_why(string cell, string says) =>
        Assert.Contains(says, (await cells.Shown(cell))["text/plain"], StringComparison.Ordinal);

    // The steps are put in on the formula's own last line.
    [Fact]
    public async Task Line_numbers_stay_the_cell_s() =>
        Assert.Contains("(3,", await cells.Complaint("public static partial class Lines { [Formula(\"x\")] public static ElectricPotential Same(ElectricPotential V) => V + V; }\n\nunknown.Call();"), StringComparison.Ordinal);
}
