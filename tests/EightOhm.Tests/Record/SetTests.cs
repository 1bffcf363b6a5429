using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class SetTests : IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly DesignRecord _record;

    public SetTests()
    {
        _record = _folder.Open();
        _record.Target("P", 100.W);
        _record.Target("R_L", 8.Ohm);
        _record.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        _record.Derive("V_pk", (ElectricPotential V_rms) => V_rms * Sqrt(2.0));
        _record.Compute("T_j", 90.degC);
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Q", "1 W", "The record has no Q to set. What can be set: P, R_L.")]
    [InlineData("V_rms", "30 V", "V_rms is derived from P and R_L; set one of those.")]
    [InlineData("V_pk", "30 V", "V_pk is derived from P and R_L; set one of those.")]
    [InlineData("T_j", "80 °C", "T_j is computed and cannot be set. What can be set: P, R_L.")]
    [InlineData("P", "8 Ω", "P is Power, but 8 Ω is ElectricResistance. \"8 Ω\" is not a value of Power. Write for example 4.7 mW or 100 W.")]
    [InlineData("P", "-5 W", "P must be 0 W or more (was −5 W).")]
    [InlineData("R_L", "-8 Ω", "R_L must be 0 Ω or more (was −8 Ω).")]
    [InlineData("P", "much", "P: \"much\" is not a value of Power. Write for example 4.7 mW or 100 W.")]
    public void What_cannot_be_set_is_refused_and_the_file_stays(string name, string text, string message)
    {
        var before = _folder.Text;
        Assert.Equal(message, Assert.Throws<RecordException>(() => _record.Set(name, text)).Message);
        Assert.Equal(before, _folder.Text);
    }

    [Fact]
    public void A_set_value_moves_all_that_comes_from_it()
    {
        _record.Set("P", "400 W");
        Assert.Equal(Sqrt(400.W * 8.Ohm), _record.Get<ElectricPotential>("V_rms"));
        Assert.Equal(Sqrt(400.W * 8.Ohm) * Math.Sqrt(2), _record.Get<ElectricPotential>("V_pk"));
    }

    [Fact]
    public void A_set_value_that_makes_a_rule_impossible_leaves_the_rule_without_a_value()
    {
        _record.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt((P - Literals.get_W(2)) * R_L));
        _record.Set("P", "1 W");
        var entry = _record.EntryOf("V_rms");
        Assert.Null(entry.Value);
        Assert.Equal("–", entry.Reads);
        Assert.Equal(EntryState.NoAnswer, entry.State);
        Assert.StartsWith("The value under the root must be 0 V² or more", entry.Reason, StringComparison.Ordinal);
        var hanging = _folder.Open().EntryOf("V_pk");
        Assert.Equal((EntryState.NoAnswer, $"V_rms has no answer: {entry.Reason}"), (hanging.State, hanging.Reason));
        Assert.Throws<RecordException>(() => _record.Get<ElectricPotential>("V_pk"));
        _record.ClearSet("P");
        Assert.Equal((EntryState.Current, null), (_record.EntryOf("V_pk").State, _record.EntryOf("V_pk").Reason));
    }

    [Fact]
    public void A_record_that_is_not_there_cannot_be_loaded() =>
        Assert.Contains("There is no record none.json", Assert.Throws<RecordException>(() => DesignRecord.Load(_folder.File.Replace("tern", "none", StringComparison.Ordinal))).Message, StringComparison.Ordinal);
}
