using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Sources;

/// <summary>What the cells of a notebook have to do with each other besides the record: names, functions that stay, objects that several change.</summary>
internal sealed class CellLinks
{
    private readonly bool[] _isUnknown;
    private readonly HashSet<int>[] _uses;
    private readonly HashSet<int>[] _functionUses;
    private readonly List<(int Maker, int Changer)> _changes = [];
    private readonly List<(int Maker, int Holder)> _holds = [];
    private readonly List<(int Reader, int Maker)> _overtaken = [];
    private readonly bool[] _always;
    private readonly Dictionary<int, int> _indices = [];
    private readonly HashSet<string> _names;

    public CellLinks(NotebookReader reader, IReadOnlyList<CellReading> cells)
    {
        _isUnknown = [.. cells.Select(c => c.Unknown is not null)];
        var code = reader.Code;
        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i].Position >= 0)
                _indices[cells[i].Position] = i;
        }

        _names = [.. cells.SelectMany(c => c.Defines)];
        foreach (var type in code.Types)
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

        _changes = [.. _changes.Distinct()];
        _holds = [.. _holds.Distinct()];
        _overtaken = [.. _overtaken.Distinct()];
        _uses = [.. cells.Select((c, i) => c.Position < 0 ? [.. Enumerable.Range(0, i)] : Uses(cells, code, c.Root, c.Position))];
        _functionUses = [.. cells.Select(c => FunctionUses(cells, code, c))];
        _always = [.. cells.Select(c => c.Notes?.ChangesWorld == true || (c.Root is CompilationUnitSyntax root && (root.Usings.Count > 0 || root.GetReferenceDirectives().Count > 0 || root.GetLoadDirectives().Count > 0)))];
    }

    /// <summary>Adds the cells that must run again because others do.</summary>
    public void Spread(SortedSet<int> again)
    {
        for (var count = -1; count != again.Count;)
        {
            count = again.Count;
            // A function keeps the variables of the run that it was made in.
            for (var i = 0; i < _isUnknown.Length; i++)
            {
                if (_functionUses[i].Overlaps(again))
                    again.Add(i);
            }

            foreach (var (maker, changer) in _changes)
            {
                if (again.Contains(maker) || again.Contains(changer))
                    again.UnionWith([maker, changer]);
            }

            foreach (var (maker, holder) in _holds)
            {
                if (again.Contains(maker))
                    again.Add(holder);
            }

            // Later cells have changed since what it reads: that must be made again as it was here.
            foreach (var (reader, maker) in _overtaken)
            {
                if (again.Contains(reader))
                    again.Add(maker);
            }
        }
    }

    /// <summary>The cells that are not among those to run, but that those need in a fresh kernel.</summary>
    public SortedSet<int> Needed(SortedSet<int> again)
    {
        var all = new SortedSet<int>(again);
        if (again.Count == 0)
            return all;
        var last = again.Max;
        all.UnionWith(Enumerable.Range(0, last).Where(i => _always[i]));
        for (var count = -1; count != all.Count;)
        {
            count = all.Count;
            foreach (var cell in all.ToList())
                all.UnionWith(_isUnknown[cell] ? Enumerable.Range(0, cell) : _uses[cell]);
            foreach (var (maker, changer) in _changes)
            {
                if (all.Contains(maker) && changer < last)
                    all.Add(changer);
            }
        }

        all.ExceptWith(again);
        return all;
    }

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
    private HashSet<int> Uses(IReadOnlyList<CellReading> cells, CellCode code, SyntaxNode part, int position)
    {
        var model = code.Model(part.SyntaxTree);
        var used = new HashSet<int>();
        foreach (var name in part.DescendantNodesAndSelf().OfType<SimpleNameSyntax>().Where(n => _names.Contains(n.Identifier.ValueText)))
        {
            var info = model.GetSymbolInfo(name);
            foreach (var symbol in info.Symbol is { } one ? [one] : info.CandidateSymbols)
            {
                if ((code.PositionOf(symbol) ?? (symbol.ContainingType is { } type ? code.PositionOf(type) : null)) is { } at && at != position && Index(at) is { } index)
                    used.Add(index);
            }
        }

        // An extension can be called without its name.
        used.UnionWith(_indices.Where(i => i.Key < position && HasExtension(cells[i.Value])).Select(i => i.Value));
        return used;
    }

    private static bool HasExtension(CellReading cell) =>
        cell.Root.DescendantNodes().OfType<ParameterSyntax>().Any(p => p.Modifiers.Any(SyntaxKind.ThisKeyword));

    // The cells whose variables a function that stays after the cell refers to.
    private HashSet<int> FunctionUses(IReadOnlyList<CellReading> cells, CellCode code, CellReading cell)
    {
        if (cell.Position < 0)
            return [];
        var used = new HashSet<int>();
        foreach (var function in ((CompilationUnitSyntax)cell.Root).Members.Where(m => m is MethodDeclarationSyntax or PropertyDeclarationSyntax or BaseTypeDeclarationSyntax))
            used.UnionWith(Uses(cells, code, function, cell.Position));
        foreach (var closure in cell.Functions)
        {
            var syntax = closure.Body?.Syntax ?? closure.Method.OriginalDefinition.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax();
            if (syntax is null)
                continue;
            var home = code.PositionOf(syntax.SyntaxTree);
            if (Index(home) is { } index && home != cell.Position)
                used.Add(index);
            used.UnionWith(Uses(cells, code, syntax, home));
        }

        used.ExceptWith(Index(cell.Position) is { } own ? [own] : []);
        return used;
    }
}
