using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class VerdictTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly DesignRecord _design;

    public VerdictTests()
    {
        _design = _folder.Open();
        _design.Target("P", 100.W);
        _design.Target("P_clip", 111.W);
        _design.Target("T_a", 35.degC);
        _design.Target("m_tol", 10.percent);
        _design.Target("T_jmax", 95.degC);
        _design.Require("clip power above {P}", "P_clip").AtLeast("P");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_clause_says_met_with_the_value_and_what_is_asked() =>
        Assert.Equal("met: 111 W, where at least 100 W is asked", _design.Verdict("P_clip"));

    [Fact]
    public void It_moves_with_the_design()
    {
        _design.Set("P", "120 W");
        Assert.Equal("not met: 111 W is short by 9 W, where at least 120 W is asked", _design.Verdict("clip power above {P}"));
    }

    [Fact]
    public void The_worst_is_told_with_where_it_is()
    {
        Ask();
        Assert.Equal("met: 90 °C at worst (mains +10 %), where at most 95 °C is asked", _design.Verdict("junction"));
        _design.Set("T_jmax", "80 °C");
        Ask();
        Assert.Equal("not met: 90 °C at worst (mains +10 %) is over by 10 K, where at most 80 °C is asked", _design.Verdict("junction"));
    }

    [Fact]
    public void What_was_computed_from_other_inputs_is_not_called_met()
    {
        Ask();
        _design.Set("T_a", "45 °C");
        Assert.Equal("undecided: T_a moved", _design.Verdict("junction"));
    }

    [Fact]
    public void Several_are_counted_the_nearest_named_and_the_missed_told()
    {
        _design.Target("V_out", 28.V);
        _design.Target("V_max", 50.V);
        _design.Require("output", "V_out").AtMost("V_max");
        Assert.Equal("both requirements are met, the nearest to its limit being clip power above 100 W with 11 % to spare", _design.Verdicts());
        _design.Set("P", "120 W");
        Ask();
        Assert.Equal("2 of 3 requirements are met, the nearest to its limit being output with 44 % to spare; not met: clip power above 120 W (short by 9 W)", _design.Verdicts());
        _design.Set("T_jmax", "80 °C");
        Ask();
        Assert.Equal("none of 2 requirements is met; not met: clip power above 120 W (short by 9 W) and junction (over by 10 K, at mains +10 %)", _design.Verdicts("P_clip", "junction"));
        _design.Set("m_tol", "5 %");
        Assert.Equal("the requirement is undecided; undecided: junction (m_tol moved)", _design.Verdicts("junction"));
    }

    [Fact]
    public void What_a_run_did_not_come_to_is_undecided_and_says_why()
    {
        _design.NoAnswer([], [new("rail above its budget", "V_rail")], "short by 3.2 V: the winding cannot carry it");
        Assert.Equal("undecided: short by 3.2 V: the winding cannot carry it", _design.Verdict("rail above its budget"));
        Assert.Equal("undecided: short by 3.2 V: the winding cannot carry it", _design.Verdict("V_rail"));
        Assert.Contains(_design.Compliance(), r => r is { Label: "rail above its budget", State: RequirementState.CannotTell });
        Assert.Equal("1 of 2 requirements is met; undecided: rail above its budget (short by 3.2 V: the winding cannot carry it)", _design.Verdicts("rail above its budget", "P_clip"));
    }

    [Fact]
    public void A_name_that_is_no_requirement_is_refused()
    {
        Assert.Contains("Nothing is required of T_a", Assert.Throws<RecordException>(() => _design.Verdict("T_a")).Message, StringComparison.Ordinal);
        _design.Require("clip power below a fault", "P_clip").AtLeast(0.W);
        Assert.Contains("Several requirements are about P_clip", Assert.Throws<RecordException>(() => _design.Verdict("P_clip")).Message, StringComparison.Ordinal);
    }

    private void Ask() => _design.Require(
        "junction",
        _design.Conditions().Range("x_mains", -_design.Get<Ratio>("m_tol"), _design.Get<Ratio>("m_tol"), "mains"),
        (Ratio x_mains, Temperature T_a) => T_a + TemperatureDelta.FromKelvins(50 * (1 + x_mains.DecimalFractions))).AtMost("T_jmax");
}
