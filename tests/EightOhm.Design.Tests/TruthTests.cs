using EightOhm.Design.Tests.Running;
using EightOhm.Design.Tests.Truth;

namespace EightOhm.Design.Tests;

/// <summary>A design notebook stays true for any amplifier: what it says of its own is computed.</summary>
public class TruthTests
{
    private static readonly string[] Name = ["tern"];

    private static readonly IReadOnlyList<DesignNotebook> Notebooks = DesignNotebook.Under(TestedDesign.Notebooks());

    public static TheoryData<string> Names => [.. Notebooks.Select(n => n.Name)];

    [Fact]
    public void There_are_design_notebooks() => Assert.Contains(Notebooks, n => n.Name == "01-specification");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_notebook_says_nothing_that_another_input_makes_false(string name)
    {
        var faults = string.Join('\n', Notebooks.Single(n => n.Name == name).Faults());
        Assert.True(faults.Length == 0, faults);
    }

    [Theory]
    [InlineData("With a rail of 45 V the stage clips late.", "a figure, \"45\"")]
    [InlineData("The margin is 1.3 times the need.", "a figure, \"1.3\"")]
    [InlineData("# 5 Rails and supply", "a figure, \"5\"")]
    [InlineData("Here three pairs share the current.", "a figure in words, \"three pairs\"")]
    [InlineData("So the requirement is met.", "a verdict, \"met\"")]
    [InlineData("The limiter passes the load line.", "a verdict, \"passes\"")]
    [InlineData("At high mains the sink is too hot.", "a verdict, \"too hot\"")]
    [InlineData("The margin holds at any mains.", "a verdict, \"holds\"")]
    [InlineData("Into the minimum rated load it fails.", "a verdict, \"fails\"")]
    [InlineData("The Tern needs a larger one.", "the design's name, \"Tern\"")]
    public void Prose_that_would_age_is_found(string prose, string fault) =>
        Assert.StartsWith(fault, Assert.Single(ProseTruth.Faults(prose, Name)), StringComparison.Ordinal);

    [Theory]
    [InlineData("R<sub>3</sub> and T_20k are names; two ways lead to the output.")]
    [InlineData("If the bypass fails, the fuse does not open; the pattern of a stern look is no name.")]
    [InlineData("> **Caution.** A transistor fails short, from a source that gives a hundred amperes without noticing.")]
    public void Prose_that_is_true_of_any_design_is_left(string prose) => Assert.Empty(ProseTruth.Faults(prose, Name));

    [Theory]
    [InlineData("var rail = dual.Playing(n_ch, I_pk, 1.kHz, I_small);", "a dimension, \"1.kHz\"")]
    [InlineData("var T = (-10).degC;", "a dimension, \"(-10).degC\"")]
    [InlineData("var V = 2.43 * V_BE;", "a bare number, \"2.43\"")]
    [InlineData("var P = P_L / 8;", "a bare number, \"8\"")]
    [InlineData("design.Compute(\"x\", 6.K * C);", "a dimension, \"6.K\"")]
    [InlineData("design.Require(\"safe area, 100 ms\", \"u\").AtMost(1.0);", "a figure, \"100\"")]
    [InlineData("Say($\"The margin is 3 dB of {P}.\");", "a figure, \"3\"")]
    [InlineData("Say($\"\"\"\n    At 20 kHz it is {P}.\n    \"\"\");", "a figure, \"20\"")]
    [InlineData("design.Choose(\"n\", 3, \"as chapter 6 says\");", "a figure, \"6\"")]
    [InlineData("var n = 2; // three pairs", "a figure in words, \"three pairs\"")]
    [InlineData("var title = \"Rails of the Tern\";", "the design's name, \"Tern\"")]
    public void Code_that_types_a_figure_is_found(string code, string fault) =>
        Assert.StartsWith(fault, Assert.Single(CodeTruth.Faults(code, Name)), StringComparison.Ordinal);

    [Theory]
    [InlineData("var P = design.Target(\"P\", 100.W, \"rated power\");")]
    [InlineData("design.Choose(\"W\", 3 * 40.mA, \"two in parallel\", considered: \"one\");")]
    [InlineData("var d = Sqrt(4 * k * T * R) / 2 + 0.V;")]
    [InlineData("Say($\"It is {T_20k:3} of {R_1}, H2 {h}.\");")]
    [InlineData("var q = design.Part(\"output npn\", \"cards/output-npn.json\");")]
    public void Code_that_types_only_inputs_is_left(string code) => Assert.Empty(CodeTruth.Faults(code, Name));
}
