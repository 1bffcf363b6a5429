using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;
using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cells.Tests.Sources;

/// <summary>The cells of a case compiled once, each to be called as often as wanted, in any order: a kernel of our own.</summary>
internal sealed class Submissions : IDisposable
{
    private static readonly Assembly Stub = AssemblyLoadContext.Default.LoadFromAssemblyPath(StubLibrary.File);
    private static readonly Type Record = Stub.GetType("EightOhm.Record.DesignRecord")!;
    private readonly AssemblyLoadContext _context = new("cells", isCollectible: true);
    private readonly List<Func<object?[], Task<object>>> _cells = [];
    private object?[] _slots = [];

    /// <param name="before">What runs before the first cell, such as usings.</param>
    /// <param name="cells">The cells.</param>
    public Submissions(string before, IEnumerable<string> cells)
    {
        var chain = new CellChain(Case.References);
        foreach (var code in cells.Prepend(before))
        {
            var compiled = chain.Compile(CellChain.Parse(code));
            using var image = new MemoryStream();
            var made = compiled.Emit(image);
            Assert.True(made.Success, $"{code}\n{string.Join('\n', made.Diagnostics)}");
            chain.Last = compiled;
            image.Position = 0;
            var entry = compiled.GetEntryPoint(default)!;
            _cells.Add(_context.LoadFromStream(image).GetType(entry.ContainingType.MetadataName)!
                .GetMethod(entry.MetadataName, BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!.CreateDelegate<Func<object?[], Task<object>>>());
        }
    }

    /// <summary>Begins anew: no variables, no records, inputs moved as told.</summary>
    public async Task Begin(string? moved, double by = 1)
    {
        ((IList)Record.GetField("All")!.GetValue(null)!).Clear();
        await Restart(moved, by);
    }

    /// <summary>A fresh kernel beside the records that are there.</summary>
    public async Task Restart(string? moved, double by = 1)
    {
        _slots = new object?[_cells.Count + 1];
        Move(moved, by);
        await _cells[0](_slots);
    }

    /// <summary>Moves an input, or puts all back.</summary>
    public static void Move(string? moved, double by = 1)
    {
        var moves = (Dictionary<string, double>)Record.GetField("Moved")!.GetValue(null)!;
        moves.Clear();
        if (moved is not null)
            moves[moved] = by;
    }

    /// <summary>Runs a cell; one that fails keeps what it has done.</summary>
    public async Task Run(int cell)
    {
        try
        {
            await _cells[cell + 1](_slots);
        }
        catch (Exception)
        {
            // A notebook goes on after a cell that fails.
        }
    }

    /// <summary>Runs all cells.</summary>
    public async Task RunAll()
    {
        for (var i = 0; i < _cells.Count - 1; i++)
            await Run(i);
    }

    /// <summary>What all records hold, entries and requirements.</summary>
    public static IReadOnlyDictionary<string, string> Held() =>
        ((IEnumerable)Record.GetField("All")!.GetValue(null)!).Cast<object>().SelectMany(r => (Dictionary<string, object>)Record.GetField("Values")!.GetValue(r)!)
            .GroupBy(v => v.Key.TrimStart('?'), v => Convert.ToString(v.Value, CultureInfo.InvariantCulture)!).ToDictionary(v => v.Key, v => string.Join(';', v));

    public void Dispose() => _context.Unload();
}
