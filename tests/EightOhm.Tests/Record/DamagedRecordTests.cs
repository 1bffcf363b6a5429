using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

/// <summary>A file that is not wholly understood is refused with its line and reason, and stays byte for byte.</summary>
public sealed class DamagedRecordTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public DamagedRecordTests()
    {
        var record = _folder.Open();
        record.Given("P", 100.W);
        record.Given("R_L", 8.Ohm);
        record.Let("V", (Power P, ElectricResistance R_L) => Sqrt(P * R_L) * 2.0);
        record.Found("T_j", 90.degC, ["P"]);
        record.Require("V", Limits.AtLeast(20.V));
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 2", "the record is of version 2; this EightOhm reads version 1")]
    [InlineData("\"version\": 1", "\"version\": \"1\"", "a number is expected")]
    [InlineData("eightohm-record", "shopping", "this is not a design record")]
    [InlineData("\"name\": \"R_L\",", "", "\"name\" is missing")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"P\"", "P stands here twice")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R L\"", "\"R L\" is not a symbol")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R_x\"", "V comes from R_L, which is not in the record")]
    [InlineData("\"name\": \"R_L\"", "\"colour\": 1, \"name\": \"R_L\"", "\"colour\" is not known here")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R_L\", \"name\": \"R_L\"", "\"name\" stands here twice")]
    [InlineData("\"role\": \"Found\"", "\"role\": \"Lost\"", "the role \"Lost\" is not known")]
    [InlineData("\"value\": 8,", "\"value\": \"8\",", "a number is expected")]
    [InlineData("\"value\": 8,", "\"value\": 1e999,", "out of range")]
    [InlineData("\"value\": 100,", "\"value\": 1e300,", "cannot be a value of Power")]
    [InlineData("\"value\": 8,", "\"value\": 8;", "this is not JSON any more")]
    [InlineData("\"unit\": \"Ω\"", "\"unit\": \"kΩ\"", "a value of ElectricResistance is kept in \"Ω\" (was \"kΩ\")")]
    [InlineData("\"kind\": \"ElectricResistance\"", "\"kind\": \"Elektrik\"", "the kind \"Elektrik\" is not known")]
    [InlineData("\"R_L\": \"ElectricResistance\"", "\"R_L\": \"Power\"", "fit together")]
    [InlineData("\"sense\": \"AtLeast\"", "\"sense\": \"About\"", "\"About\" is not a limit")]
    [InlineData("\"gives\": \"ElectricPotential\"", "\"gives\": \"Power\"", "Power is expected here (was ElectricPotential)")]
    [InlineData("\"P\": \"100\"", "\"T_j\": \"90\"", "the entries go round in a circle")]
    public void A_hand_that_slips_is_told_where(string old, string with, string reason)
    {
        var at = _folder.Text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0);
        var line = _folder.Text[..at].Count(c => c == '\n') + 1;
        _folder.Put(_folder.Text[..at] + with + _folder.Text[(at + old.Length)..]);
        var e = Refused(reason);
        // Faults of a whole entry or expression are shown where it begins.
        Assert.InRange(e.Line, 1, line + 16);
        if (reason.Contains("expected", StringComparison.Ordinal) && !with.Contains("gives", StringComparison.Ordinal))
            Assert.Equal(line, e.Line);
    }

    [Fact]
    public void A_file_cut_off_anywhere_is_refused()
    {
        var bytes = File.ReadAllBytes(_folder.File);
        var end = bytes.Length - 2; // the last brace and its line end
        for (var length = 0; length <= end; length += length < 40 ? 1 : 37)
        {
            File.WriteAllBytes(_folder.File, bytes[..length]);
            Assert.Throws<RecordFileException>(_folder.Open);
            Assert.Equal(length, new FileInfo(_folder.File).Length);
        }
    }

    [Fact]
    public void Text_after_the_end_and_bytes_that_are_no_text_are_refused()
    {
        var bytes = File.ReadAllBytes(_folder.File);
        File.WriteAllBytes(_folder.File, [.. bytes, .. "{}"u8]);
        Refused("this is not JSON any more");
        var name = bytes.AsSpan().IndexOf("tern"u8);
        bytes[name] = 0xff;
        File.WriteAllBytes(_folder.File, bytes);
        Refused("UTF-8");
    }

    [Theory]
    [InlineData("\"call\": \"System.IO.File.Delete(String)\"")]
    [InlineData("\"call\": \"System.Environment.get_TickCount()\"")]
    [InlineData("\"call\": \"EightOhm.Record.RecordFolder.Use(String)\"")]
    [InlineData("\"call\": \"EightOhm.Quantities.QuantityText.ParseAny(String)\"")]
    [InlineData("\"call\": \"EightOhm.Quantities.Maths.Root(Double, String)\"")]
    [InlineData("\"call\": \"Gain.op_Addition(Gain, Gain)\"")]
    [InlineData("\"call\": \"System.IO.File, System.Private.CoreLib.Delete(String)\"")]
    [InlineData("\"read\": \"System.Environment.CurrentDirectory\"")]
    [InlineData("\"read\": \"EightOhm.Record.RecordFolder.Current\"")]
    [InlineData("\"new\": \"System.Random()\"")]
    [InlineData("\"list\": \"System.Random\"")]
    [InlineData("\"convert\": \"System.Object\"")]
    [InlineData("\"do\": \"Assign\"")]
    public void A_rule_that_names_anything_but_ours_is_refused_by_name(string node)
    {
        _folder.Edit("\"call\": \"EightOhm.Quantities.Maths.Sqrt(SquaredVoltage)\"", node);
        var name = node[(node.IndexOf(": \"", StringComparison.Ordinal) + 3)..^1];
        Refused($"\"{name}\" is not among EightOhm's own functions");
    }

    [Fact]
    public void The_stored_value_of_a_rule_is_for_people_the_rule_decides()
    {
        _folder.Edit("\"value\": 100,", "\"value\": 400,");
        Assert.Equal(Sqrt(400.W * 8.Ohm) * 2.0, _folder.Open().Get<ElectricPotential>("V"));
        Assert.Equal("stale: P moved", _folder.Open().EntryOf("T_j").State);
    }

    private RecordFileException Refused(string reason)
    {
        var before = File.ReadAllBytes(_folder.File);
        var e = Assert.Throws<RecordFileException>(_folder.Open);
        Assert.Contains(reason, e.Message, StringComparison.Ordinal);
        Assert.StartsWith($"tern.json, line {e.Line}: ", e.Message, StringComparison.Ordinal);
        Assert.EndsWith("The file was left as it is.", e.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_folder.File));
        return e;
    }
}
