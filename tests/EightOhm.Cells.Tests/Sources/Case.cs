using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Tests.Sources;

/// <summary>A few cells over the stub library: read for their sources, and run with each input moved, which is the truth.</summary>
internal sealed class Case(params IEnumerable<string> cells)
{
    /// <summary>The inputs that each case may use.</summary>
    public const string Inputs = "var d = DesignRecord.Open(\"a.json\"); double P = d.Target(\"P\", 10.0), Q = d.Target(\"Q\", 20.0), R = d.Choose(\"R\", 30.0), S = d.Assume(\"S\", 40.0); var n = d.Target(\"n\", 3);";

    /// <summary>What runs before the first cell.</summary>
    public const string Before = "using static EightOhm.Rooms.Rooms; using static EightOhm.Record.Limits; var begun = true;";

    /// <summary>The names of the inputs.</summary>
    public static readonly string[] Names = ["P", "Q", "R", "S", "n"];

    /// <summary>By how much an input is moved: by little, and by enough to turn comparisons.</summary>
    public static readonly double[] Moves = [1, -7, 23, 61];

    /// <summary>What cases are compiled against.</summary>
    public static CellReferences References { get; } = new(StubLibrary.References, StubLibrary.Usings);

    /// <summary>The cells, the inputs first.</summary>
    public IReadOnlyList<string> Cells { get; } = [Inputs, .. cells];

    /// <summary>The readings of all cells.</summary>
    public IReadOnlyList<CellReading> Read()
    {
        var reader = new NotebookReader(References);
        reader.Read(Before);
        var readings = Cells.Select(reader.Read).ToList();
        Assert.All(readings, r => Assert.True(r.Unknown is null, r.Unknown));
        return readings;
    }

    /// <summary>The found sources of an entry or a requirement, sorted; "*" for every entry.</summary>
    public static string Found(IEnumerable<CellReading> readings, string name)
    {
        var writes = readings.SelectMany(r => r.Writes).Where(w => w.Entry.Name == name || w.Entry.IsEvery).ToList();
        Assert.NotEmpty(writes);
        return string.Join(' ', writes.SelectMany(w => w.Sources).Select(s => s.IsEvery ? "*" : s.Name).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>The found sources with what those hang on in turn.</summary>
    public static IReadOnlySet<string> FoundToTheInputs(IEnumerable<CellReading> readings, string name)
    {
        var writes = readings.SelectMany(r => r.Writes).ToList();
        var all = new HashSet<string> { name };
        for (var count = 0; count != all.Count;)
        {
            count = all.Count;
            all.UnionWith(writes.Where(w => all.Contains(w.Entry.Name)).SelectMany(w => w.Sources).Select(s => s.Name).ToList());
        }

        return all;
    }

    /// <summary>The inputs whose move moves an entry, by running the cells with each moved; for each entry.</summary>
    public async Task<IReadOnlyDictionary<string, HashSet<string>>> True()
    {
        using var run = new Submissions(Before, Cells);
        await run.Begin(null);
        await run.RunAll();
        var before = Submissions.Held();
        var moving = before.Keys.ToDictionary(k => k, _ => new HashSet<string>());
        foreach (var (input, by) in Names.SelectMany(n => Moves.Select(m => (n, m))))
        {
            await run.Begin(input, by);
            await run.RunAll();
            var after = Submissions.Held();
            foreach (var name in before.Keys.Union(after.Keys).Where(k => before.GetValueOrDefault(k) != after.GetValueOrDefault(k)))
                (moving.TryGetValue(name, out var those) ? those : moving[name] = []).Add(input);
        }

        return moving;
    }
}
