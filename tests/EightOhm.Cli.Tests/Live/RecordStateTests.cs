using EightOhm.Cells.Sources;
using EightOhm.Cli.WhatIf;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Cli.Tests.Live;

/// <summary>What a cell found in a record: all of it, and what of it no calculation moves.</summary>
public class RecordStateTests
{
    [Fact]
    public void Inputs_and_what_rules_make_of_them_are_settled_and_what_a_cell_computed_is_not()
    {
        var record = Record(100.W, 20.V);
        var before = new RecordState([record]);
        string Settled(RecordState state, string name) => state.SettledOf([new EntryName("", name)]);
        Assert.NotEqual(Settled(before, "nothing"), Settled(before, "P"));
        Assert.Equal(Settled(before, "nothing"), Settled(before, "V_c"));
        // A rule over what a cell computed waits for the cell.
        Assert.Equal(Settled(before, "nothing"), Settled(before, "V_both"));

        record.Set("P", "120 W");
        var moved = new RecordState([record]);
        Assert.NotEqual(Settled(before, "P"), Settled(moved, "P"));
        Assert.NotEqual(Settled(before, "V_pk"), Settled(moved, "V_pk"));
        Assert.Equal(Settled(before, "R_L"), Settled(moved, "R_L"));
    }

    [Fact]
    public void All_of_it_holds_what_was_computed_too()
    {
        EntryName[] reads = [new("", "P"), new("", "V_c")];
        var one = new RecordState([Record(100.W, 20.V)]).Of(reads)!;
        var other = new RecordState([Record(100.W, 21.V)]).Of(reads)!;
        Assert.Equal(one.Settled, other.Settled);
        Assert.NotEqual(one.All, other.All);
        Assert.Null(new RecordState([Record(100.W, 20.V)]).Of([new("", "nothing")]));
    }

    private static DesignRecord Record(Power power, ElectricPotential computed)
    {
        var record = DesignRecord.Scratch();
        record.Target("P", power, "rated power");
        record.Target("R_L", 8.Ohm, "rated load");
        record.Derive("V_pk", (Power P, ElectricResistance R_L) => Maths.Sqrt(2 * P * R_L));
        record.Compute("V_c", computed);
        record.Derive("V_both", (ElectricPotential V_pk, ElectricPotential V_c) => V_pk + V_c);
        return record;
    }
}
