using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class FileTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_record_reads_like_a_page()
    {
        var record = _folder.Open();
        record.Name = "Tern 100";
        record.Target("R_L", 8.Ohm, "nominal");
        record.Derive("R_2", (ElectricResistance R_L) => Parallel(R_L, R_L));
        record.Compute("f", (ElectricResistance R_2) => 20.kHz, "by a sweep");
        record.Require("load of {R_L} twice", "R_2").Between(RequirementLimit.Of(0.Ohm), "R_L");
        record.Require("half", "R_2").AtLeast((ElectricResistance R_L) => R_L * 0.5);
        record.NoAnswer(["T_j"], [new("noise of the whole", "e_n"), new("worst over mains", null)], "the solver gave up");
        const string Expected = """
            {
              "format": "eightohm-record",
              "version": 2,
              "design": "Tern 100",
              "entries": [
                {
                  "name": "R_L",
                  "role": "target",
                  "note": "nominal",
                  "kind": "ElectricResistance",
                  "value": "8 Ω"
                },
                {
                  "name": "R_2",
                  "role": "derived",
                  "kind": "ElectricResistance",
                  "rule": "Parallel(R_L, R_L)",
                  "reads": "4 Ω",
                  "from": [
                    "R_L"
                  ],
                  "expression": {"call":"parallel","of":[{"entry":"R_L"},{"entry":"R_L"}]}
                },
                {
                  "name": "f",
                  "role": "computed",
                  "note": "by a sweep",
                  "kind": "Frequency",
                  "value": "20000 Hz",
                  "from": {
                    "R_2": "4"
                  }
                }
              ],
              "requirements": [
                {
                  "label": "load of {R_L} twice",
                  "entry": "R_2",
                  "atLeast": {
                    "kind": "ElectricResistance",
                    "value": "0 Ω"
                  },
                  "atMost": {
                    "entry": "R_L"
                  }
                },
                {
                  "label": "half",
                  "entry": "R_2",
                  "atLeast": {
                    "kind": "ElectricResistance",
                    "rule": "R_L * 0.5",
                    "from": {
                      "R_L": "ElectricResistance"
                    },
                    "expression": {"do":"*","of":[{"entry":"R_L"},{"number":0.5}]}
                  }
                }
              ],
              "unanswered": {
                "T_j": "the solver gave up"
              },
              "unasked": [
                {
                  "label": "noise of the whole",
                  "entry": "e_n",
                  "reason": "the solver gave up"
                },
                {
                  "label": "worst over mains",
                  "reason": "the solver gave up"
                }
              ]
            }

            """;
        Assert.Equal(Expected.ReplaceLineEndings("\n"), _folder.Text);
    }

    [Fact]
    public void Every_kind_comes_back_bit_for_bit_and_the_same_text_is_written()
    {
        var record = _folder.Open();
        var random = new Random(11);
        foreach (var kind in QuantityKinds.All)
        {
            for (var i = 0; i < 5; i++)
                Given(record, $"{kind.Name}_{i}", kind, kind.FromSi(kind.Type == typeof(int) ? random.Next() : random.NextDouble() * Math.Pow(10, random.Next(-5, 6))));
        }

        var text = _folder.Text;
        var again = _folder.Open();
        Assert.Equal(record.Entries.Select(e => (e.Name, KeptValue.Fingerprint(e.Kind!, e.Value!))), again.Entries.Select(e => (e.Name, KeptValue.Fingerprint(e.Kind!, e.Value!))));
        again.Target("x", 1.0);
        again.Remove("x");
        Assert.Equal(text, _folder.Text);
    }

    [Fact]
    public void All_there_is_comes_back()
    {
        var record = _folder.Open();
        record.Target("P", 100.W, "rated");
        record.Target("R_L", 8.Ohm);
        record.Set("P", "33.3333333333333 W");
        record.Derive("V", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        record.Compute("T", (ElectricPotential V) => 61.4.degC);
        record.Compute("T_any", 61.4.degC);
        record.Assume("T_max", 80.degC, "touched with a finger");
        record.Require("touch", "T").AtMost("T_max");
        var again = _folder.Open();
        Assert.Equal(Seen(record), Seen(again));
        Assert.Equal(record.Compliance().Select(r => (r.Label, r.State, r.Margin, r.Limit)), again.Compliance().Select(r => (r.Label, r.State, r.Margin, r.Limit)));
    }

    [Fact]
    public void Another_culture_writes_and_reads_the_same()
    {
        string Written(string culture)
        {
            using var folder = new TestFolder();
            var thread = new Thread(() =>
            {
                var record = folder.Open();
                record.Target("P", 1234.5.W);
                record.Set("P", "0.5 W");
                record.Derive("a", (Power P) => P * 0.25);
                record.Compute("I", (Power a) => 1.5.A);
                Assert.True(folder.Open().EntryOf("I").IsCurrent);
            })
            {
                CurrentCulture = new System.Globalization.CultureInfo(culture),
            };
            thread.Start();
            thread.Join();
            return folder.Text;
        }

        Assert.Equal(Written("en-US"), Written("de-DE"));
        Assert.Equal(Written("en-US"), Written("ar-SA"));
    }

    [Fact]
    public void Control_characters_and_halves_of_characters_are_left_out_of_texts()
    {
        var record = _folder.Open();
        record.Target("P", 100.W, "rated\u001b[31m\u0007 power\ud800, two lines\nand a\ttab");
        Assert.Equal("rated[31m power, two lines\nand a\ttab", _folder.Open().EntryOf("P").Note);
        _folder.Edit("rated", "rated\\u001b");
        Assert.Equal("rated[31m power, two lines\nand a\ttab", _folder.Open().EntryOf("P").Note);
    }

    [Fact]
    public void Twenty_thousand_entries_load()
    {
        var record = _folder.Open();
        using (record.Batch())
        {
            for (var i = 0; i < 20_000; i++)
                record.Target($"x{i}", (double)i);
        }

        Assert.Equal(20_000, _folder.Open().Entries.Count);
    }

    private static IEnumerable<string> Seen(DesignRecord record) =>
        record.Entries.Select(e => $"{e.Name} {e.Role} {e.Kind!.Name} {e.State} {e.Reason} {e.HangsOnAll} {e.Reads} {KeptValue.Fingerprint(e.Kind!, e.Value!)} {e.Rule} {string.Join(' ', e.From)} {e.Note}");

    private static void Given(DesignRecord record, string name, QuantityKind kind, object value) =>
        typeof(DesignRecord).GetMethod(nameof(DesignRecord.Target))!.MakeGenericMethod(kind.Type).Invoke(record, [name, value, null]);
}
