using EightOhm.Display.Tables;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Supply;

namespace EightOhm.Display.Tests.Tables;

/// <summary>Budget, mains, switch-on and faults as a person reads them.</summary>
public class SupplyTablesTests
{
    private static readonly SwingBudget Budget = SwingBudget.For(40.V, 5.A).LessEmitterResistors(0.22.Ohm, 3).Less("second stage", 2.V, 1.5.V, "cascoded above");

    [Fact]
    public void A_budget_shows_each_loss_its_why_and_the_rail()
    {
        var table = SupplyTables.Budget(Budget);
        Assert.Equal(["second stage", "2 V", "1.5 V", "the drive", "cascoded above"], table.Rows[2]);
        Assert.Equal(["rail needed at its minimum", "42.37 V", "41.87 V", "", "the needier way decides"], table.Rows[3]);
    }

    [Fact]
    public void A_rail_that_falls_short_is_said_in_words()
    {
        var table = SupplyTables.Verdict(Budget.Against(new Rails(42.V)));
        Assert.Contains("falls short", table.Rows[0][3], StringComparison.Ordinal);
        Assert.DoesNotContain("falls short", table.Rows[1][3], StringComparison.Ordinal);
        Assert.Contains("short by 366.7 mV", table.Caption, StringComparison.Ordinal);
        Assert.Contains("the positive peak clips first", table.Caption, StringComparison.Ordinal);
        Assert.Contains("most to gain: second stage", table.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void The_mains_table_says_what_is_exceeded()
    {
        var table = SupplyTables.Mains(MainsTable.Within(10.percent).Row("rail", x => MainsDeviation.Factor(x) * 50.V).Row("capacitors", 50.V, x => MainsDeviation.Factor(x) * 50.V));
        Assert.Equal("mains −10 %", table.Headings[1]);
        Assert.Equal(["rail", "45 V", "50 V", "55 V", "", ""], table.Rows[0]);
        Assert.Equal(["capacitors", "45 V", "50 V", "55 V", "50 V", "110 %, exceeded"], table.Rows[1]);
    }

    [Fact]
    public void Switch_on_shows_both_moments_and_which_governs()
    {
        var on = new SwitchOn(230.V, 50.Hz, 37.1.V, 30.mF, 2.25.Ohm, 85.mOhm, 0.9.V, InrushLimiter.Resistor(27.Ohm), 1.s);
        var table = SupplyTables.Inrush(InrushPeaks.Of(on));
        Assert.Equal(["at zero: saturated core, a bound", "144.6 A", "11.12 A"], table.Rows[1]);
        Assert.Contains("governed by the core", table.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_without_an_answer_stand_in_the_table()
    {
        var table = ProtectionTables.Faults(FaultTable.Empty.When("dc at the output", "detector opens the relay", 22.ms, "mains off", "and the relay's 10 ms"));
        Assert.Equal(["dc at the output", "detector opens the relay", "22 ms (and the relay's 10 ms)", "mains off"], table.Rows[0]);
        Assert.Equal(FaultTable.Expected.Count, table.Rows.Count);
        Assert.Equal("nobody answers for it yet", table.Rows[^1][1]);
    }

    [Fact]
    public void A_relay_shows_both_ratings_and_the_verdict()
    {
        var table = ProtectionTables.Relay(RelayVerdict.Judge(46.V, 5.8.Ohm, 30.V, 10.A));
        Assert.Equal(["voltage", "46 V", "30 V"], table.Rows[0]);
        Assert.Contains("may not break", table.Caption, StringComparison.Ordinal);
    }
}
