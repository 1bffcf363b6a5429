using EightOhm.Finding;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Thermal;

namespace EightOhm.Tests.Finding;

public class FinderTests
{
    [Theory]
    [InlineData("ripple", "ReservoirEstimates.RippleFullWave")]
    [InlineData("hum", "ReservoirEstimates.RippleFullWave")]
    [InlineData("ripple of 10 mF at 3 A", "ReservoirEstimates.RippleFullWave")]
    [InlineData("how large a heat sink", "SharedSink.AllowedSink")]
    [InlineData("heatsink", "SharedSink.AllowedSink")]
    [InlineData("cooling", "SharedSink.AllowedSink")]
    [InlineData("fuse", "Fuse.Rating")]
    [InlineData("sag", "Transformer.Regulation")]
    [InlineData("Slew rate", "SlewRate.Needed")]
    [InlineData("bleeder", "Discharge.Bleeder")]
    [InlineData("hiss", "ThermalNoise.VoltageDensity")]
    [InlineData("SOA", "SafeAreaLimits.ByDissipation")]
    public void A_word_of_the_trade_finds_its_function(string words, string name) =>
        Assert.Contains(name, Finder.LookUp(words).Select(f => f.Name));

    public static TheoryData<string> Asked => [.. Questions.All.Select(q => q.Question)];

    [Theory]
    [MemberData(nameof(Asked))]
    public void A_question_finds_its_answer_among_the_first_three(string question)
    {
        var answers = Questions.All.Single(q => q.Question == question).Functions;
        Assert.All(answers, a => Assert.Contains(a, FunctionIndex.All.Select(f => f.Name)));
        Assert.Contains(Finder.LookUp(question, 3), f => answers.Contains(f.Name));
    }

    [Fact]
    public void What_is_not_there_says_what_to_try()
    {
        Assert.Contains("Try one word", Finder.LookUp("xyzzy").ToString(), StringComparison.Ordinal);
        Assert.Equal(FunctionIndex.All.Count, Finder.LookUp("").Count);
        Assert.Throws<ArgumentOutOfRangeException>(() => Finder.LookUp("ripple", 0));
        var refused = Assert.Throws<ArgumentException>(() => Finder.About("SharedSink.AlowedSink"));
        Assert.Contains("SharedSink.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_function_is_described_from_its_name_a_method_group_or_a_call()
    {
        var named = Finder.About("SharedSink.AllowedSink");
        Assert.Equal("SharedSink.AllowedSink(T_J, T_a, P, n, P_other, theta_JC, theta_CS)", named.Signature);
        Assert.Equal(("Thermal", "K/W"), (named.Room, named.Unit));
        Assert.Equal(("theta_JC", "thermal resistance", "K/W"), (named.Parameters[5].Name, named.Parameters[5].Kind, named.Parameters[5].Unit));
        Assert.Contains("0 K/W or more", named.Parameters[5].Text, StringComparison.Ordinal);
        Assert.Contains("Sedra", named.Source, StringComparison.Ordinal);
        Assert.StartsWith("SharedSink.AllowedSink(125.degC", named.Example, StringComparison.Ordinal);
        Assert.Equal(named.ToString(), Finder.About(SharedSink.AllowedSink).ToString());
        var (V, V_p, phi, P, R_L) = (50.V, 40.V, 0.deg, 100.W, 8.Ohm);
        Assert.Equal("ClassB.Efficiency", Finder.About(() => ClassB.Efficiency(V, V_p, phi)).Name);
        Assert.Equal("OutputRating.RmsVoltage", Finder.About(() => new OutputRating(P, R_L).RmsVoltage).Name);
        Assert.Equal("OutputRating", Finder.About(() => new OutputRating(P, R_L)).Name);
        Assert.Equal("ThermalNoise.VoltageDensity", Finder.About("voltagedensity").Name);
    }

    [Fact]
    public void Sixty_functions_and_more_have_an_example_with_its_value() =>
        Assert.True(FunctionIndex.All.Count(f => f.Example.Contains("   // ", StringComparison.Ordinal)) >= 60);
}
