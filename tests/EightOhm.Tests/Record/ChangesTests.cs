using System.Linq.Expressions;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class ChangesTests
{
    // Each rule uses the two before it: there are 2.5e12 ways from the first to the last.
    [Fact]
    public void Sixty_levels_of_shared_rules_are_told_once_each()
    {
        var (before, after) = (Levels(), Levels());
        after.Set("x0", "3");
        Assert.Equal((3 * 956722026041.0) + 1548008755920.0, after.Get<double>("x60"));
        var changes = RecordChanges.Compare(before, after);
        Assert.Equal(59, changes.Entries.Count);
        var top = Assert.Single(changes.Requirements);
        Assert.True(top.Broke);
        // The shortest way takes two levels at a time.
        Assert.Equal(["x0", .. Enumerable.Range(1, 30).Select(i => $"x{2 * i}")], Assert.Single(top.Chains));
        Assert.Equal(["x_max", "x0", "x1"], top.Cures.Select(c => c.Name));

        static DesignRecord Levels()
        {
            var record = DesignRecord.Scratch();
            record.Target("x0", 1.0);
            record.Target("x1", 1.0);
            record.Target("x_max", 3e12);
            for (var i = 2; i <= 60; i++)
            {
                var (a, b) = (Expression.Parameter(typeof(double), $"x{i - 2}"), Expression.Parameter(typeof(double), $"x{i - 1}"));
                record.Derive($"x{i}", Expression.Lambda<Func<double, double, double>>(Expression.Add(a, b), a, b));
            }

            record.Require("top", "x60").AtMost("x_max");
            return record;
        }
    }

    [Fact]
    public void What_moved_is_told_with_the_way_to_it_and_what_would_cure_it()
    {
        var (before, after) = (Amplifier(), Amplifier());
        after.Set("P", "130 W");
        var changes = RecordChanges.Compare(before, after);
        Assert.Equal(["P"], changes.Moved.Select(m => m.Name));
        Assert.Equal(("100 W", "130 W"), (changes.Moved[0].Before!.Reads, changes.Moved[0].After!.Reads));
        Assert.Equal(["V_pk", "T_j"], changes.Entries.Select(e => e.Name));
        Assert.Equal(["P", "V_pk"], changes.Entries[0].Chain);
        Assert.Equal(EntryState.Stale, changes.Entries[1].After!.State);
        Assert.Equal(["swing", "junction", "load"], changes.Requirements.Select(r => r.Label.Split(' ')[0]));

        var swing = changes.Requirements[0];
        Assert.True(swing.Broke);
        Assert.Equal(("40 V", "45.61 V", "over by 607 mV"), (swing.Before!.Value, swing.After!.Value, swing.After.Reason));
        Assert.Equal([["P", "V_pk"]], swing.Chains);
        // V_pk = √(2 P R): the margin in per cent of the limit is 100 (1 − V_pk/V_rail), so one per cent of P or of R costs V_pk/(2 V_rail) per cent, one of the rail brings V_pk/V_rail.
        var ratio = Math.Sqrt(2 * 130 * 8) / 45;
        Assert.Equal(["V_rail", "P", "R_L"], swing.Cures.Select(c => c.Name));
        Assert.Equal([ratio, -ratio / 2, -ratio / 2], swing.Cures.Select(c => c.Sensitivity), (a, b) => Math.Abs(a - b) < 1e-5);
        Assert.All(swing.Cures, c => Assert.Equal("% per %", c.Unit));
        Assert.Equal([true, false, false], swing.Cures.Select(c => c.MustGrow));
    }

    [Fact]
    public void What_a_cell_computed_has_a_way_and_no_cure()
    {
        var (before, after) = (Amplifier(), Amplifier());
        after.Set("T_jmax", "80 °C");
        var junction = Assert.Single(RecordChanges.Compare(before, after).Requirements);
        Assert.True(junction.Broke);
        Assert.Equal([["T_jmax"]], junction.Chains);
        Assert.Empty(junction.Cures);
    }

    [Fact]
    public void Nothing_moved_is_nothing_changed_and_what_is_new_or_gone_is_told()
    {
        var (before, after) = (Amplifier(), Amplifier());
        Assert.True(RecordChanges.Compare(before, after).None);
        after.Set("P", "100 W");
        Assert.True(RecordChanges.Compare(before, after).None);
        after.Remove("load of {R_L}");
        after.Target("x", 1.0);
        var changes = RecordChanges.Compare(before, after);
        Assert.Equal(("x", null), (Assert.Single(changes.Moved).Name, changes.Moved[0].Before));
        Assert.Null(Assert.Single(changes.Requirements).After);
    }

    [Fact]
    public void An_input_at_zero_is_moved_by_its_unit_and_at_the_end_of_what_can_be_to_one_side()
    {
        var record = DesignRecord.Scratch();
        record.Target("R", 0.Ohm);
        record.Target("I", 2.A);
        record.Target("V_min", 10.V);
        record.Derive("V", (ElectricResistance R, ElectricCurrent I) => I * R);
        record.Require("drop", "V").AtLeast("V_min");
        var before = DesignRecord.Scratch();
        var cures = RecordChanges.Compare(before, record).Requirements[0].Cures;
        var cure = Assert.Single(cures, c => c.Name == "R");
        Assert.Equal(("% per Ω", 20), (cure.Unit, Math.Round(cure.Sensitivity, 6)));
    }

    private static DesignRecord Amplifier()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Choose("V_rail", 45.V);
        record.Target("T_jmax", 125.degC);
        record.Derive("V_pk", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));
        record.Compute("T_j", (Power P) => 90.degC);
        record.Require("swing into {R_L}", "V_pk").AtMost("V_rail");
        record.Require("junction", "T_j").AtMost("T_jmax");
        record.Require("load of {R_L}", "R_L").AtMost((Power P, ElectricPotential V_rail) => V_rail * V_rail / P);
        return record;
    }
}
