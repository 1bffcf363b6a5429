using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

public sealed class GivenTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_given_is_returned_and_saved_at_once()
    {
        Assert.Equal(100.W, _folder.Open().Given("P", 100.W, "rated, one channel"));
        var entry = _folder.Open().EntryOf("P");
        Assert.Equal((100.W, "given", "rated, one channel"), ((Power)entry.Value!, entry.State, entry.Note));
    }

    [Fact]
    public void A_set_value_wins_and_is_shown_openly()
    {
        _folder.Open().Given("P", 100.W);
        DesignRecord.Load(_folder.File).Set("P", "120 W");
        var record = _folder.Open();
        Assert.Equal(120.W, record.Given("P", 100.W));
        Assert.Equal("120 W, set; the chapter says 100 W", record.EntryOf("P").State);
        Assert.Equal(120.W, record.Given("P", 80.W));
        Assert.Equal("120 W, set; the chapter says 80 W", record.EntryOf("P").State);
        record.ClearSet("P");
        Assert.Equal(80.W, record.Get<Power>("P"));
        Assert.Equal("given", record.EntryOf("P").State);
    }

    [Fact]
    public void A_given_comes_back_in_the_SI_unit_whatever_unit_it_was_made_with()
    {
        var record = _folder.Open();
        Assert.Equal(ElectricPotential.FromVolts(1000), record.Given("V", ElectricPotential.FromKilovolts(1)));
        Assert.Equal(record.Get<ElectricPotential>("V"), _folder.Open().Get<ElectricPotential>("V"));
    }

    [Fact]
    public void Nothing_is_written_when_nothing_changed()
    {
        var record = _folder.Open();
        record.Given("P", 100.W);
        var before = File.GetLastWriteTimeUtc(_folder.File).AddDays(-1);
        File.SetLastWriteTimeUtc(_folder.File, before);
        record.Given("P", 100.W);
        record.Save();
        Assert.Equal(before, File.GetLastWriteTimeUtc(_folder.File));
        record.Given("P", 101.W);
        Assert.NotEqual(before, File.GetLastWriteTimeUtc(_folder.File));
    }

    [Fact]
    public void A_value_without_bound_is_refused_and_nothing_is_written()
    {
        var record = _folder.Open();
        var refusal = Assert.Throws<RefusedValueException>(() => record.Given("x", double.NaN));
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
        Assert.Contains("cannot be the name of an entry", Assert.Throws<RecordException>(() => _folder.Open().Given(name, 1.W)).Message, StringComparison.Ordinal);

    [Fact]
    public void An_entry_does_not_turn_into_another_role_or_kind_by_accident()
    {
        var record = _folder.Open();
        record.Given("P", 100.W);
        Assert.Contains("P is Power in the record, not ElectricPotential", Assert.Throws<RecordException>(() => record.Given("P", 1.V)).Message, StringComparison.Ordinal);
        Assert.Contains("P is a Given already", Assert.Throws<RecordException>(() => record.Found("P", 1.W, [])).Message, StringComparison.Ordinal);
        record.Remove("P");
        Assert.Equal(1.V, record.Given("P", 1.V));
    }

    [Fact]
    public void An_unknown_name_or_another_type_is_refused_with_what_is_there()
    {
        var record = _folder.Open();
        record.Given("P", 100.W);
        record.Given("R_L", 8.Ohm);
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
        one.Given("P", 100.W);
        Assert.Contains("changed by another program", Assert.Throws<RecordException>(() => two.Given("R_L", 8.Ohm)).Message, StringComparison.Ordinal);
        Assert.Empty(two.Entries);
        Assert.Equal(100.W, _folder.Open().Get<Power>("P"));
    }

    [Fact]
    public void A_target_that_cannot_be_is_refused_by_name_and_the_file_stays()
    {
        using var folder = new TestFolder();
        var record = folder.Open();
        record.Given("R_L", 8.Ohm);
        var before = folder.Text;
        Assert.Equal("R_L must be 0 Ω or more (was −8 Ω).", Assert.Throws<RefusedValueException>(() => record.Given("R_L", -8.Ohm)).Message);
        Assert.Equal("T_a must be −273.15 °C or more (was −300 °C).", Assert.Throws<RefusedValueException>(() => record.Given("T_a", (-300).degC)).Message);
        Assert.Equal(before, folder.Text);
        Assert.Equal(-3, record.Given("V_os", -3.mV).Millivolts);
    }
}
