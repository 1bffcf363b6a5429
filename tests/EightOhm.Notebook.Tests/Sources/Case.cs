using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using EightOhm.Notebook.Sources;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;

namespace EightOhm.Notebook.Tests.Sources;

/// <summary>A few cells over the stub library: read for their sources, and run with each input moved, which is the truth.</summary>
internal sealed class Case(params string[] cells)
{
    /// <summary>The inputs that each case may use.</summary>
    public const string Inputs = "var d = DesignRecord.Open(\"a.json\"); double P = d.Target(\"P\", 10.0), Q = d.Target(\"Q\", 20.0), R = d.Choose(\"R\", 30.0), S = d.Assume(\"S\", 40.0); var n = d.Target(\"n\", 3);";

    private static readonly string[] Names = ["P", "Q", "R", "S", "n"];
    private static readonly Lazy<(Type Record, FieldInfo Moved, FieldInfo All, FieldInfo Values)> Stub = new(() =>
    {
        var record = AssemblyLoadContext.Default.LoadFromAssemblyPath(StubLibrary.File).GetType("EightOhm.Record.DesignRecord")!;
        return (record, record.GetField("Moved")!, record.GetField("All")!, record.GetField("Values")!);
    });

    private readonly string[] _cells = [Inputs, .. cells];

    /// <summary>A notebook before its first cell.</summary>
    public static NotebookReader NewReader() =>
        new(new(StubLibrary.References, [.. StubLibrary.Usings.Where(u => u is not ("EightOhm.Rooms.Rooms" or "EightOhm.Record.Limits"))]));

    /// <summary>The readings of all cells.</summary>
    public IReadOnlyList<CellReading> Read()
    {
        var reader = NewReader();
        reader.Read("using static EightOhm.Rooms.Rooms; using static EightOhm.Record.Limits;");
        return [.. _cells.Select(reader.Read)];
    }

    /// <summary>The found sources of an entry or a requirement, sorted; "*" for every entry.</summary>
    public string Found(string name)
    {
        var readings = Read();
        Assert.All(readings, r => Assert.True(r.Unknown is null, r.Unknown));
        var writes = readings.SelectMany(r => r.Writes).Where(w => w.Entry.Name == name || w.Entry.IsEvery).ToList();
        Assert.NotEmpty(writes);
        return string.Join(' ', writes.SelectMany(w => w.Sources).Select(s => s.IsEvery ? "*" : s.Name).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>The found sources with what those hang on in turn.</summary>
    public IReadOnlySet<string> FoundToTheInputs(string name)
    {
        var writes = Read().SelectMany(r => r.Writes).ToList();
        var all = new HashSet<string> { name };
        for (var count = 0; count != all.Count;)
        {
            count = all.Count;
            all.UnionWith(writes.Where(w => all.Contains(w.Entry.Name)).SelectMany(w => w.Sources).Select(s => s.Name).ToList());
        }

        return all;
    }

    /// <summary>The inputs whose move moves the entry, by running the cells with each moved.</summary>
    public async Task<string> True(string name)
    {
        var options = ScriptOptions.Default.WithReferences(StubLibrary.References).WithImports(StubLibrary.Usings);
        Script<object>? script = null;
        foreach (var cell in _cells)
            script = script is null ? CSharpScript.Create(cell, options) : script.ContinueWith(cell);
        var before = await Run(script!, name, null);
        var moving = new List<string>();
        foreach (var input in Names)
        {
            if (await Run(script!, name, input) != before)
                moving.Add(input);
        }

        return string.Join(' ', moving.Order(StringComparer.Ordinal));
    }

    private static async Task<string> Run(Script<object> script, string name, string? moved)
    {
        var (_, movedField, allField, valuesField) = Stub.Value;
        var moves = (Dictionary<string, double>)movedField.GetValue(null)!;
        var all = (System.Collections.IList)allField.GetValue(null)!;
        moves.Clear();
        all.Clear();
        if (moved is not null)
            moves[moved] = 1;
        await script.RunAsync(catchException: _ => true);
        var held = all.Cast<object>().Select(r => (Dictionary<string, object>)valuesField.GetValue(r)!).Select(v => v.GetValueOrDefault(name) ?? v.GetValueOrDefault("?" + name));
        return string.Join(';', held.Select(v => Convert.ToString(v, CultureInfo.InvariantCulture)));
    }
}
