using EightOhm.Quantities;
using EightOhm.Ratings;

namespace EightOhm.Tests.Ratings;

public class SheetAuditTests
{
    private static SpecSheet Tern => SpecSheet.Named("Tern 100")
        .RatedPower("100 W", "8 Ω").RatedPower("180 W", "4 Ω")
        .Sensitivity("1.2 V", "8 Ω").Sensitivity("1.138 V", "4 Ω").Gain("27.4 dB")
        .SlewRate("40 V/µs").FullPowerBandwidth("100 kHz", "8 Ω")
        .NoiseDensity("3.3 nV/√Hz").OnePoleCorner("0.58 MHz").Snr("110 dB", "1 V");

    [Fact]
    public void The_Tern_with_another_sensitivity_into_4_ohm_is_consistent()
    {
        var audit = Tern.Audit();
        Assert.Equal(SheetVerdict.Consistent, audit.Verdict);
        Assert.Empty(audit.Contradictions);
        Assert.Empty(audit.Unjudged);
    }

    [Fact]
    public void Two_equal_sensitivities_are_a_contradiction_of_exactly_four_figures_when_their_rounding_is_narrow()
    {
        var audit = SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").RatedPower("180 W", "4 Ω")
            .Sensitivity("1.20 V", "8 Ω").Sensitivity("1.20 V", "4 Ω").SlewRate("40 V/µs").Audit();
        var one = Assert.Single(audit.Contradictions);
        Assert.Equal(["100 W", "180 W", "1.20 V", "1.20 V"], one.Figures.Select(f => f.Text));
        Assert.Equal("40 V/µs", Assert.Single(audit.Unjudged).Text);
    }

    [Fact]
    public void One_sensitivity_for_both_loads_is_one_figure_and_contradicts_the_two_powers()
    {
        var audit = SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").RatedPower("180 W", "4 Ω").Sensitivity("1.2 V", "8 Ω", "4 Ω").SlewRate("40 V/µs").Audit();
        Assert.Equal(["100 W", "180 W", "1.2 V"], Assert.Single(audit.Contradictions).Figures.Select(f => f.Text));
        Assert.Equal("40 V/µs", Assert.Single(audit.Unjudged).Text);
        Assert.Contains("rated power into 4 Ω 199 to 201 W (printed 180 W)", audit.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_sensitivity_for_both_loads_counts_as_a_sensitivity_too() =>
        Assert.Equal(["100 W", "1.2 V", "30 dB"], Assert.Single(Rated().Sensitivity("1.2 V", "8 Ω", "4 Ω").Gain("30 dB").Audit().Contradictions).Figures.Select(f => f.Text));

    [Fact]
    public void Two_sensitivities_that_round_to_the_same_1_2_V_are_not_accused() =>
        Assert.Equal(SheetVerdict.Consistent, SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").RatedPower("180 W", "4 Ω")
            .Sensitivity("1.2 V", "8 Ω").Sensitivity("1.2 V", "4 Ω").Audit().Verdict);

    [Fact]
    public void One_sensitivity_for_both_loads_stands_when_the_second_power_is_twice_the_first() =>
        Assert.Equal(SheetVerdict.Consistent, SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").RatedPower("200 W", "4 Ω")
            .Sensitivity("1.2 V", "8 Ω", "4 Ω").Audit().Verdict);

    public static TheoryData<string, SpecSheet, SpecSheet, int> Kinds => new()
    {
        { "gain", Rated().Sensitivity("1.2 V", "8 Ω").Gain("27.4 dB"), Rated().Sensitivity("1.2 V", "8 Ω").Gain("30 dB"), 3 },
        { "slew rate", Rated().SlewRate("20 V/µs").FullPowerBandwidth("79 kHz", "8 Ω"), Rated().SlewRate("20 V/µs").FullPowerBandwidth("100 kHz", "8 Ω"), 3 },
        { "noise", Noise("20 kHz").NoiseAtInput("0.47 µV"), Noise("20 kHz").NoiseAtInput("0.42 µV"), 3 },
        { "SNR re 1 V", Noise("918 kHz").Snr("110 dB", "1 V"), Noise("585 kHz").Snr("110 dB", "1 V"), 3 },
        { "two references", Empty().Snr("110 dB", "1 V").Snr("111.6 dB", "1.2 V"), Empty().Snr("110 dB", "1 V").Snr("110 dB", "1.2 V"), 2 },
        { "one pole", Empty().NoiseBandwidth("918 kHz").OnePoleCorner("585 kHz"), Empty().NoiseBandwidth("918 kHz").OnePoleCorner("918 kHz"), 2 },
        { "SNR at 1 W and at rated", Empty().RatedPower("150 W", "8 Ω").SnrAtPower("90 dB", "1 W", "8 Ω").SnrAtRatedPower("112 dB", "8 Ω"), Empty().RatedPower("150 W", "8 Ω").SnrAtPower("90 dB", "1 W", "8 Ω").SnrAtRatedPower("134 dB", "8 Ω"), 3 },
        { "noise in and out", Empty().NoiseAtInput("3.2 µV").NoiseAtOutput("75 µV").Gain("27.4 dB"), Empty().NoiseAtInput("3.2 µV").NoiseAtOutput("3.2 mV").Gain("27.4 dB"), 3 },
        { "headroom", Rated().DynamicHeadroom("2 dB", "8 Ω").BurstPower("158 W", "8 Ω"), Rated().DynamicHeadroom("2 dB", "8 Ω").BurstPower("126 W", "8 Ω"), 3 },
        { "printed twice", Rated().RatedPower("0.1 kW", "8 Ω"), Rated().RatedPower("120 W", "8 Ω"), 2 },
        { "weighted alike", Empty().Snr("115 dB", "1 V", "A").Snr("116.6 dB", "1.2 V", "A"), Empty().Snr("115 dB", "1 V", "A").Snr("115 dB", "1.2 V", "A"), 2 },
        { "a chain of six", Chain("128.2 dB"), Chain("110 dB"), 6 },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_of_contradiction_is_found_and_its_sound_twin_is_not(string kind, SpecSheet sound, SpecSheet wrong, int figures)
    {
        Assert.True(sound.Audit().Verdict == SheetVerdict.Consistent, $"{kind}: {sound.Audit()}");
        var audit = wrong.Audit();
        Assert.Equal(SheetVerdict.Contradictory, audit.Verdict);
        Assert.Equal(figures, audit.Contradictions[0].Figures.Count);
    }

    [Fact]
    public void Every_contradiction_is_as_small_as_it_can_be()
    {
        Func<SpecSheet, SpecSheet>[] parts =
        [
            s => s.RatedPower("100 W", "8 Ω"), s => s.RatedPower("180 W", "4 Ω"), s => s.Sensitivity("1.2 V", "8 Ω"), s => s.Sensitivity("1.20 V", "4 Ω"), s => s.Gain("30 dB"),
            s => s.NoiseDensity("3.3 nV/√Hz"), s => s.NoiseBandwidth("20 kHz"), s => s.Snr("110 dB", "1 V"), s => s.SlewRate("10 V/µs"), s => s.FullPowerBandwidth("90 kHz", "4 Ω"),
        ];
        var audit = Sheet(parts).Audit();
        var texts = parts.Select(p => p(Empty()).Figures[0].ToString()).ToList();
        Assert.True(audit.Contradictions.Count >= 4, audit.ToString());
        foreach (var contradiction in audit.Contradictions)
        {
            var mine = contradiction.Figures.Select(f => parts[texts.IndexOf(f.ToString())]).ToList();
            Assert.Equal(SheetVerdict.Contradictory, Sheet(mine).Audit().Verdict);
            foreach (var left in mine)
                Assert.NotEqual(SheetVerdict.Contradictory, Sheet(mine.Where(p => p != left)).Audit().Verdict);
        }
    }

    [Fact]
    public void A_full_power_bandwidth_that_a_filter_holds_lower_is_no_contradiction() =>
        Assert.Equal(SheetVerdict.Consistent, Rated().SlewRate("40 V/µs").FullPowerBandwidth("50 kHz", "8 Ω").Audit().Verdict);

    [Fact]
    public void A_weighted_ratio_is_not_held_against_an_unweighted_one() =>
        Assert.Equal(SheetVerdict.CannotTell, Empty().Snr("110 dB", "1 V").Snr("116 dB", "1 V", "A").Audit().Verdict);

    [Fact]
    public void Roundings_just_wide_enough_are_not_accused_and_one_digit_more_is()
    {
        // 100 W into 8 Ω from 1.25 V is a gain of 27.09 dB: 27 dB claims 26.5 to 27.5, 27.0 dB claims 26.95 to 27.05.
        Assert.Equal(SheetVerdict.Consistent, Rated().Sensitivity("1.25 V", "8 Ω").Gain("27 dB").Audit().Verdict);
        Assert.Equal(SheetVerdict.Contradictory, Empty().RatedPower("100.0 W", "8 Ω").Sensitivity("1.250 V", "8 Ω").Gain("27.0 dB").Audit().Verdict);
    }

    [Fact]
    public void Too_few_figures_cannot_tell_and_it_says_what_would()
    {
        var audit = Rated().Sensitivity("1.2 V", "8 Ω").Audit();
        Assert.Equal(SheetVerdict.CannotTell, audit.Verdict);
        Assert.Equal(["gain"], audit.WouldTell);
        Assert.Equal("Rival: cannot tell, no figure can be held against another.\nWhat would tell: gain.", audit.ToString());
    }

    [Fact]
    public void Where_one_figure_more_is_not_enough_it_names_pairs()
    {
        var audit = Empty().RatedPower("100 W", "8 Ω").Audit();
        Assert.Equal(SheetVerdict.CannotTell, audit.Verdict);
        Assert.Contains("gain with sensitivity for rated power into 8 Ω", audit.WouldTell);
        Assert.DoesNotContain(audit.WouldTell, w => w.Contains("noise", StringComparison.Ordinal));
        Assert.Equal("Rival: cannot tell, the sheet has no figures.", Empty().Audit().ToString());
    }

    [Fact]
    public void The_words_say_what_the_other_figures_would_have_each_be() =>
        Assert.Equal(
            "Rival: the sheet contradicts itself.\n"
            + "Rated power into 8 Ω 100 W, sensitivity for rated power into 8 Ω 1.2 V and gain 30 dB cannot all be true. If the others hold: "
            + "rated power into 8 Ω 147.3 to 219.1 W (printed 100 W); sensitivity for rated power into 8 Ω 842.3 to 949.8 mV (printed 1.2 V); gain 27.07 to 27.84 dB (printed 30 dB).",
            Rated().Sensitivity("1.2 V", "8 Ω").Gain("30 dB").Audit().ToString());

    [Fact]
    public void A_slew_rate_too_low_is_told_as_a_limit() =>
        Assert.Contains("full-power bandwidth into 8 Ω at most 81.", Rated().SlewRate("20 V/µs").FullPowerBandwidth("100 kHz", "8 Ω").Audit().ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("0 W")]
    [InlineData("-100 W")]
    public void A_figure_that_cannot_be_is_refused(string text) =>
        Assert.Contains("must be greater than zero", Assert.Throws<RefusedValueException>(() => Empty().RatedPower(text, "8 Ω")).Message, StringComparison.Ordinal);

    [Fact]
    public void Texts_that_are_no_such_figure_are_refused_with_an_example()
    {
        Assert.Contains("\"100 V\" is not a value of Power", Assert.Throws<FormatException>(() => Empty().RatedPower("100 V", "8 Ω")).Message, StringComparison.Ordinal);
        Assert.Contains("point", Assert.Throws<FormatException>(() => Empty().Sensitivity("1,2 V", "8 Ω")).Message, StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Empty().SlewRate("fast"));
        Assert.Contains("above 0 dB", Assert.Throws<RefusedValueException>(() => Empty().Snr("-110 dB", "1 V")).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Empty().RatedPower("100 W", "0 Ω"));
        Assert.Throws<RefusedValueException>(() => Empty().Sensitivity("1.2 V", "8 Ω", "8 Ω"));
    }

    [Fact]
    public void A_sheet_of_the_most_figures_is_judged_and_one_more_is_refused()
    {
        var full = Tern.NoiseAtInput("3.2 µV").NoiseAtOutput("75 µV").NoiseBandwidth("918 kHz").SnrAtPower("91.5 dB", "1 W", "8 Ω").SnrAtRatedPower("111.5 dB", "8 Ω")
            .DynamicHeadroom("1 dB", "8 Ω").BurstPower("126 W", "8 Ω").DynamicHeadroom("1 dB", "4 Ω").BurstPower("227 W", "4 Ω").FullPowerBandwidth("90 kHz", "4 Ω");
        Assert.Equal(SheetVerdict.Consistent, full.Audit().Verdict);
        Assert.Throws<InvalidOperationException>(() => full.Gain("27 dB"));
    }

    [Fact]
    public void Sheets_stand_side_by_side_with_what_follows_in_each()
    {
        var c = SpecSheet.Compare(Tern, Rated().SlewRate("20 V/µs"), Empty().RatedPower("150 W", "8 Ω").SnrAtRatedPower("112 dB", "8 Ω").Snr("120 dB", "1 V", "A"));
        // 28.28 V from 100 W in 8 Ω: √(99.5·8) to √(100.5·8) V; 1.138 V for 180 W into 4 Ω is printed.
        Assert.Equal(["(28.2 to 28.4 V)", "(28.2 to 28.4 V)", "(34.6 to 34.7 V)"], Row(c, "rms voltage at rated power into 8 Ω"));
        Assert.Equal(["1.138 V", "–", "–"], Row(c, "sensitivity for rated power into 4 Ω"));
        Assert.Equal(["100 kHz", "(at most 81.8 kHz)", "–"], Row(c, "full-power bandwidth into 8 Ω"));
        // 20.5 V/µs over 2π·√(2·99.5 W·8 Ω) above; 1 W is 21.76 dB below 150 W.
        Assert.Equal("(89.7 to 90.8 dB)", Row(c, "SNR at 1 W into 8 Ω")[2]);
        Assert.Equal(["–", "–", "120 dB"], Row(c, "A-weighted SNR re 1 V at the input"));
        Assert.DoesNotContain(c.Rows, r => r.What.StartsWith("burst", StringComparison.Ordinal));
    }

    [Fact]
    public void One_sensitivity_for_both_loads_is_printed_in_both_rows()
    {
        var c = SpecSheet.Compare(Rated().RatedPower("200 W", "4 Ω").Sensitivity("1.2 V", "8 Ω", "4 Ω"));
        Assert.Equal(["1.2 V"], Row(c, "sensitivity for rated power into 8 Ω"));
        Assert.Equal(["1.2 V"], Row(c, "sensitivity for rated power into 4 Ω"));
        Assert.Equal(["(27.1 to 27.8 dB)"], Row(c, "gain"));
    }

    [Fact]
    public void The_equations_of_a_sheet_are_the_shortest_that_the_rest_follow_from()
    {
        var audit = Rated().Sensitivity("1.2 V", "8 Ω").Gain("27.4 dB").SlewRate("40 V/µs").FullPowerBandwidth("100 kHz", "8 Ω").Audit();
        Assert.Equal([["100 W", "1.2 V", "27.4 dB"], ["100 W", "40 V/µs", "100 kHz"]], audit.Equations.Select(e => e.Select(f => f.Text)));
    }

    private static string[] Row(SheetComparison c, string what) =>
        [.. c.Rows.Single(r => r.What == what).Cells.Select(x => x.Origin == SheetCellOrigin.Follows ? $"({x.Text})" : x.Text)];

    private static SpecSheet Empty() => SpecSheet.Named("Rival");

    private static SpecSheet Rated() => Empty().RatedPower("100 W", "8 Ω");

    private static SpecSheet Noise(string bandwidth) => Empty().NoiseDensity("3.3 nV/√Hz").NoiseBandwidth(bandwidth);

    // Density, bandwidth, the gain from the 4 Ω figures, and the ratio at rated power into 8 Ω: 28.28 V over 23.58·0.4667 µV.
    private static SpecSheet Chain(string snr) => Noise("20 kHz").RatedPower("180 W", "4 Ω").Sensitivity("1.138 V", "4 Ω").RatedPower("100 W", "8 Ω").SnrAtRatedPower(snr, "8 Ω");

    private static SpecSheet Sheet(IEnumerable<Func<SpecSheet, SpecSheet>> parts) => parts.Aggregate(Empty(), (s, p) => p(s));
}
