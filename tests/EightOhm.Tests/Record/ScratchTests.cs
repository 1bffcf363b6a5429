using EightOhm.Feedback;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class ScratchTests
{
    [Fact]
    public void A_scratch_record_works_like_any_other_and_writes_no_file()
    {
        var before = Directory.GetFiles(RecordFolder.Current);
        var scratch = DesignRecord.Scratch("a try");
        scratch.Target("P", 100.W);
        scratch.Target("R_L", 8.Ohm);
        scratch.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        scratch.Target("P", 25.W);
        Assert.Equal("14.14 V", scratch.EntryOf("V_rms").Reads);
        Assert.Equal("a try", scratch.Name);
        Assert.Equal(before, Directory.GetFiles(RecordFolder.Current));
    }

    [Fact]
    public void Two_scratch_records_know_nothing_of_each_other()
    {
        var (one, other) = (DesignRecord.Scratch(), DesignRecord.Scratch());
        one.Target("P", 100.W);
        Assert.Empty(other.Entries);
    }

    [Fact]
    public void A_rule_explains_itself_with_the_values_in_force()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        record.Set("P", "25 W");
        Assert.Equal("V_rms = √(P · R_L) = √(25 W · 8 Ω) = 14.14 V", record.Explain("V_rms").ToString());
    }

    [Fact]
    public void A_rule_that_is_a_library_formula_opens_it_with_its_source()
    {
        var record = DesignRecord.Scratch();
        record.Target("f_max", 20.kHz);
        record.Target("V_pk", 40.V);
        record.Derive("SR_need", (Frequency f_max, ElectricPotential V_pk) => SlewRate.Needed(f_max, V_pk));
        var shown = record.Explain("SR_need");
        Assert.Equal("5.027 V/µs", shown.Result);
        Assert.Contains("Franco", shown.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_rule_makes_has_no_working()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        Assert.Contains("P is a target", Assert.Throws<RecordException>(() => record.Explain("P")).Message, StringComparison.Ordinal);
        Assert.Contains("The record has no Q. It has P.", Assert.Throws<RecordException>(() => record.Explain("Q")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Some_entries_and_requirements_are_shown_without_the_others()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Require("power", "P").AtLeast(0.W);
        record.Require("load", "R_L").AtLeast(0.Ohm);
        Assert.Equal(["R_L"], record.EntriesOf("R_L").Select(e => e.Name));
        Assert.Equal(["R_L", "P"], record.EntriesOf("R_L", "P").Select(e => e.Name));
        Assert.Equal(["P"], record.Compliance("P").Select(r => r.Entry));
        Assert.Equal(["R_L"], record.Compliance("load").Select(r => r.Entry));
        Assert.Contains("Nothing is required of V.", Assert.Throws<RecordException>(() => record.Compliance("V")).Message, StringComparison.Ordinal);
        Assert.Throws<RecordException>(() => record.EntriesOf("V"));
    }
}
