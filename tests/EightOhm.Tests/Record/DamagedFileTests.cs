using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

/// <summary>A file that is not wholly understood is refused with its line and reason, and stays byte for byte.</summary>
public sealed class DamagedFileTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public DamagedFileTests()
    {
        var record = _folder.Open();
        record.Target("P", 100.W);
        record.Target("R_L", 8.Ohm);
        record.Derive("V", (Power P, ElectricResistance R_L) => Sqrt(P * R_L) * 2.0);
        record.Compute("T_j", (Power P) => 90.degC);
        record.Require("swing", "V").AtLeast(0.V);
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("\"version\": 2", "\"version\": 3", "the record is of version 3; this EightOhm reads version 2 and older. Use a newer EightOhm.")]
    [InlineData("\"version\": 2", "\"version\": 0", "there is no version 0")]
    [InlineData("\"version\": 2", "\"version\": \"2\"", "a number is expected")]
    [InlineData("eightohm-record", "shopping", "this is not a design record")]
    [InlineData("\"name\": \"R_L\",", "", "\"name\" is missing")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"P\"", "P stands here twice")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R L\"", "\"R L\" is not a symbol")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R_x\"", "V comes from R_L, which is not in the record")]
    [InlineData("\"name\": \"R_L\"", "\"colour\": 1, \"name\": \"R_L\"", "\"colour\" is not known here")]
    [InlineData("\"name\": \"R_L\"", "\"name\": \"R_L\", \"name\": \"R_L\"", "\"name\" stands here twice")]
    [InlineData("\"role\": \"computed\"", "\"role\": \"lost\"", "the role \"lost\" is not known")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": 8", "a text in quotes is expected")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"1e999 Ω\"", "is not a finite number")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"-8 Ω\"", "R_L must be 0 Ω or more (was −8 Ω)")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"8 Ω\", \"set\": \"-5 Ω\"", "R_L must be 0 Ω or more (was −5 Ω)")]
    [InlineData("\"value\": \"100 W\"", "\"value\": \"1e300 W\"", "cannot be a value of Power")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"8 Ω\";", "this is not JSON any more")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"8 kΩ\"", "a value of ElectricResistance is kept in Ω")]
    [InlineData("\"value\": \"8 Ω\"", "\"value\": \"8\"", "a value of ElectricResistance is kept in Ω")]
    [InlineData("\"kind\": \"ElectricResistance\"", "\"kind\": \"Elektrik\"", "the kind \"Elektrik\" is not known")]
    [InlineData("\"value\": \"8 Ω\"", "\"set\": \"8 Ω\"", "\"value\" is missing")]
    [InlineData("\"kind\": \"ElectricResistance\",\n      \"value\": \"8 Ω\"", "\"kind\": \"Power\",\n      \"value\": \"8 W\"", "fit together")]
    [InlineData("\"atLeast\"", "\"about\"", "\"about\" is not known here")]
    [InlineData("\"value\": \"0 V\"", "\"value\": \"20 V\"", "a limit without a name may be 0")]
    [InlineData("\"kind\": \"ElectricPotential\",\n      \"rule\"", "\"kind\": \"Power\",\n      \"rule\"", "the expression gives ElectricPotential, but the entry is Power")]
    [InlineData("\"P\": \"100\"", "\"T_j\": \"90\"", "the entries go round in a circle: T_j ← T_j")]
    [InlineData("\"P\": \"100\"", "\"Q\": \"90\"", "T_j comes from Q, which is not in the record")]
    [InlineData("\"call\":\"sqrt\"", "\"call\":\"sqrt-of-all\"", "\"sqrt-of-all\" is not among EightOhm's own functions, and a rule may use no other; a newer EightOhm may know it.")]
    [InlineData("\"call\":\"sqrt\"", "\"call\":\"parallel\"", "parallel does not take (SquaredVoltage)")]
    public void A_hand_that_slips_is_told_where(string old, string with, string reason)
    {
        var at = _folder.Text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0);
        var line = _folder.Text[..at].Count(c => c == '\n') + 1;
        _folder.Put(_folder.Text[..at] + with + _folder.Text[(at + old.Length)..]);
        var e = Refused(reason);
        // Faults of a whole entry or expression are shown where it begins.
        Assert.InRange(e.Line, 1, line + 16);
        if (reason.Contains("expected", StringComparison.Ordinal))
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
    [InlineData("\"call\":\"System.IO.File.Delete\"")]
    [InlineData("\"call\":\"System.Environment.CurrentDirectory\"")]
    [InlineData("\"call\":\"EightOhm.Record.RecordFolder.Use\"")]
    [InlineData("\"call\":\"EightOhm.Quantities.QuantityText.ParseAny\"")]
    [InlineData("\"call\":\"Maths.Root\"")]
    [InlineData("\"call\":\"Gain.op_Addition\"")]
    [InlineData("\"call\":\"Power.Parse\"")]
    [InlineData("\"call\":\"Power.ToUnit\"")]
    [InlineData("\"call\":\"literal.ToString\"")]
    [InlineData("\"call\":\"System.Random\"")]
    [InlineData("\"list\":\"System.Random\"")]
    [InlineData("\"convert\":\"System.Object\"")]
    [InlineData("\"do\":\"=\"")]
    public void A_rule_that_names_anything_but_ours_is_refused_by_name(string node)
    {
        _folder.Edit("\"call\":\"sqrt\"", node);
        var name = node[(node.IndexOf(":\"", StringComparison.Ordinal) + 2)..^1];
        Refused($"\"{name}\" is not a");
    }

    [Theory]
    [InlineData("{\"a\":", "}")]
    [InlineData("[", "]")]
    public void Nesting_without_end_is_refused_and_the_process_lives(string open, string close)
    {
        var deep = string.Concat(Enumerable.Repeat(open, 20_000)) + "1" + string.Concat(Enumerable.Repeat(close, 20_000));
        _folder.Edit("{\"entry\":\"P\"}", deep);
        Refused("deep in each other");
    }

    [Fact]
    public void A_name_of_a_type_nested_without_end_is_refused_and_the_process_lives()
    {
        _folder.Edit("\"call\":\"sqrt\"", "\"convert\":\"Double" + string.Concat(Enumerable.Repeat("[]", 20_000)) + "\"");
        Refused("is not a kind that a rule can hold");
    }

    [Fact]
    public void Two_requirements_of_one_label_are_refused()
    {
        _folder.Edit("\"requirements\": [", "\"requirements\": [ { \"label\": \"swing\", \"entry\": \"V\", \"atMost\": { \"entry\": \"V\" } },");
        Refused("\"swing\" stands here twice");
    }

    [Fact]
    public void Two_parts_in_one_role_are_refused()
    {
        const string Part = "{ \"name\": \"output_npn\", \"role\": \"part\", \"value\": { \"file\": \"a.json\", \"hash\": \"0\", \"device\": \"D\" } },";
        _folder.Edit("\"entries\": [", $"\"entries\": [ {Part} {Part}");
        Refused("output_npn stands here twice");
    }

    [Fact]
    public void A_requirement_on_an_entry_that_is_not_there_is_kept_and_cannot_be_told()
    {
        _folder.Edit("\"entry\": \"V\"", "\"entry\": \"V_lost\"");
        var requirement = Assert.Single(_folder.Open().Compliance());
        Assert.Equal((RequirementState.CannotTell, "V_lost is not on the record; the cell that writes it has not run"), (requirement.State, requirement.Reason));
        _folder.Open().Target("x", 1.0);
        Assert.Contains("\"entry\": \"V_lost\"", _folder.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_stored_text_of_a_rule_is_for_people_the_rule_decides()
    {
        _folder.Edit("\"value\": \"100 W\"", "\"value\": \"400 W\"");
        Assert.Equal(Sqrt(400.W * 8.Ohm) * 2.0, _folder.Open().Get<ElectricPotential>("V"));
        Assert.Equal((EntryState.Stale, "P moved"), (_folder.Open().EntryOf("T_j").State, _folder.Open().EntryOf("T_j").Reason));
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
