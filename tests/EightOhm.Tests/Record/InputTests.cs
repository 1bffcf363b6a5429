using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class InputTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_target_is_returned_and_saved_at_once()
    {
        Assert.Equal(100.W, _folder.Open().Target("P", 100.W, "rated, one channel"));
        var entry = _folder.Open().EntryOf("P");
        Assert.Equal((100.W, EntryRole.Target, EntryState.InForce, "rated, one channel"), ((Power)entry.Value!, entry.Role, entry.State, entry.Note));
    }

    [Fact]
    public void A_set_value_wins_and_is_shown_openly()
    {
        _folder.Open().Target("P", 100.W);
        DesignRecord.Load(_folder.File).Set("P", "120 W");
        var record = _folder.Open();
        Assert.Equal(120.W, record.Target("P", 100.W));
        Assert.Equal((EntryState.Set, "the chapter says 100 W"), State(record));
        Assert.Equal(120.W, record.Target("P", 80.W));
        Assert.Equal((EntryState.Set, "the chapter says 80 W"), State(record));
        record.ClearSet("P");
        Assert.Equal(80.W, record.Get<Power>("P"));
        Assert.Equal((EntryState.InForce, null), State(record));

        static (EntryState, string?) State(DesignRecord record) => (record.EntryOf("P").State, record.EntryOf("P").Reason);
    }

    [Fact]
    public void A_decision_keeps_its_reason_and_what_else_was_considered()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Choose("n", 3, "two would do in the heat, the safe area asks for a third", "two pairs of a larger device");
        record.Choose("n", 3);
        record.Set("n", "4");
        Assert.Equal(new Decision("n", "4", "two would do in the heat, the safe area asks for a third", "two pairs of a larger device", EntryState.Set, "the chapter says 3"), Assert.Single(_folder.Open().Decisions));
    }

    [Fact]
    public void An_assumption_is_listed_with_what_it_carries_until_it_is_decided()
    {
        var record = _folder.Open();
        record.Target("T_max", 125.degC);
        record.Assume("R_cs", 0.5.K_per_W, "common practice, no source");
        record.Assume("T_a", 40.degC);
        record.Derive("T_j", (ThermalResistance R_cs, Temperature T_a) => T_a + R_cs * Literals.get_W(60));
        record.Require("junction", "T_j").AtMost("T_max");
        var (first, second) = (_folder.Open().Assumptions[0], _folder.Open().Assumptions[1]);
        Assert.Equal(("R_cs", "0.5 K/W", "common practice, no source"), (first.Name, first.Value, first.Basis));
        Assert.Equal(["junction"], first.Carries);
        Assert.Equal(("T_a", null), (second.Name, second.Basis));
        record.Set("R_cs", "0.6 K/W");
        record.Choose("R_cs", 0.4.K_per_W, "measured");
        Assert.Equal("T_a", Assert.Single(record.Assumptions).Name);
        Assert.Equal((EntryRole.Choice, 0.6.K_per_W), (record.EntryOf("R_cs").Role, record.Get<ThermalResistance>("R_cs")));
    }

    [Fact]
    public void A_given_comes_back_in_the_SI_unit_whatever_unit_it_was_made_with()
    {
        var record = _folder.Open();
        Assert.Equal(ElectricPotential.FromVolts(1000), record.Target("V", ElectricPotential.FromKilovolts(1)));
        Assert.Equal(record.Get<ElectricPotential>("V"), _folder.Open().Get<ElectricPotential>("V"));
    }

    [Fact]
    public void Nothing_is_written_when_nothing_changed()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        var before = File.GetLastWriteTimeUtc(_folder.File).AddDays(-1);
        File.SetLastWriteTimeUtc(_folder.File, before);
        record.Target("P", 100.W);
        record.Save();
        Assert.Equal(before, File.GetLastWriteTimeUtc(_folder.File));
        record.Target("P", 101.W);
        Assert.NotEqual(before, File.GetLastWriteTimeUtc(_folder.File));
    }

    [Fact]
    public void A_value_without_bound_is_refused_and_nothing_is_written()
    {
        var record = _folder.Open();
        var refusal = Assert.Throws<RefusedValueException>(() => record.Target("x", double.NaN));
        Assert.Contains("x must be a finite Double", refusal.Message, StringComparison.Ordinal);
        Assert.Empty(_folder.Names);
        Assert.Empty(record.Entries);
    }

    [Theory]
    [InlineData("")]
    [InlineData("2P")]
    [InlineData("P rated")]
    [InlineData("P=1")]
    public void A_name_that_is_no_symbol_is_refused(string name) =>
        Assert.Contains("cannot be the name of an entry", Assert.Throws<RecordException>(() => _folder.Open().Target(name, 1.W)).Message, StringComparison.Ordinal);

    [Fact]
    public void An_entry_does_not_turn_into_another_role_or_kind_by_accident()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        Assert.Contains("P is Power in the record, not ElectricPotential", Assert.Throws<RecordException>(() => record.Target("P", 1.V)).Message, StringComparison.Ordinal);
        Assert.Contains("P is a target already and cannot be computed too", Assert.Throws<RecordException>(() => record.Compute("P", 1.W)).Message, StringComparison.Ordinal);
        Assert.Contains("P is a target already and cannot be a part too", Assert.Throws<RecordException>(() => record.Part("P", TestCards.Demo(_folder))).Message, StringComparison.Ordinal);
        record.Remove("P");
        Assert.Equal(1.V, record.Target("P", 1.V));
    }

    [Fact]
    public void An_unknown_name_or_another_type_is_refused_with_what_is_there()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        Assert.Equal("The record has no V. It has P, R_L.", Assert.Throws<RecordException>(() => record.Get<ElectricPotential>("V")).Message);
        Assert.Contains("record.Get<Power>(\"P\")", Assert.Throws<RecordException>(() => record.Get<ElectricPotential>("P")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_folder_in_force_decides_where_a_record_is()
    {
        using (RecordFolder.Use(Path.GetDirectoryName(_folder.File)!))
        {
            var record = DesignRecord.Open("tern.json");
            record.Name = "Tern 100";
            Assert.Equal(_folder.File, record.Path);
        }

        Assert.Equal(Directory.GetCurrentDirectory(), RecordFolder.Current);
        Assert.Equal("Tern 100", _folder.Open().Name);
    }

    [Fact]
    public void Two_notebooks_on_one_record_do_not_write_over_each_other()
    {
        var (one, two) = (_folder.Open(), _folder.Open());
        one.Target("P", 100.W);
        Assert.Contains("changed by another program", Assert.Throws<RecordException>(() => two.Target("R_L", 8.Ohm)).Message, StringComparison.Ordinal);
        Assert.Empty(two.Entries);
        Assert.Equal(100.W, _folder.Open().Get<Power>("P"));
    }

    [Fact]
    public void A_target_that_cannot_be_is_refused_by_name_and_the_file_stays()
    {
        using var folder = new TestFolder();
        var record = folder.Open();
        record.Target("R_L", 8.Ohm);
        var before = folder.Text;
        Assert.Equal("R_L must be 0 Ω or more (was −8 Ω).", Assert.Throws<RefusedValueException>(() => record.Target("R_L", -8.Ohm)).Message);
        Assert.Equal("T_a must be −273.15 °C or more (was −300 °C).", Assert.Throws<RefusedValueException>(() => record.Target("T_a", (-300).degC)).Message);
        Assert.Equal(before, folder.Text);
        Assert.Equal(-3, record.Target("V_os", -3.mV).Millivolts);
    }

    [Fact]
    public void A_runner_finds_the_records_that_cells_have_opened_in_its_folder_and_nowhere_else()
    {
        var folder = Path.GetDirectoryName(_folder.File)!;
        DesignRecord.Open(_folder.File);
        using (RecordFolder.Use(folder))
        {
            Assert.Empty(RecordFolder.Opened);
            var first = DesignRecord.Open(_folder.File);
            var last = DesignRecord.Open(_folder.File);
            DesignRecord.Scratch();
            Assert.Equal([first, last], RecordFolder.Opened);
        }

        Assert.Empty(RecordFolder.Opened);
    }

    [Fact]
    public void A_value_that_has_no_answer_is_told_apart_from_what_is_asked_wrongly()
    {
        var record = DesignRecord.Open(_folder.File);
        record.Target("P", 100.W);
        record.Derive("P_2", (Power P) => 2 * P);
        record.NoAnswer(["P_2"], [], "short by 3.2 V");

        Assert.True(Assert.Throws<RecordException>(() => record.Get<Power>("P_2")).IsWithoutAnswer);
        Assert.False(Assert.Throws<RecordException>(() => record.Get<Power>("P_3")).IsWithoutAnswer);
        Assert.False(Assert.Throws<RecordException>(() => record.Get<ElectricPotential>("P")).IsWithoutAnswer);
    }
}
