using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class RequirementTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(110, "met", "10 %")]
    [InlineData(100, "met", "0 %")]
    [InlineData(95, "not met", "−5 %")]
    public void At_least_has_its_margin_in_per_cent_of_the_limit(double watts, string state, string margin) =>
        Judge(Power.FromWatts(watts), Limits.AtLeast(100.W), state, margin);

    [Theory]
    [InlineData(0.3, "met", "0 %")]
    [InlineData(0.15, "met", "50 %")]
    [InlineData(0.36, "not met", "−20 %")]
    public void At_most_has_its_margin_in_per_cent_of_the_limit(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), Limits.AtMost(0.3.V), state, margin);

    [Fact]
    public void A_sum_that_rounds_past_the_limit_is_on_it() => Judge(0.1 + 0.2, Limits.AtMost(0.3), "met", "0 %");

    [Fact]
    public void The_next_figure_past_the_limit_is_not() => Judge(0.3 * (1 + 1e-9), Limits.AtMost(0.3), "not met", "−1×10⁻⁷ %");

    [Theory]
    [InlineData(20, "met", "0 % to the lower limit")]
    [InlineData(25, "met", "16.7 % to the upper limit")]
    [InlineData(33, "not met", "−10 % to the upper limit")]
    [InlineData(18, "not met", "−10 % to the lower limit")]
    public void Between_has_its_margin_to_the_nearer_end(double hertz, string state, string margin) =>
        Judge(Frequency.FromHertz(hertz), Limits.Between(20.Hz, 30.Hz), state, margin);

    [Theory]
    [InlineData(-40, "met", "20 %")]
    [InlineData(-55, "not met", "−10 %")]
    public void Negative_limits_have_their_good_side_too(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), Limits.AtLeast((-50).V), state, margin);

    [Theory]
    [InlineData(60, "met", "6 dB")]
    [InlineData(54, "met", "0 dB")]
    [InlineData(48, "not met", "−6 dB")]
    public void A_gain_has_its_margin_in_decibels(double decibels, string state, string margin) =>
        Judge(Gain.FromDecibels(decibels), Limits.AtLeast(54.dB), state, margin);

    [Fact]
    public void An_attenuation_has_its_margin_in_decibels() => Judge(Gain.FromDecibels(-70), Limits.AtMost(Gain.FromDecibels(-60)), "met", "10 dB");

    [Theory]
    [InlineData(140, "met", "10 K")]
    [InlineData(150, "met", "0 K")]
    [InlineData(161.5, "not met", "−11.5 K")]
    public void A_temperature_has_its_margin_in_kelvin(double celsius, string state, string margin) =>
        Judge(Temperature.FromDegreesCelsius(celsius), Limits.AtMost(150.degC), state, margin);

    [Theory]
    [InlineData(-0.002, "not met", "−0.002 V")]
    [InlineData(0, "met", "0 V")]
    public void A_limit_of_zero_has_its_margin_in_the_unit(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), Limits.AtLeast(0.V), state, margin);

    [Fact]
    public void A_range_from_zero_compares_distances() => Judge(3.V, Limits.Between(0.V, 4.V), "met", "1 V to the upper limit");

    [Fact]
    public void Nobody_can_tell_of_what_is_not_there_stale_or_impossible()
    {
        var record = _folder.Open();
        Assert.Equal("cannot tell: SR is not there yet", record.Require("SR", Limits.AtLeast(40.V_per_us), "slews 20 kHz at full power").State);
        record.Given("P_d", 40.W);
        record.Found("T_j", 90.degC, ["P_d"]);
        Assert.Equal("met", record.Require("T_j", Limits.AtMost(150.degC)).State);
        record.Let("P_root", (Power P_d) => Maths.Sqrt((double)((P_d - Literals.get_W(2)) / Literals.get_W(1))));
        record.Require("P_root", Limits.AtLeast(5.0));
        record.Given("P_d", 1.W);
        var compliance = _folder.Open().Compliance();
        Assert.Equal("cannot tell: T_j is stale", compliance[1].State);
        Assert.StartsWith("cannot tell: P_root cannot be computed", compliance[2].State, StringComparison.Ordinal);
        Assert.All(compliance, r => Assert.Null(r.Met));
        Assert.Equal(("at least 40 V/µs", "slews 20 kHz at full power", "–"), (compliance[0].Limit.ToString(), compliance[0].Says, compliance[0].Reads));
    }

    [Fact]
    public void A_repeated_requirement_replaces_its_like()
    {
        var record = _folder.Open();
        record.Given("P", 100.W);
        record.Require("P", Limits.AtLeast(90.W));
        record.Require("P", Limits.AtMost(200.W));
        record.Require("P", Limits.AtLeast(110.W));
        Assert.Equal(["not met", "met"], _folder.Open().Compliance().Select(r => r.State));
    }

    [Fact]
    public void Limits_that_cannot_be_are_refused()
    {
        Assert.Contains("low must be at most high", Assert.Throws<RefusedValueException>(() => Limits.Between(2.V, 1.V)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Limits.AtMost(double.PositiveInfinity));
        var record = _folder.Open();
        record.Given("P", 100.W);
        Assert.Contains("P is Power, but its limit is ElectricPotential", Assert.Throws<RecordException>(() => record.Require("P", Limits.AtMost(1.V))).Message, StringComparison.Ordinal);
    }

    private void Judge<T>(T value, EntryLimit limit, string state, string margin)
        where T : struct
    {
        var record = _folder.Open();
        record.Given("x", value);
        var requirement = record.Require("x", limit);
        Assert.Equal((state, margin, state == "met"), (requirement.State, requirement.Margin!.ToString(), requirement.Met));
        var kept = Assert.Single(_folder.Open().Compliance());
        Assert.Equal((requirement.State, requirement.Margin), (kept.State, kept.Margin));
    }
}
