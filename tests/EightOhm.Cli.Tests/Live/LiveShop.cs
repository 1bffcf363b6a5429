using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using EightOhm.Cli.Live;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Live;

/// <summary>A small design in a folder of its own, saved by a run, and opened.</summary>
internal sealed class LiveShop : IDisposable
{
    public const string Targets = "var amp = DesignRecord.Open(\"record.json\");\namp.Target(\"P\", 100.W, \"rated power\");\namp.Target(\"R_L\", 8.Ohm, \"rated load\");\namp.Choose(\"V_rail\", 45.V, \"a choice\");\namp.Choose(\"R_in\", 47.kOhm, \"input\");";

    public const string Peak = "amp.Derive(\"V_pk\", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));\namp.Require(\"swing\", \"V_pk\").AtMost(\"V_rail\");";

    public const string Input = "amp.Get<ElectricResistance>(\"R_in\")";

    public const string Later = "var late = DesignRecord.Open(\"record.json\");\nlate.Recall(out Power P);\nlate.Target(\"P_lim\", 250.W, \"a limit\");\nlate.Compute(\"P_2\", 2 * P);\nlate.Require(\"double\", \"P_2\").AtMost(\"P_lim\");\nP";

    private readonly WarmProcesses warm = new();

    public Workshop Shop { get; } = new();

    public List<ScriptedCells> Scripted { get; } = [];

    public ConcurrentQueue<JsonObject> News { get; } = [];

    public Disk Disk { get; set; } = Disk.Real;

    public string Record => Path.Combine(Shop.Notebooks, "record.json");

    public string File(string chapter) => Path.Combine(Shop.Notebooks, chapter + ".ipynb");

    /// <summary>Two chapters, run and saved.</summary>
    public async Task<LiveShop> SavedAsync()
    {
        Shop.Notebook("01-targets", Targets, Peak, Input);
        Shop.Notebook("02-later", Later);
        var ran = await Shop.RunAsync(Shop.Notebooks, "--save");
        Assert.Equal("", ran.Error);
        return this;
    }

    /// <summary>Opens the folder with cells that the test runs itself.</summary>
    public Workbench OpenScripted(bool isTrusted = true) => Open(copy =>
    {
        var cells = new ScriptedCells(copy);
        Scripted.Add(cells);
        return cells;
    }, isTrusted);

    /// <summary>Opens the folder with real cells, in a process of their own.</summary>
    public Workbench OpenReal() => Open(copy => new CellProcess(copy, warm), isTrusted: true);

    public void Dispose()
    {
        warm.DisposeAsync().AsTask().GetAwaiter().GetResult();
        Shop.Dispose();
    }

    private Workbench Open(Func<RecordCopy, ICellProcess> start, bool isTrusted)
    {
        var bench = Workbench.Open(Shop.Notebooks, start, isTrusted, Disk);
        bench.News += News.Enqueue;
        return bench;
    }

    /// <summary>The last news of a kind.</summary>
    public JsonObject Last(string type) => News.Last(n => (string?)n["type"] == type);

    /// <summary>A cell of a chapter as the page has it, by its place.</summary>
    public static JsonObject Cell(Workbench bench, string chapter, int place) => (JsonObject)bench.Chapter(chapter)["cells"]![place]!;

    public static string Id(Workbench bench, string chapter, int place) => (string)Cell(bench, chapter, place)["id"]!;

    public static string State(Workbench bench, string chapter, int place) => (string)Cell(bench, chapter, place)["state"]!;

    /// <summary>The sheet of the only design as it stands.</summary>
    public static JsonObject Sheet(Workbench bench) => (JsonObject)bench.All()[1]["designs"]![0]!;

    public static JsonObject Row(Workbench bench, string name) =>
        (JsonObject)bench.All()[2]["designs"]![0]!["groups"]!.AsArray().SelectMany(g => g!["rows"]!.AsArray()).First(r => (string?)r!["name"] == name)!;
}
