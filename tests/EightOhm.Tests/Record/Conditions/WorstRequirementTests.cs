using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public class WorstRequirementTests
{
    private sealed class Told(params string[] names) : ICellSources
    {
        public IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line) => names;
    }

    private static readonly Func<Ratio, ElectricResistance, Temperature, Temperature> Junction =
        (x_mains, Z_L, T_a) => T_a + TemperatureDelta.FromKelvins(200 / Z_L.Ohms * Math.Pow(1 + x_mains.DecimalFractions, 2));

    private static DesignRecord Record(TestFolder folder)
    {
        var design = folder.Open();
        design.Target("R_4", 4.Ohm);
        design.Target("R_L", 8.Ohm);
        design.Target("T_a", 35.degC);
        design.Target("m_tol", 10.percent);
        design.Target("T_jmax", 125.degC);
        return design;
    }

    private static Conditions Use(DesignRecord design) => design.Conditions()
        .Range("x_mains", -design.Get<Ratio>("m_tol"), design.Get<Ratio>("m_tol"), "mains").Cases("Z_L", design.Get<ElectricResistance>("R_L"), design.Get<ElectricResistance>("R_4"));

    private static Requirement Ask(DesignRecord design) =>
        design.Require("junction", Use(design), (Ratio x_mains, ElectricResistance Z_L, Temperature T_a) => Junction(x_mains, Z_L, T_a)).AtMost("T_jmax");

    [Fact]
    public void The_worst_is_judged_and_the_sheet_says_where()
    {
        using var folder = new TestFolder();
        var junction = Ask(Record(folder));
        Assert.Equal(("95.5 °C", "mains +10 %, 4 Ω", "at most 125 °C (T_jmax)", RequirementState.Met), (junction.Value, junction.Where, junction.Limit, junction.State));
        Assert.Equal(29.5, junction.Margin!.Amount, 1e-9);
        // At nominal mains and 8 Ω it would read 60 °C.
        Assert.Equal(["mains +10 → −10 %: 75.5 °C", "4 → 8 Ω: 65.25 °C"], junction.Worst!.Relief.Select(r => r.ToString()));
        Assert.Equal(WorstMethod.EveryCombination, junction.Worst.Method);
    }

    [Fact]
    public void A_condition_that_is_no_entry_is_nothing_that_it_hangs_on()
    {
        using var folder = new TestFolder();
        CellSources.Current = new Told("R_L", "k_C");
        try
        {
            var design = Record(folder);
            design.Require("load", design.Conditions().Spread("k_C", 20.percent), (double k_C, ElectricResistance R_L) => k_C * R_L).AtLeast("R_4");
            // Had it not been known what it hangs on, it would hang on this too.
            design.Set("T_a", "45 °C");
            Assert.Equal(RequirementState.Met, design.Compliance("load")[0].State);
            design.Set("R_L", "6 Ω");
            Assert.Equal(RequirementState.Stale, design.Compliance("load")[0].State);
        }
        finally
        {
            CellSources.Current = null;
        }
    }

    [Fact]
    public void It_comes_back_from_its_file_as_it_was()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        Ask(design);
        design.Require("headroom", design.Conditions().Cases("duty", Duty.Rest, Duty.SineOfMaximumDissipation), (Duty duty) => (double)(int)duty).Between(RequirementLimit.Of(0.0), RequirementLimit.Of((ElectricResistance R_L, ElectricResistance R_4) => R_L / R_4));
        var text = folder.Text;
        var again = folder.Open();
        foreach (var (was, now) in design.Compliance().Zip(again.Compliance()))
        {
            Assert.Equal((was.Value, was.Where, was.Limit, was.State, was.Reason, was.Margin), (now.Value, now.Where, now.Limit, now.State, now.Reason, now.Margin));
            Assert.Equal((was.Worst!.How, was.Worst.Over, was.Worst.Value, was.Worst.ToString()), (now.Worst!.How, now.Worst.Over, now.Worst.Value, now.Worst.ToString()));
            Assert.Equal(was.Worst.Relief.Select(r => r.ToString()), now.Worst.Relief.Select(r => r.ToString()));
        }

        Assert.True(design.Compliance()[0].Worst!.SaysTheSame(again.Compliance()[0].Worst!));
        Assert.Equal("sine of maximum dissipation", again.Compliance()[1].Where);
        again.Save();
        Assert.Equal(text, folder.Text);
        // The same cell again says the same: the file stays.
        Ask(again);
        Assert.Equal(text, folder.Text);
    }

    [Fact]
    public void Whatever_it_came_from_moves_makes_it_stale()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        Ask(design);
        foreach (var (name, value) in new[] { ("T_a", "40 °C"), ("m_tol", "15 %"), ("R_4", "3 Ω") })
        {
            design.Set(name, value);
            var stale = Assert.Single(design.Compliance());
            Assert.Equal((RequirementState.Stale, $"{name} moved"), (stale.State, stale.Reason));
            Assert.NotEqual(RequirementState.Stale, Ask(design).State);
        }

        var now = Ask(design);
        Assert.Equal(("128.2 °C", "mains +15 %, 3 Ω", RequirementState.NotMet), (now.Value, now.Where, now.State));
    }

    [Fact]
    public void Sources_that_the_cells_tell_are_those_it_hangs_on_and_the_parameters_besides()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        design.Target("P", 100.W);
        CellSources.Current = new Told("m_tol", "R_L", "R_4");
        try
        {
            Ask(design);
        }
        finally
        {
            CellSources.Current = null;
        }

        design.Set("P", "120 W");
        Assert.Equal(RequirementState.Met, design.Compliance()[0].State);
        design.Set("T_jmax", "90 °C");
        Assert.Equal((RequirementState.NotMet, "over by 5.5 K"), (design.Compliance()[0].State, design.Compliance()[0].Reason));
        design.Set("T_a", "36 °C"); // named by the lambda alone
        Assert.Equal((RequirementState.Stale, "T_a moved"), (design.Compliance()[0].State, design.Compliance()[0].Reason));
    }

    [Fact]
    public void Between_two_limits_the_side_with_less_margin_is_told()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        design.Target("V_lo", 40.V);
        design.Target("V_hi", 56.V);
        Requirement Rail() => design.Require("rail", Use(design), (Ratio x_mains) => 50.V * (1 + x_mains.DecimalFractions)).Between("V_lo", "V_hi");
        Assert.Equal(("55 V", "mains +10 %", true), (Rail().Value, Rail().Where, Rail().Met));
        design.Set("V_lo", "46 V");
        Assert.Equal(("45 V", "mains −10 %", false, "short by 1 V"), (Rail().Value, Rail().Where, Rail().Met, Rail().Reason));
        var least = design.Require("least rail", Use(design), (Ratio x_mains) => 50.V * (1 + x_mains.DecimalFractions)).AtLeast("V_lo");
        Assert.Equal(("45 V", "mains −10 %"), (least.Value, least.Where));
    }

    [Fact]
    public void A_point_without_a_value_makes_it_untold_and_stays_so_in_the_file()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        var untold = design.Require("rail", Use(design), (Ratio x_mains, ElectricResistance Z_L) => x_mains.Percent < 0 && Z_L < 5.Ohm
            ? throw new ShortfallException("The rail", 3.V, "it sags", "Take a larger transformer.") : Z_L).AtMost("R_L");
        Assert.Equal((RequirementState.CannotTell, "at mains −10 %, 4 Ω: The rail is short by 3 V: it sags. Take a larger transformer.", "–"), (untold.State, untold.Reason, untold.Value));
        Assert.Equal((untold.State, untold.Reason), (folder.Open().Compliance()[0].State, folder.Open().Compliance()[0].Reason));
        design.Set("m_tol", "5 %");
        Assert.Equal(RequirementState.Stale, design.Compliance()[0].State);
    }

    [Fact]
    public void An_entry_without_an_answer_leaves_none_and_asks_nothing()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        design.Compute("T_box", 50.degC);
        design.NoAnswer(["T_box"], [], "the sink is too small.");
        var looks = 0;
        var untold = design.Require("box", Use(design), (Ratio x_mains, Temperature T_box) =>
        {
            looks++;
            return T_box;
        }).AtMost("T_jmax");
        Assert.Equal((0, RequirementState.CannotTell), (looks, untold.State));
        Assert.Contains("T_box has no answer: the sink is too small.", untold.Reason, StringComparison.Ordinal);
        design.Compute("T_box", 51.degC);
        Assert.Equal(RequirementState.Stale, design.Compliance()[0].State);
    }

    [Fact]
    public void What_the_lambda_asks_for_must_be_there()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        var fault = Assert.Throws<RecordException>(() => design.Require("junction", Use(design), (Angle phi) => phi));
        Assert.Equal("The lambda asks for phi, which is neither a condition nor an entry: there are the conditions x_mains, Z_L, and the entries R_4, R_L, T_a, m_tol, T_jmax. Add it to the conditions, or name the parameter after one of these.", fault.Message);
        Assert.Contains("T_a is Temperature, but the lambda takes Double", Assert.Throws<RecordException>(() => design.Require("t", Use(design), (double T_a) => T_a)).Message, StringComparison.Ordinal);
        Assert.Contains("Give the limit in the value's own kind", Assert.Throws<RecordException>(() => design.Require("t", Use(design), (Temperature T_a) => T_a).AtMost("R_L")).Message, StringComparison.Ordinal);
        Assert.Empty(design.Compliance());
    }

    [Fact]
    public void A_spread_of_an_entry_gives_its_value_times_the_factor()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        var over = design.Conditions().Spread("R_4", 5.percent);
        Assert.Equal("4.2 Ω at R_4 +5 %", over.Highest((ElectricResistance R_4) => R_4).ToString());
        Assert.Equal("1.05 at R_4 +5 %", over.Highest((double R_4) => R_4).ToString());
        Assert.Contains("or ElectricResistance to have the entry's value", Assert.Throws<RecordException>(() => over.Highest((Angle R_4) => R_4)).Message, StringComparison.Ordinal);
        Assert.Contains("cannot be spread by a factor", Assert.Throws<RecordException>(() => design.Conditions().Spread("T_a", 5.percent).Highest((Temperature T_a) => T_a)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void As_a_result_it_is_an_entry_that_rules_use_and_that_says_where()
    {
        using var folder = new TestFolder();
        var design = Record(folder);
        var T_j = design.Compute("T_j", Use(design).Highest((Ratio x_mains, ElectricResistance Z_L, Temperature T_a) => Junction(x_mains, Z_L, T_a)));
        Assert.Equal(95.5, T_j.DegreesCelsius, 1e-9);
        design.Derive("dT", (Temperature T_jmax, Temperature T_j) => T_jmax - T_j);
        Assert.Equal(29.5, design.Get<TemperatureDelta>("dT").Kelvins, 1e-9);
        var again = folder.Open();
        var entry = again.Entries.Single(e => e.Name == "T_j");
        Assert.Equal(("mains +10 %, 4 Ω", EntryState.Current), (entry.Worst!.At, entry.State));
        var text = folder.Text;
        again.Save();
        Assert.Equal(text, folder.Text);
        again.Set("T_a", "40 °C");
        Assert.Equal(EntryState.Stale, again.Entries.Single(e => e.Name == "T_j").State);
        // A plain value afterwards is found nowhere.
        again.Compute("T_j", 90.degC);
        Assert.Null(again.Entries.Single(e => e.Name == "T_j").Worst);
        var fault = Assert.Throws<RecordException>(() => again.Compute("T_j", Use(again).Highest((Ratio x_mains) => Temperature.FromDegreesCelsius(1 / (x_mains.Percent + 10)))));
        Assert.StartsWith("T_j: nobody can tell the worst at mains −10 %: ", fault.Message, StringComparison.Ordinal);
        Assert.Equal(EntryState.NoAnswer, again.Entries.Single(e => e.Name == "T_j").State);
        Assert.StartsWith("at mains −10 %: ", again.Entries.Single(e => e.Name == "T_j").Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"every combination\"", "\"guess\"", "the method \"guess\" is not known")]
    [InlineData("\"evaluations\": ", "\"evaluations\": -", "a whole number from 0")]
    [InlineData("\"highest\": {", "\"most\": {", "most")]
    public void A_hand_in_the_file_is_refused_by_its_line(string old, string with, string says)
    {
        using var folder = new TestFolder();
        Ask(Record(folder));
        folder.Edit(old, with);
        Assert.Contains(says, Assert.Throws<RecordFileException>(folder.Open).Message, StringComparison.Ordinal);
    }
}
