using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Tests.Supply;

/// <summary>The numbers of the invented Tern's supply, each beside the usual mistake.</summary>
public class SupplyCaseTests
{
    [Fact]
    public void Without_load_at_high_mains_the_parts_see_more_than_the_nameplate_says()
    {
        var rail = Transformer.NoLoadRail(35.V, 6.percent, 10.percent, 0.6.V);
        Assert.Equal(57.11, rail.Volts, 0.005);
        Assert.Equal(0.907, rail.Volts / 63, 0.0005);
        Assert.Equal(114.2, 2 * rail.Volts, 0.05);
        Assert.Equal(53.85, Transformer.NoLoadRail(35.V, 0.percent, 10.percent, 0.6.V).Volts, 0.005); // nameplate taken for no load: 3 V too little
    }

    [Fact]
    public void A_front_end_filter_and_its_cost()
    {
        Assert.Equal(22.8, RailFilter.Rejection(100.Hz, 22.Ohm, 1000.uF).Decibels, 0.05);
        Assert.Equal(0.35, RailFilter.Drop(15.9.mA, 22.Ohm).Volts, 0.0005);
    }

    [Fact]
    public void The_name_says_where_a_rejection_is_stated()
    {
        Assert.Equal(10e-6, Ripple.AtOutputByOutputReferred(1.V, 100.dB).Volts, 1e-9);
        Assert.Equal(236e-6, Ripple.AtOutputByInputReferred(1.V, 100.dB, 23.6.ratio).Volts, 1e-9);
    }

    [Fact]
    public void A_snubber_for_leakage_and_diodes()
    {
        Assert.Equal(258, Snubber.Resistance(40.uH, 600.pF).Ohms, 0.5);
        Assert.Equal(1.03e6, Snubber.RingFrequency(40.uH, 600.pF).Hertz, 0.005e6);
        Assert.Equal(6e-9, Snubber.UsualCapacitance(600.pF).Farads, 1e-15);
        Assert.True(Snubber.Damping(40.uH, 600.pF, 258.2.Ohm, 6.nF) > 0.5);
        Assert.True(Snubber.Damping(40.uH, 600.pF, 258.2.Ohm, 600.pF) < 0.25); // as much as rings is far too little
    }

    [Fact]
    public void A_bleeder_is_slow()
    {
        Assert.Equal(105, Discharge.TimeTo(49.V, 10.V, 2.2.kOhm, 30.mF).Seconds, 0.5);
        Assert.Equal(36, Discharge.StoredEnergy(30.mF, 49.V).Joules, 0.05);
        Assert.Equal(1.153, Discharge.Bleeder(2.s, ElectricCapacitance.FromFarads(1), 340.V, 60.V).Ohms, 0.0005);
        Assert.Equal(37.6, Discharge.StoredEnergy(470.uF, 400.V).Joules, 0.05);
        Assert.Throws<RefusedValueException>(() => Discharge.TimeTo(49.V, 0.V, 2.2.kOhm, 30.mF));
        Assert.Throws<RefusedValueException>(() => Discharge.TimeTo(10.V, 49.V, 2.2.kOhm, 30.mF));
    }

    [Fact]
    public void One_table_of_everything_that_the_mains_moves()
    {
        var budget = SwingBudget.For(40.V, 5.A).LessEmitterResistors(0.22.Ohm, 3).Less("drive", 4.41.V, "junctions, second stage, filter");
        var table = MainsTable.Within(10.percent)
            .Amplifier(
                x => new Rails(Transformer.NoLoadRail(35.V, 6.percent, x, 0.6.V)),
                x => new Rails((MainsDeviation.Factor(x) * 48.1.V) - 0.9.V),
                budget,
                x => Math.Pow(MainsDeviation.Factor(x), 2) * 106.6.W,
                63.V,
                110.V)
            .Row("bleeder", x => Discharge.PowerDissipation(MainsDeviation.Factor(x) * 49.V, 2.2.kOhm));
        Assert.Equal(9, table.Rows.Count);
        Assert.Equal(129.0, (double)((Power)Row(table, Dissipation).High.Value!).Watts, 0.05);
        Assert.Equal(86.3, (double)((Power)Row(table, Dissipation).Low.Value!).Watts, 0.05);
        Assert.Equal(112.4, (double)((Power)Row(table, "clip power into 8 Ω").Nominal.Value!).Watts, 0.05);
        Assert.Equal(0.907, Row(table, "reservoir capacitors, no load").ShareAtHigh!.Value, 0.0005);
        Assert.False(Row(table, "transistors, rail to rail, no load").Holds);
        Assert.False(table.Holds);
        // Two loads that come to one name are two lines all the same; a line without an answer says what is missing and the others stand.
        var more = table.Row("bleeder", x => 2.W).Row("hopeless", x => x < default(Ratio) ? throw new ShortfallException("The rail", 3.2.V, "it is low", "Raise it.") : 1.W);
        Assert.Equal(["bleeder", "bleeder (2)", "hopeless"], more.Rows.Skip(8).Select(r => r.Name));
        Assert.Equal("none: short by 3.2 V", more.Rows[^1].Low.ToString());
        Assert.Equal("1 W", more.Rows[^1].High.ToString());
        Assert.False(more.Rows[^1].Holds);
        Assert.True(more.Rows[^2].Holds);
        Assert.Throws<RefusedValueException>(() => MainsTable.Within(0.percent));
    }

    [Fact]
    public void All_lines_of_an_amplifier_stand_on_rails_that_are_asked_for_once_at_each_mains()
    {
        List<double> idle = [], full = [];
        MainsTable.Within(10.percent).Amplifier(
            x => Seen(idle, x, 50.V),
            x => Seen(full, x, 45.V),
            SwingBudget.For(35.V, 5.A).LessEmitterResistors(0.22.Ohm, 3),
            _ => 100.W,
            63.V,
            160.V);
        Assert.Equal([-0.1, 0, 0.1], idle);
        Assert.Equal([-0.1, 0, 0.1], full);

        static Rails Seen(List<double> asked, Ratio x, ElectricPotential rail)
        {
            asked.Add(x.DecimalFractions);
            return new(MainsDeviation.Factor(x) * rail);
        }
    }

    private const string Dissipation = "power dissipation, sine of maximum dissipation";

    private static MainsRow Row(MainsTable table, string name) => table.Rows.Single(r => r.Name == name);
}
