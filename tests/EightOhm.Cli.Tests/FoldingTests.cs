using EightOhm.Cli.Consoles;
using EightOhm.Display.Tables;

namespace EightOhm.Cli.Tests;

public sealed class FoldingTests
{
    private static readonly Table Sheet = new(
        ["requirement", "value", "where", "asked", "state"],
        [
            ["junction of the output devices", "113.7 °C", "4 Ω ∠45°, mains +10 %", "at most 125.0 °C (T_jmax)", "met"],
            ["noise at the output, unweighted, over 20 kHz", "12.34 µV", "", "at most 10.00 µV (e_max)", "not met: short by 2.34 µV"],
        ],
        [1],
        "How the requirements stand");

    [Theory]
    [InlineData(30)]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void No_number_is_broken_or_parted_from_its_unit_and_no_line_is_too_long(int width)
    {
        var lines = ConsoleTable.Lines(Sheet, width);

        Assert.All(lines, l => Assert.True(l.Length <= width, $"{l.Length} characters: {l}"));
        foreach (var number in new[] { "113.7 °C", "4 Ω", "+10 %", "125.0 °C", "20 kHz", "12.34 µV", "10.00 µV", "2.34 µV" })
            Assert.Contains(lines, l => l.Contains(number, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_columns_do_not_fit_each_value_stands_after_its_heading()
    {
        var lines = ConsoleTable.Lines(Sheet, 40);

        Assert.Equal(
            [
                "junction of the output devices",
                "  value: 113.7 °C",
                "  where: 4 Ω ∠45°, mains +10 %",
                "  asked: at most 125.0 °C (T_jmax)",
                "  state: met",
                "",
            ],
            lines.Take(6));
    }

    [Fact]
    public void Figures_stand_to_the_right_under_their_heading()
    {
        var lines = ConsoleTable.Lines(Sheet, 200);

        Assert.EndsWith("value", lines[0][..lines[0].IndexOf("  where", StringComparison.Ordinal)].TrimEnd(), StringComparison.Ordinal);
        Assert.Equal(lines[0].IndexOf("value", StringComparison.Ordinal) + 5, lines[2].IndexOf("113.7 °C", StringComparison.Ordinal) + 8);
    }

    [Fact]
    public void A_sentence_folds_between_words_and_keeps_its_indents() =>
        Assert.Equal(["  a limit of", "    10 kHz", "    is asked"], Folding.Lines("a limit of 10 kHz is asked", 12, 2, 4));
}
