using EightOhm.Feedback;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Explaining.Workings;

namespace EightOhm.Tests.Feedback;

/// <summary>The two classes of error, and the numbers that a mixed-up class would give.</summary>
public class LoopErrorsTests
{
    private const double Fundamental = 20e3, Crossover = 1.11e6;

    [Fact]
    public void Each_harmonic_meets_the_loop_gain_at_its_own_frequency()
    {
        (int N, double Ppm)[] harmonics = [(2, 40), (3, 250), (5, 120), (7, 70), (9, 45)];
        double Total(Func<int, double> loopGain) =>
            Math.Sqrt(harmonics.Sum(h => Math.Pow(LoopErrors.AfterGainAbovePole(h.Ppm.ppm, loopGain(h.N)).PartsPerMillion, 2)));

        Assert.Equal(20.705, Total(n => Crossover / (n * Fundamental)), 0.0005);
        Assert.Equal(5.27, Total(_ => Crossover / Fundamental), 0.005); // the mistake: all by the loop gain at the fundamental
    }

    [Fact]
    public void An_error_in_the_input_loop_has_the_closed_loop_gain()
    {
        // One nanohenry in the input loop beside half-sine currents of 5 A at 20 kHz: their second harmonic is 2/(3·π) of the peak.
        var induced = ElectricPotential.FromVolts(2 * Math.PI * 40e3 * 1e-9 * 5 * 2 / (3 * Math.PI));
        Assert.Equal(157.33, LoopErrors.AtSummingNode(induced, 23.6.ratio) / 40.V * 1e6, 0.005);
        Assert.Equal(6.67, induced / 40.V * 1e6, 0.005); // the mistake: the gain forgotten
    }

    [Fact]
    public void Loop_gain_with_ninety_degrees_counts_by_its_square()
    {
        Assert.Equal(Math.Sqrt(0.5), LoopErrors.AfterGainAbovePole(100.percent, 1).DecimalFractions, 1e-15);
        Assert.Equal(0.5, LoopErrors.AfterGain(100.percent, 1).DecimalFractions, 1e-15);
    }

    [Fact]
    public void Positive_feedback_is_refused_with_what_to_try()
    {
        var thrown = Assert.Throws<RefusedValueException>(() => FeedbackLoop.ClosedLoopGain((-100).ratio, 0.1));
        Assert.Contains("A·B_fb must be 0 or more", thrown.Message, StringComparison.Ordinal);
        Assert.Contains("give A and B_fb the same sign", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gain_and_a_ratio_go_by_their_own_names_on_the_board()
    {
        var (A, P, x) = (1e3.ratio, 100.W, 10.percent);
        var shown = Explain(() => FeedbackLoop.ClosedLoopGain(A, 0.01)).ToString();
        Assert.Contains("A/(1 + A · B_fb)", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("Ratio", shown, StringComparison.Ordinal);
        shown = Explain(() => ClassB.AtHighMains(P, x)).ToString();
        Assert.Contains("1 + x", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("Fractions", shown, StringComparison.Ordinal);
    }
}
