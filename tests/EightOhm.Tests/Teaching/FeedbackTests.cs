using EightOhm.Quantities;
using EightOhm.Teaching;
using UnitsNet;

namespace EightOhm.Tests.Teaching;

/// <summary>What any exercise says of a wrong figure, without a slip of its own.</summary>
public class FeedbackTests
{
    [Fact]
    public void Two_honest_digits_are_right()
    {
        Assert.True(Exercise.Ask("?", 3.233.V).Check(3.2.V).Right);
        Assert.True(Exercise.Ask("?", 81.06.W).Check(80.W).Right);
        Assert.True(Exercise.Ask("?", 1.04.A).Check(1.A).Right);
        Assert.True(Exercise.Ask("?", 9.46.mV).Check(0.0095.V).Right);
        Assert.False(Exercise.Ask("?", 3.233.V).Check(3.4.V).Right);
        Assert.False(Exercise.Ask("?", 1.06.A).Check(1.A).Right);
    }

    [Fact]
    public void A_tolerance_is_a_share_decibels_or_kelvins()
    {
        Assert.True(Exercise.Ask("?", 10.W).Within(10.percent).Check(11.W).Right);
        Assert.False(Exercise.Ask("?", 10.W).Within(1.percent).Check(10.2.W).Right);
        Assert.True(Exercise.Ask("?", 100.dB).Within(0.5.dB).Check(99.6.dB).Right);
        Assert.False(Exercise.Ask("?", 100.dB).Within(0.5.dB).Check(99.4.dB).Right);
        Assert.Equal("Right: 100 dB.", Exercise.Ask("?", 100.dB).Within(0.5.dB).Check(100.dB).Says);
        Assert.True(Exercise.Ask("?", 85.degC).Within(2.K).Check(86.9.degC).Right);
        Assert.False(Exercise.Ask("?", 85.degC).Check(86.9.degC).Right);
    }

    [Fact]
    public void Signs_decades_and_usual_factors_are_known()
    {
        var volts = Exercise.Ask("?", 3.7.V);
        Assert.StartsWith("The size is right, the sign is not", Says(volts, -3.7.V), StringComparison.Ordinal);
        Assert.Contains("a thousand times too small: look at the prefixes", Says(volts, 3.7.mV), StringComparison.Ordinal);
        Assert.Contains("ten times too large", Says(volts, 37.V), StringComparison.Ordinal);
        Assert.Contains("10 to the power of 9 times too small", Says(volts, 3.7.nV), StringComparison.Ordinal);
        Assert.Contains("too large by √2: rms and peak", Says(volts, 5.23.V), StringComparison.Ordinal);
        Assert.Contains("too small by √2: rms and peak", Says(volts, 2.62.V), StringComparison.Ordinal);
        Assert.Contains("2√2: rms and peak to peak", Says(volts, 10.5.V), StringComparison.Ordinal);
        Assert.Contains("a factor of two", Says(volts, 7.4.V), StringComparison.Ordinal);
        Assert.Contains("2π", Says(Exercise.Ask("?", 50.Hz), 314.Hz), StringComparison.Ordinal);
        Assert.Equal("Not yet: that is too large.", Says(volts, 4.5.V));
        Assert.Equal("Not yet: that is too small.", Says(volts, 3.V));
        Assert.Equal("Not yet: that is too small.", Says(Exercise.Ask("?", -3.7.V), -3.V));
        Assert.StartsWith("Not yet: the sign is the other one", Says(volts, -4.5.V), StringComparison.Ordinal);
    }

    // √2 belongs to voltages and currents: a power has no peak of that kind.
    [Fact]
    public void A_power_is_not_told_of_peaks() => Assert.Equal("Not yet: that is too large.", Says(Exercise.Ask("?", 100.W), 141.4.W));

    [Fact]
    public void Decibels_and_ratios_are_told_apart()
    {
        var gain = Exercise.Ask("?", 23.62.ratio);
        Assert.Contains("reads the ratio itself as decibels", Says(gain, 23.62.dB), StringComparison.Ordinal);
        Assert.Contains("write .dB after it", Says(gain, 27.47.ratio), StringComparison.Ordinal);
        Assert.Contains("20·log₁₀ for voltages, 10·log₁₀ for powers", Says(gain, 13.73.dB), StringComparison.Ordinal);
        Assert.Contains("20·log₁₀ for voltages, 10·log₁₀ for powers", Says(gain, 54.93.dB), StringComparison.Ordinal);
        Assert.Contains("power goes with the square", Says(Exercise.Ask("?", 25.percent), 50.percent), StringComparison.Ordinal);
        Assert.Contains("percent and a plain fraction", Says(Exercise.Ask("?", 27.8.percent), 27.8), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_kind_of_quantity_is_said_in_words()
    {
        var volts = Exercise.Ask("?", 3.7.V);
        Assert.Equal("That is a current; a voltage is asked.", Says(volts, 3.7.A));
        Assert.Equal("A unit is missing; the answer is a voltage, written like 1.23.V or 1230.mV.", Says(volts, 3.7));
        Assert.Equal("A unit is missing; the answer is a voltage, written like 1.23.V or 1230.mV.", Says(volts, 4));
        Assert.StartsWith("That is text; a voltage", Says(volts, "3.7 V"), StringComparison.Ordinal);
        Assert.StartsWith("That is a gain or a ratio of voltages; a voltage is asked", Says(volts, 3.7.dB), StringComparison.Ordinal);
        Assert.StartsWith("That is a quantity of the kind Force", Says(volts, Force.FromNewtons(1)), StringComparison.Ordinal);
        Assert.StartsWith("That is no quantity but a thing of the type DateTime", Says(volts, default(DateTime)), StringComparison.Ordinal);
        Assert.StartsWith("One value is asked and 2 were given", volts.Check(1.V, 2.V).Says, StringComparison.Ordinal);
        Assert.StartsWith("That is not a finite number", Says(Exercise.Ask("?", 3.0), double.NaN), StringComparison.Ordinal);
        Assert.Equal("That is a temperature; a temperature difference is asked.", Says(Exercise.Ask("?", 10.K), 10.degC));
        Assert.Contains("273.15 apart", Says(Exercise.Ask("?", 60.degC), 333.15.degC), StringComparison.Ordinal);
        Assert.Equal("Not yet: that is too hot.", Says(Exercise.Ask("?", 60.degC), 70.degC));
    }

    [Fact]
    public void A_null_is_blank_and_one_of_several_is_missing()
    {
        Assert.Equal(VerdictKind.Blank, Exercise.Ask("?", 3.V).Check(null).Kind);
        var task = Exercise.Choose<ElectricPotential, ElectricCurrent>("?", "V", "I", (V, I) => [Criterion.AtMost("power", V * I, 1.W, "Less.")]);
        Assert.StartsWith("I: Nothing was given", task.Check(1.V, null).Says, StringComparison.Ordinal);
        Assert.Equal("Right: it keeps all 1 limits.", task.Check(1.V, 0.5.A).Says);
        Assert.Equal("power: 2 W, at most 1 W: not met. Less.", task.Check(1.V, 2.A).Criteria[0].ToString());
    }

    [Fact]
    public void A_slip_that_cannot_be_told_from_the_answer_is_refused()
    {
        var e = Assert.Throws<ArgumentException>(() => Exercise.Ask("?", 3.V).Slip(3.03.V, "Nearly."));
        Assert.Contains("cannot be told from the answer 3 V", e.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Exercise.Ask("?", 3.V).Slip(3.A, "Another kind."));
    }

    [Fact]
    public void Hints_come_one_after_the_other_and_the_last_stays()
    {
        var exercise = Exercise.Ask("?", 3.V).Hints("First.", $"Then {4.7.kOhm}.");
        Assert.Equal("Hint 1 of 2: First.\nHint() again gives the next one.", exercise.Hint().ToString());
        Assert.Equal("Then 4.7 kΩ.", exercise.Hint().Text);
        Assert.Equal((2, "Then 4.7 kΩ."), (exercise.Hint().Number, exercise.Hint().Text));
        Assert.StartsWith("There is no hint", Exercise.Ask("?", 3.V).Hint().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_working_of_the_answer_closes_the_solution()
    {
        var (P, R) = (50.W, 8.Ohm);
        var solution = Exercise.Ask($"The voltage of {P} in {R}", () => Maths.Sqrt(P * R)).Step("Ohm's law.").Solution();
        Assert.Equal(["Ohm's law.", ""], solution.Steps.Select(s => s.Words));
        Assert.Equal("Answer: 20 V.", solution.Answer);
        Assert.Contains("20 V", solution.Steps[1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_read_as_the_house_does()
    {
        ExerciseText text = $"{23.62.ratio:dB}, {28.284271.V:2}, {3}, {"words"}";
        Assert.Equal("27.47 dB, 28 V, 3, words", text.ToString());
        Assert.Throws<FormatException>(() => { ExerciseText _ = $"{3.V:volts}"; });
    }

    private static string Says(Exercise exercise, object given)
    {
        var verdict = exercise.Check(given);
        Assert.Equal(VerdictKind.Wrong, verdict.Kind);
        return verdict.Says;
    }
}
