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
        Judge(Power.FromWatts(watts), d => d.AtLeast("lim"), 100.W, state, margin);

    [Theory]
    [InlineData(0.3, "met", "0 %")]
    [InlineData(0.15, "met", "50 %")]
    [InlineData(0.36, "not met", "−20 %")]
    public void At_most_has_its_margin_in_per_cent_of_the_limit(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), d => d.AtMost("lim"), 0.3.V, state, margin);

    [Fact]
    public void A_sum_that_rounds_past_the_limit_is_on_it() => Judge(0.1 + 0.2, d => d.AtMost("lim"), 0.3, "met", "0 %");

    [Fact]
    public void The_next_figure_past_the_limit_is_not() => Judge(0.3 * (1 + 1e-9), d => d.AtMost("lim"), 0.3, "not met", "−1×10⁻⁷ %");

    [Theory]
    [InlineData(20, "met", "0 % to the lower limit")]
    [InlineData(25, "met", "16.7 % to the upper limit")]
    [InlineData(33, "not met", "−10 % to the upper limit")]
    [InlineData(18, "not met", "−10 % to the lower limit")]
    public void Between_has_its_margin_to_the_nearer_end(double hertz, string state, string margin) =>
        Judge(Frequency.FromHertz(hertz), d => d.Between("low", "lim"), 30.Hz, state, margin, 20.Hz);

    [Theory]
    [InlineData(-40, "met", "20 %")]
    [InlineData(-55, "not met", "−10 %")]
    public void Negative_limits_have_their_good_side_too(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), d => d.AtLeast("lim"), (-50).V, state, margin);

    [Theory]
    [InlineData(60, "met", "6 dB")]
    [InlineData(54, "met", "0 dB")]
    [InlineData(48, "not met", "−6 dB")]
    public void A_gain_has_its_margin_in_decibels(double decibels, string state, string margin) =>
        Judge(Gain.FromDecibels(decibels), d => d.AtLeast("lim"), 54.dB, state, margin);

    [Fact]
    public void An_attenuation_has_its_margin_in_decibels() => Judge(Gain.FromDecibels(-70), d => d.AtMost("lim"), Gain.FromDecibels(-60), "met", "10 dB");

    [Theory]
    [InlineData(140, "met", "10 K")]
    [InlineData(150, "met", "0 K")]
    [InlineData(161.5, "not met", "−11.5 K")]
    public void A_temperature_has_its_margin_in_kelvin(double celsius, string state, string margin) =>
        Judge(Temperature.FromDegreesCelsius(celsius), d => d.AtMost("lim"), 150.degC, state, margin);

    [Theory]
    [InlineData(-0.002, "not met", "−0.002 V")]
    [InlineData(0, "met", "0 V")]
    public void A_limit_of_zero_has_its_margin_in_the_unit(double volts, string state, string margin) =>
        Judge(ElectricPotential.FromVolts(volts), d => d.AtLeast(0.V), 0.V, state, margin);

    [Fact]
    public void A_range_from_zero_compares_distances() => Judge(3.V, d => d.Between(RequirementLimit.Of(0.V), "lim"), 4.V, "met", "1 V to the upper limit");

    [Fact]
    public void Nobody_can_tell_of_what_is_not_there_stale_or_impossible()
    {
        var record = _folder.Open();
        record.Target("SR_min", 40.V_per_us);
        record.Target("T_max", 150.degC);
        var first = record.Require("slews 20 kHz at full power", "SR").AtLeast("SR_min");
        Assert.Equal((RequirementState.CannotTell, "SR is not on the record; the cell that writes it has not run"), (first.State, first.Reason));
        record.Target("P_d", 40.W);
        record.Compute("T_j", (Power P_d) => 90.degC);
        Assert.Equal(RequirementState.Met, record.Require("junction", "T_j").AtMost("T_max").State);
        record.Derive("P_root", (Power P_d) => Maths.Sqrt((double)((P_d - Literals.get_W(2)) / Literals.get_W(1))));
        record.Require("root", "P_root").AtLeast(1.0);
        record.Target("P_d", 1.W);
        var compliance = _folder.Open().Compliance();
        Assert.Equal((RequirementState.Stale, "T_j is stale: P_d moved", "90 °C"), (compliance[1].State, compliance[1].Reason, compliance[1].Value));
        Assert.Equal(RequirementState.CannotTell, compliance[2].State);
        Assert.StartsWith("P_root has no answer: The value under the root", compliance[2].Reason, StringComparison.Ordinal);
        Assert.All(compliance, r => Assert.Null(r.Met));
        Assert.All(compliance, r => Assert.Null(r.Margin));
        Assert.Equal(("at least 40 V/µs (SR_min)", "slews 20 kHz at full power", "–"), (compliance[0].Limit, compliance[0].Label, compliance[0].Value));
    }

    [Fact]
    public void A_label_names_what_has_no_value_yet()
    {
        var record = _folder.Open();
        record.Target("f_max", 20.kHz);
        record.Require("charge limit, {k_Q} times {f_max}", "f_Q").AtLeast((double k_Q, Frequency f_max) => k_Q * f_max);
        Assert.Equal("charge limit, k_Q times 20 kHz", record.Compliance()[0].Label);
        record.Choose("k_Q", 3.0);
        Assert.Equal("charge limit, 3 times 20 kHz", record.Compliance()[0].Label);
    }

    [Fact]
    public void A_limit_is_an_entry_so_that_moving_it_moves_the_sheet()
    {
        var record = _folder.Open();
        record.Target("V_in", 1.2.V);
        record.Target("V_sens", 1.19.V);
        record.Target("f_max", 20.kHz);
        record.Derive("SR_need", (Frequency f_max) => EightOhm.Feedback.SlewRate.Needed(f_max, Literals.get_V(40)));
        record.Choose("SR", 12.V_per_us);
        record.Require("sensitivity {V_in}, ±1 %", "V_sens").Between((ElectricPotential V_in) => V_in * 0.99, (ElectricPotential V_in) => V_in * 1.01);
        record.Require("slews {f_max}", "SR").AtLeast((ElectricPotentialChangeRate SR_need) => SR_need * 2);
        Assert.All(record.Compliance(), r => Assert.Equal(RequirementState.Met, r.State));
        Assert.Equal(("sensitivity 1.2 V, ±1 %", "from 1.188 V (V_in · 0.99) to 1.212 V (V_in · 1.01)"), (record.Compliance()[0].Label, record.Compliance()[0].Limit));
        record.Set("V_in", "0.775 V");
        record.Set("f_max", "40 kHz");
        var sheet = _folder.Open().Compliance();
        Assert.All(sheet, r => Assert.Equal(RequirementState.NotMet, r.State));
        Assert.Equal(("sensitivity 775 mV, ±1 %", "over by 407.25 mV"), (sheet[0].Label, sheet[0].Reason));
        Assert.Equal(("slews 40 kHz", "short by 8.106 V/µs", "SR_need"), (sheet[1].Label, sheet[1].Reason, Assert.Single(sheet[1].Limits)));
    }

    [Fact]
    public void A_limit_that_is_stale_or_missing_makes_no_verdict()
    {
        var record = _folder.Open();
        record.Target("a", 1.0);
        record.Compute("most", (double a) => 5.0);
        record.Choose("x", 2.0);
        record.Require("by name", "x").AtMost("most");
        record.Require("by rule", "x").AtMost((double most) => most * 2);
        Assert.All(record.Compliance(), r => Assert.Equal(RequirementState.Met, r.State));
        record.Set("a", "2");
        Assert.All(_folder.Open().Compliance(), r => Assert.Equal((RequirementState.Stale, "most is stale: a moved"), (r.State, r.Reason)));
        record.Remove("most");
        Assert.All(_folder.Open().Compliance(), r => Assert.Equal((RequirementState.CannotTell, "most is not on the record; the cell that writes it has not run"), (r.State, r.Reason)));
    }

    [Fact]
    public void Several_may_stand_on_one_entry_and_a_repeated_label_replaces()
    {
        var record = _folder.Open();
        record.Choose("P", 100.W);
        record.Target("P_90", 90.W);
        record.Target("P_110", 110.W);
        record.Target("P_200", 200.W);
        record.Require("rated", "P").AtLeast("P_90");
        record.Require("fuse", "P").AtMost("P_200");
        record.Require("headroom", "P").AtLeast("P_90");
        record.Require("rated", "P").AtLeast("P_110");
        Assert.Equal([("rated", RequirementState.NotMet), ("fuse", RequirementState.Met), ("headroom", RequirementState.Met)], _folder.Open().Compliance().Select(r => (r.Label, r.State)));
        record.Remove("fuse");
        Assert.Equal(["rated", "headroom"], _folder.Open().Compliance("P").Select(r => r.Label));
    }

    [Fact]
    public void Limits_that_cannot_be_are_refused()
    {
        Assert.Contains("A limit of 30 V/µs is somebody's choice", Assert.Throws<RefusedValueException>(() => RequirementLimit.Of(30.V_per_us)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => RequirementLimit.Of(double.PositiveInfinity));
        Assert.Throws<RefusedValueException>(() => RequirementLimit.Of(1.V));
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("V_max", 1.V);
        Assert.Contains("the value is Power, but its limit, V_max, is ElectricPotential", Assert.Throws<RecordException>(() => record.Require("p", "P").AtMost("V_max")).Message, StringComparison.Ordinal);
        Assert.Contains("the value is Power, but its limit is ElectricPotential", Assert.Throws<RecordException>(() => record.Require("p", "P").AtMost(0.V)).Message, StringComparison.Ordinal);
        var factor = 2.0;
        Assert.Contains("factor is a variable of the notebook", Assert.Throws<RecordException>(() => record.Require("p", "P").AtMost((Power P) => P * factor)).Message, StringComparison.Ordinal);
        Assert.Contains("takes P for ElectricPotential", Assert.Throws<RecordException>(() => record.Require("p", "P").AtMost((ElectricPotential P) => P)).Message, StringComparison.Ordinal);
        record.Choose("low", 5.W);
        record.Choose("high", 1.W);
        Assert.Equal("the lower limit, 5 W, is above the upper one, 1 W", record.Require("p", "P").Between("low", "high").Reason);
        Assert.Single(record.Compliance());
    }

    [Fact]
    public void A_value_that_changed_its_kind_cannot_be_told()
    {
        var record = _folder.Open();
        record.Target("x", 1.V);
        record.Target("x_max", 2.V);
        record.Require("x", "x").AtMost("x_max");
        record.Remove("x_max");
        record.Target("x_max", 2.A);
        Assert.Equal("the value is ElectricPotential, its limit ElectricCurrent", Assert.Single(_folder.Open().Compliance()).Reason);
    }

    [Fact]
    public void The_worst_over_conditions_is_stale_when_anything_it_came_from_moved()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("T_max", 125.degC);
        var worst = new WorstValue
        {
            Kind = QuantityKinds.Of(typeof(Temperature)),
            Highest = new WorstCase
            {
                Value = 113.degC,
                Where = [new("Z_L", 4.Ohm, "4 Ω"), new("phi", 45.deg, "∠45°")],
                At = "4 Ω ∠45°",
                Over = "8 Ω or 4 Ω, ∠0° to ∠45°",
                Evaluations = 12,
                Seed = 1,
                Relief = [new(new("phi", 0.deg, "∠0°"), "∠45° → ∠0°", 98.degC)],
            },
            Marks = [new("P", "100")],
        };
        var kept = record.Ask(new("junction", null, worst, new(null, new() { Entry = "T_max" })));
        Assert.Equal(("113 °C", "4 Ω ∠45°", RequirementState.Met, "12 K"), (kept.Value, kept.Where, kept.State, kept.Margin!.ToString()));
        record.Set("T_max", "110 °C");
        Assert.Equal(RequirementState.NotMet, Assert.Single(_folder.Open().Compliance()).State);
        record.Set("P", "90 W");
        var text = _folder.Text;
        Assert.Equal((RequirementState.Stale, "P moved"), (_folder.Open().Compliance()[0].State, _folder.Open().Compliance()[0].Reason));
        var again = _folder.Open();
        again.Target("q", 1.0);
        again.Remove("q");
        Assert.Equal(text, _folder.Text);
    }

    private void Judge<T>(T value, Func<RequirementDraft, Requirement> ask, T limit, string state, string margin, T? low = null)
        where T : struct
    {
        var record = _folder.Open();
        using (KnownSources.Are())
        {
            record.Compute("x", value);
            record.Compute("lim", limit);
            record.Compute("low", low ?? limit);
        }

        var expected = state == "met" ? RequirementState.Met : RequirementState.NotMet;
        var requirement = ask(record.Require("it", "x"));
        Assert.Equal((expected, margin, state == "met"), (requirement.State, requirement.Margin!.ToString(), requirement.Met));
        var kept = Assert.Single(_folder.Open().Compliance());
        Assert.Equal((requirement.State, requirement.Margin, requirement.Reason), (kept.State, kept.Margin, kept.Reason));
    }
}
