using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Explaining.Workings;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Explaining;

/// <summary>How calls are shown: by their owners, with their objects, with what they say of their method.</summary>
public class ShownCallsTests
{
    private static double Sqrt(string word) => word.Length;

    private sealed record Stage(ElectricPotential V, [property: Symbol("n_p")] int Pairs)
    {
        public Power Loss(ElectricResistance R) => V * V / R;

        [Worked("the loss at which nothing changes: repeated halving")]
        public Power Settled(ElectricResistance R)
        {
            SolverTrace.Note(17);
            return V * V / R;
        }

        [Worked("the sum of what was asked", Source = "a textbook, ch. 9")]
        public Power Total => 3 * V * 1.A;
    }

    [Fact]
    public void Only_the_root_of_Maths_and_of_the_framework_is_a_root()
    {
        var x = 4.0;
        var word = "abc";
        Shows("√x + √x = √4 + √4 = 4", Explain(() => Maths.Sqrt(x) + Math.Sqrt(x)));
        Shows("x · Sqrt(word) = 4 · 3 = 12", Explain(() => x * Sqrt(word)));
        Shows("x · Log(x, x) = 4 · 1 = 4", Explain(() => x * Math.Log(x, x)));
    }

    [Fact]
    public void The_object_of_a_call_is_shown_and_said_what_it_is()
    {
        var stage = new Stage(40.V, 3);
        var R = 8.Ohm;
        Shows(
            """
            2 · stage.Loss(R) = 2 · 200 W = 400 W
            where stage: stage with V = 40 V, n_p = 3
            """,
            Explain(() => 2 * stage.Loss(R)));
    }

    [Fact]
    public void A_call_of_a_method_that_says_nothing_of_itself_is_no_bare_number()
    {
        var stage = new Stage(40.V, 3);
        var R = 8.Ohm;
        Shows(
            """
            stage.Loss(R) = stage.Loss(8 Ω) = 200 W
            worked: computed by Stage, which does not say how
            where stage: stage with V = 40 V, n_p = 3
            """,
            Explain(() => stage.Loss(R)));
    }

    [Fact]
    public void A_solver_without_an_equation_says_what_it_looked_for_and_in_how_many_steps()
    {
        var stage = new Stage(40.V, 3);
        var R = 8.Ohm;
        Shows(
            """
            stage.Settled(R) = stage.Settled(8 Ω) = 200 W
            worked: the loss at which nothing changes: repeated halving, 17 iterations
            where stage: stage with V = 40 V, n_p = 3
            """,
            Explain(() => stage.Settled(R)));
        Shows(
            """
            2 · stage.Settled(R) + Total = 2 · 200 W + 120 W = 520 W
            where stage: stage with V = 40 V, n_p = 3
              stage.Settled(R) = stage.Settled(8 Ω) = 200 W
              worked: the loss at which nothing changes: repeated halving, 17 iterations
              Total = 120 W  [1]
              worked: the sum of what was asked
            [1] a textbook, ch. 9
            """,
            Explain(() => 2 * stage.Settled(R) + stage.Total));
    }

    [Fact]
    public void A_line_that_is_nothing_but_a_call_opens_however_deep_it_stands()
    {
        ElectricPotential V = 40.V, V_p = 25.V;
        var Z = 8.Ohm;
        var phi = 45.deg;
        var R_E = 0.22.Ohm;
        var shown = Explain(() => 2 * EightOhm.OutputStages.ClassB.Heat(V, V_p, Z, phi, R_E, 2)).ToString();
        Assert.Contains("P_L = P_L(V_p, Z, φ) = 27.62 W", shown, StringComparison.Ordinal);
        Assert.Contains("P_L = cos(φ)/2 · V_p^2/Z = cos(45°)/2 · (25 V)^2/8 Ω = 27.62 W", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_formula_of_the_same_numbers_is_shown_once()
    {
        var R = 1.kOhm;
        var T = 25.degC;
        var shown = Explain(() => EightOhm.Noise.ThermalNoise.VoltageDensity(R, T) + EightOhm.Noise.ThermalNoise.VoltageDensity(R, T));
        Assert.Single(shown.Opened);
        Assert.Single(shown.Sources);
    }

    private static void Shows(string text, Explanation explanation) =>
        Assert.Equal(text.ReplaceLineEndings("\n"), explanation.ToString());
}
