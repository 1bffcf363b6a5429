using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Sources;

/// <summary>Finds what the cells of a notebook that was just read have to do with each other.</summary>
internal sealed class LinkFinder
{
    private readonly List<(int Maker, int Changer)> _changes = [];
    private readonly List<(int Maker, int Holder)> _holds = [];
    private readonly List<(int Reader, int Maker)> _overtaken = [];
    private readonly Dictionary<int, int> _indices = [];
    private readonly HashSet<string> _names;
    private readonly IReadOnlyList<CellReading> _cells;
    private readonly CellCode _code;

    private LinkFinder(NotebookReader reader, IReadOnlyList<CellReading> cells)
    {
        (_cells, _code) = (cells, reader.Code);
        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i].Position >= 0)
                _indices[cells[i].Position] = i;
        }

        _names = [.. cells.SelectMany(c => c.Defines)];
        foreach (var type in _code.Types)
            _names.Add(type.Name);
        var heap = reader.Interpreter.Heap.All;
        foreach (var made in heap)
            Change(made.MadeIn, made.ChangedIn);
        var assigned = cells.SelectMany(c => (c.Notes?.Assigned.Keys ?? Enumerable.Empty<int>()).Select(slot => (slot, c.Position))).ToLookup(a => a.slot, a => a.Position);
        foreach (var slot in assigned)
            Change(reader.Interpreter.PositionOf(slot.Key), slot);
        for (var i = 0; i < cells.Count; i++)
        {
            // An object that only its maker changes is as good old as new.
            foreach (var made in cells[i].Holds.Select(id => heap[id]).Where(o => o.ChangedIn.Any(p => p != o.MadeIn)))
            {
                if (Index(made.MadeIn) is { } maker && maker != i)
                    _holds.Add((maker, i));
            }

            foreach (var made in cells[i].Touches.Select(id => heap[id]))
                Overtake(i, made.MadeIn, made.ChangedIn);
            foreach (var slot in cells[i].Notes?.Read ?? [])
                Overtake(i, reader.Interpreter.PositionOf(slot), assigned[slot]);
            foreach (var read in cells[i].Reads)
            {
                var writers = Enumerable.Range(0, cells.Count).Where(w => cells[w].Writes.Any(e => e.Entry == read)).ToList();
                if (writers.Any(w => w > i))
                    _overtaken.AddRange(writers.Where(w => w != i).Select(w => (i, w)));
            }
        }
    }

    /// <summary>Finds them.</summary>
    /// <param name="reader">What has read the cells, and nothing since.</param>
    /// <param name="cells">The readings, with their code.</param>
    public static CellLinks Of(NotebookReader reader, IReadOnlyList<CellReading> cells)
    {
        var finder = new LinkFinder(reader, cells);
        return new([.. cells.Select(finder.Link)], [.. finder._changes.Distinct()], [.. finder._holds.Distinct()], [.. finder._overtaken.Distinct()]);
    }

    private CellLink Link(CellReading cell, int index) => new(
        cell.ChangesWorld || (cell.Root is { } root && (root.Usings.Count > 0 || root.GetReferenceDirectives().Count > 0 || root.GetLoadDirectives().Count > 0)),
        cell.Unknown is not null ? [.. Enumerable.Range(0, index)] : Uses(cell.Root!, cell.Position),
        FunctionUses(cell));

    private void Change(int maker, IEnumerable<int> changers)
    {
        if (Index(maker) is { } made)
            _changes.AddRange(changers.Select(Index).OfType<int>().Where(c => c != made).Select(c => (made, c)));
    }

    private void Overtake(int reader, int maker, IEnumerable<int> changers)
    {
        if (Index(maker) is { } made && made != reader && changers.Select(Index).Any(c => c > reader))
            _overtaken.Add((reader, made));
    }

    private int? Index(int position) => _indices.TryGetValue(position, out var index) ? index : null;

    // The earlier cells whose variables, functions or types a piece of text names.
    private HashSet<int> Uses(SyntaxNode part, int position)
    {
        var model = _code.Model(part.SyntaxTree);
        var used = new HashSet<int>();
        foreach (var name in part.DescendantNodesAndSelf().OfType<SimpleNameSyntax>().Where(n => _names.Contains(n.Identifier.ValueText)))
        {
            var info = model.GetSymbolInfo(name);
            foreach (var symbol in info.Symbol is { } one ? [one] : info.CandidateSymbols)
            {
                if ((_code.PositionOf(symbol) ?? (symbol.ContainingType is { } type ? _code.PositionOf(type) : null)) is { } at && at != position && Index(at) is { } index)
                    used.Add(index);
            }
        }

        // An extension can be called without its name.
        used.UnionWith(_indices.Where(i => i.Key < position && HasExtension(_cells[i.Value])).Select(i => i.Value));
        return used;
    }

    private static bool HasExtension(CellReading cell) =>
        cell.Root!.DescendantNodes().OfType<ParameterSyntax>().Any(p => p.Modifiers.Any(SyntaxKind.ThisKeyword));

    // The cells whose variables a function that stays after the cell refers to.
    private HashSet<int> FunctionUses(CellReading cell)
    {
        if (cell.Position < 0)
            return [];
        var used = new HashSet<int>();
        foreach (var function in cell.Root!.Members.Where(m => m is MethodDeclarationSyntax or PropertyDeclarationSyntax or BaseTypeDeclarationSyntax))
            used.UnionWith(Uses(function, cell.Position));
        foreach (var closure in cell.Functions)
        {
            var syntax = closure.Body?.Syntax ?? closure.Method.OriginalDefinition.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax();
            if (syntax is null)
                continue;
            var home = _code.PositionOf(syntax.SyntaxTree);
            if (Index(home) is { } index && home != cell.Position)
                used.Add(index);
            used.UnionWith(Uses(syntax, home));
        }

        used.ExceptWith(Index(cell.Position) is { } own ? [own] : []);
        return used;
    }
}
