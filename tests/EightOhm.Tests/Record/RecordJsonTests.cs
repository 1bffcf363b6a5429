using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class RecordJsonTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_record_reads_like_a_page()
    {
        var record = _folder.Open();
        record.Name = "Tern 100";
        record.Given("R_L", 8.Ohm, "nominal");
        record.Let("R_2", (ElectricResistance R_L) => Parallel(R_L, R_L));
        record.Require("R_2", Limits.AtLeast(3.Ohm));
        const string Expected = """
            {
              "format": "eightohm-record",
              "version": 1,
              "design": "Tern 100",
              "entries": [
                {
                  "name": "R_L",
                  "role": "Given",
                  "note": "nominal",
                  "value": {
                    "value": 8,
                    "unit": "Ω",
                    "kind": "ElectricResistance",
                    "reads": "8 Ω"
                  }
                },
                {
                  "name": "R_2",
                  "role": "Let",
                  "rule": "Parallel(R_L, R_L)",
                  "from": {
                    "R_L": "ElectricResistance"
                  },
                  "gives": "ElectricResistance",
                  "value": {
                    "value": 4,
                    "unit": "Ω",
                    "kind": "ElectricResistance",
                    "reads": "4 Ω"
                  },
                  "expression": {
                    "call": "EightOhm.Quantities.Maths.Parallel(ElectricResistance, ElectricResistance)",
                    "of": [
                      {
                        "entry": "R_L"
                      },
                      {
                        "entry": "R_L"
                      }
                    ]
                  }
                }
              ],
              "requirements": [
                {
                  "entry": "R_2",
                  "sense": "AtLeast",
                  "low": {
                    "value": 3,
                    "unit": "Ω",
                    "kind": "ElectricResistance",
                    "reads": "3 Ω"
                  }
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
        Assert.Equal(record.Entries.Select(e => (e.Name, KeptValue.Fingerprint(e.Kind, e.Value!))), again.Entries.Select(e => (e.Name, KeptValue.Fingerprint(e.Kind, e.Value!))));
        again.Given("x", 1.0);
        again.Remove("x");
        Assert.Equal(text, _folder.Text);
    }

    [Fact]
    public void All_there_is_comes_back()
    {
        var record = _folder.Open();
        record.Given("P", 100.W, "rated");
        record.Given("R_L", 8.Ohm);
        record.Set("P", "33.3333333333333 W");
        record.Let("V", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        record.Found("T", 61.4.degC, ["V"]);
        record.Require("T", Limits.Between(0.degC, 80.degC), "touch");
        var again = _folder.Open();
        Assert.Equal(Seen(record), Seen(again));
        Assert.Equal(record.Compliance().Select(r => (r.Says, r.State, r.Margin)), again.Compliance().Select(r => (r.Says, r.State, r.Margin)));
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
                record.Given("P", 1234.5.W);
                record.Set("P", "0.5 W");
                record.Let("a", (Power P) => P * 0.25);
                record.Found("I", 1.5.A, ["a"]);
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

    private static IEnumerable<string> Seen(DesignRecord record) =>
        record.Entries.Select(e => $"{e.Name} {e.Role} {e.Kind.Name} {e.State} {e.IsCurrent} {e.Reads} {KeptValue.Fingerprint(e.Kind, e.Value!)} {e.Rule} {string.Join(' ', e.From)} {e.Note}");

    private static void Given(DesignRecord record, string name, QuantityKind kind, object value) =>
        typeof(DesignRecord).GetMethod(nameof(DesignRecord.Given))!.MakeGenericMethod(kind.Type).Invoke(record, [name, value, null]);
}
