using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json.Nodes;
using EightOhm.Devices;
using EightOhm.Json;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Teaching;
using EightOhm.Tests.Docs;
using UnitsNet;

namespace EightOhm.Tests.Fuzz;

/// <summary>Whatever is read is understood or refused in words: no parser throws anything else, and none gives a number that is none.</summary>
public class FuzzTests
{
    private static readonly string[] Texts = ["100 W", "8 Ω", "4.7 kOhm", "220 uF", "3.3 nV/√Hz", "-60 dB", "25 °C", "0.5 K/W", "40 V/µs", "10 ppm", "1e-3", "20 kHz", "1,5 V", "12 mA", "4k7", "0.1 %"];

    [Fact]
    public void Texts_of_quantities() => All(Texts, 1, text =>
    {
        var value = QuantityText.ParseAny(text);
        Assert.True(double.IsFinite(QuantityKinds.Of(value.GetType()).ToSi(value)), text);
    }, typeof(FormatException), typeof(RefusedValueException));

    [Fact]
    public void Values_that_are_set()
    {
        var record = DesignRecord.Scratch();
        record.Target("P", 100.W);
        record.Target("T_a", 25.degC);
        record.Target("n", 3);
        string[] names = ["P", "T_a", "n"];
        var i = 0;
        All(Texts, 2, text => record.Set(names[i++ % names.Length], text), typeof(RecordException));
        Assert.All(record.Entries, e => Assert.True(double.IsFinite(e.Kind!.ToSi(e.Value!)), e.Name));
    }

    // Short, so that most changes hit something.
    private const string Small = """{"format":"eightohm-record","version":2,"design":"x","entries":[{"name":"P","role":"target","kind":"Power","value":"100 W"},{"name":"R","role":"target","kind":"ElectricResistance","value":"8 Ω"},{"name":"V","role":"derived","kind":"ElectricPotential","rule":"Sqrt(P * R)","from":["P","R"],"expression":{"call":"sqrt","of":[{"do":"*","of":[{"entry":"P"},{"entry":"R"}]}]}}],"requirements":[]}""";

    [Fact]
    public void A_source_that_stands_twice_is_refused()
    {
        Assert.Equal(3, RecordReader.Read(Encoding.UTF8.GetBytes(Small), "x").Slots.Count);
        var fault = Assert.Throws<JsonFault>(() => RecordReader.Read(Encoding.UTF8.GetBytes(Small.Replace("""["P","R"]""", """["P","R","P"]""", StringComparison.Ordinal)), "x"));
        Assert.Equal("V comes from P twice.", fault.Message);
    }

    [Fact]
    public void Records()
    {
        var whole = Assert.Single(Samples("tests/EightOhm.Tests/Record/Examples", "*.json"));
        var begun = Beginning(whole, 48);
        // Most of the time of a long one goes into what was not changed: it has a tenth of the cases, its beginning with entries and requirements of each kind nearly half.
        All([whole, .. Enumerable.Repeat(begun, 4), .. Enumerable.Repeat(Small, 5)], 3, Read, typeof(JsonFault));
        Assert.All([whole, begun, Small], Read);

        static void Read(string text) => RecordReader.Read(Encoding.UTF8.GetBytes(text), "x");
    }

    // What comes first hangs on nothing that comes later.
    private static string Beginning(string record, int count)
    {
        var json = JsonNode.Parse(record)!.AsObject();
        var entries = json["entries"]!.AsArray();
        while (entries.Count > count)
            entries.RemoveAt(count);
        var names = entries.Select(e => (string)e!["name"]!).ToHashSet();
        var requirements = json["requirements"]!.AsArray();
        foreach (var other in requirements.Where(r => !names.Contains((string)r!["entry"]!)).ToList())
            requirements.Remove(other);
        Assert.NotEmpty(requirements);
        return json.ToJsonString(new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    [Fact]
    public void Rules()
    {
        const string Head = """{"format":"eightohm-record","version":2,"design":"x","entries":[{"name":"P","role":"target","kind":"Power","value":"100 W"},{"name":"R","role":"target","kind":"ElectricResistance","value":"8 Ω"},""";
        string[] rules =
        [
            """{"do":"*","of":[{"entry":"P"},{"entry":"R"}]}""",
            """{"call":"sqrt","of":[{"do":"*","of":[{"entry":"P"},{"entry":"R"}]}]}""",
            """{"either":"x","of":[{"do":">","of":[{"entry":"P"},{"entry":"P"}]},{"number":1},{"convert":"Double","of":[{"number":2,"kind":"Int32"}]}]}""",
            """{"list":"Power","of":[{"entry":"P"},{"entry":"P"}]}""",
        ];
        All(rules, 4, rule => RecordReader.Read(Encoding.UTF8.GetBytes($$"""{{Head}}{"name":"V","role":"derived","kind":"SquaredVoltage","rule":"x","from":["P","R"],"expression":{{rule}}}],"requirements":[]}"""), "x"), typeof(JsonFault));
    }

    [Fact]
    public void Cards() => All(Samples("notebooks/tern-100/cards", "*.json"), 5, text => DeviceCard.Read(Encoding.UTF8.GetBytes(text), "card.json"), typeof(CardException));

    [Fact]
    public void Answers_to_exercises()
    {
        var random = new Random(6);
        var exercises = CourseExercises.All.Select(e => Exercise.Of(e.Id)).ToList();
        object?[] answers = [null, "", "5 V", 0.0, double.NaN, double.PositiveInfinity, -1e300, 3, int.MinValue, 5.V, (-5).V, 1e300.V, 8.Ohm, 20.dB, 25.degC, ElectricPotential.FromVolts(double.Epsilon), true, 'x', Array.Empty<double>(), new object()];
        for (var i = 0; i < Mutation.Cases; i++)
        {
            var exercise = exercises[random.Next(exercises.Count)];
            object?[] given = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => answers[random.Next(answers.Length)])];
            // Judged without the progress, which would write beside the tests.
            Assert.NotNull(exercise.Task.Judge(exercise.Question, given));
        }
    }

    private static void All(IReadOnlyList<string> samples, int seed, Action<string> read, params Type[] refusals)
    {
        Assert.NotEmpty(samples);
        var mutation = new Mutation(samples, seed);
        var (read_, refused) = (0, 0);
        for (var i = 0; i < Mutation.Cases; i++)
        {
            var text = mutation.Next();
            try
            {
                read(text);
                read_++;
            }
            catch (Exception e) when (refusals.Contains(e.GetType()))
            {
                refused++;
                Assert.True(e.Message.Length > 10 && !e.Message.Contains("Parameter '", StringComparison.Ordinal), $"{text}: {e.Message}");
            }
            catch (Exception e) when (e is not Xunit.Sdk.XunitException)
            {
                Assert.Fail($"case {i}, {e.GetType().Name}: {e.Message}\n{text}\n{e.StackTrace}");
            }
        }

        Assert.True(refused > 0, $"nothing was refused of {read_}");
    }

    private static List<string> Samples(string folder, string pattern) =>
        [.. Directory.GetFiles(Path.Combine(WrittenTable.Root(), folder), pattern).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
}
