using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Sources;

/// <summary>Reads the cells of one notebook in the order in which they run, and knows what each value hangs on.</summary>
/// <remarks>Not for use from several threads at once.</remarks>
public sealed class NotebookReader
{
    /// <summary>What a reading says of a cell that does not compile.</summary>
    internal const string NotCompiled = "it does not compile";
    private readonly CellCode _code = new();
    private readonly CellChain _chain;
    private readonly Interpreter _interpreter;

    /// <summary>A reader before the first cell.</summary>
    /// <param name="references">What the cells are compiled against.</param>
    public NotebookReader(CellReferences references)
    {
        ArgumentNullException.ThrowIfNull(references);
        _chain = new(references);
        _interpreter = new(_code);
    }

    internal CellCode Code => _code;

    internal Interpreter Interpreter => _interpreter;

    internal CellChain Chain => _chain;

    /// <summary>Reads the next cell. One that does not compile leaves the notebook as it was.</summary>
    /// <param name="code">The cell's code, as written.</param>
    public CellReading Read(string code) => Read(code, hasCompiled: false);

    /// <summary>Reads the next cell.</summary>
    /// <param name="code">The cell's code, as written.</param>
    /// <param name="hasCompiled">Whether the compiler has taken it already, behind the same cells and against the same assemblies: it is not asked for errors a second time.</param>
    internal CellReading Read(string code, bool hasCompiled)
    {
        ArgumentNullException.ThrowIfNull(code);
        var tree = CellChain.Parse(code);
        if (CellChain.IsForeign(code))
            return new(-1, "it has lines for another kernel") { Root = tree.GetCompilationUnitRoot() };
        var last = _chain.Last;
        var compilation = _chain.Compile(tree);
        if (!hasCompiled && compilation.GetDiagnostics().Any(d => d.Severity == DiagnosticSeverity.Error))
            return new(-1, NotCompiled) { Root = tree.GetCompilationUnitRoot() };
        _chain.Last = compilation;
        return Interpret(_code.Add(compilation), tree, last);
    }

    /// <summary>A state to come back to.</summary>
    internal (CSharpCompilation? Last, State State) Mark() => (_chain.Last, _interpreter.State.Copy());

    /// <summary>Comes back: the cells since then are as if they had not been, but what they did to objects stays, which is too much at worst.</summary>
    internal void Return((CSharpCompilation? Last, State State) mark) => (_chain.Last, _interpreter.State) = (mark.Last, mark.State.Copy());

    /// <summary>Says that the cell read last failed while it ran.</summary>
    internal void Failed(CellReading reading)
    {
        if (reading.Notes is { } notes)
            _interpreter.Weaken(notes, reading.Seen);
    }

    private CellReading Interpret(int position, SyntaxTree tree, CSharpCompilation? last)
    {
        var declared = Declared(tree);
        var before = _interpreter.State.Copy();
        try
        {
            var notes = _interpreter.Read(position, out var seen);
            var functions = new List<Closure>();
            // What it leaves: its own variables, and what it put into others' objects.
            var left = _interpreter.VariablesOf(position)
                .Concat(_interpreter.Heap.All.Where(o => o.ChangedIn.Contains(position)).Select(o => _interpreter.Values.Of(new ObjectAtom(o.Id))))
                .Aggregate(default(Value), _interpreter.Values.Union);
            var held = _interpreter.Held(left, functions);
            return new(position, null)
            {
                Root = tree.GetCompilationUnitRoot(),
                ChangesWorld = notes.ChangesWorld,
                Reads = Named(seen),
                Writes = [.. notes.Writes.Select(w => new EntryWrite(new(w.Key.Record.Path, w.Key.Name ?? "", w.Key.Kind == Written.Requirement), w.Key.Line, Named(w.Value)))],
                Defines = [.. declared.Select(s => s.Name)],
                Warnings = notes.Warnings,
                Written = notes.Writes,
                Notes = notes,
                Seen = seen,
                Holds = held,
                Touches = _interpreter.Held(notes.Touched, []),
                Functions = functions,
            };
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // Whatever goes wrong here must not keep a cell from running: nothing is known then.
            _interpreter.State = before;
            _interpreter.Blur(position, declared);
            return new(position, e is CannotReadException ? e.Message : $"reading it failed: {e.GetType().Name} {e.Message}") { Root = tree.GetCompilationUnitRoot(), Defines = [.. declared.Select(s => s.Name)] };
        }
    }

    private List<ISymbol> Declared(SyntaxTree tree) =>
        _code.Model(tree).Compilation.ScriptClass is { } script
            ? [.. script.GetMembers().Where(m => !m.IsImplicitlyDeclared && m.CanBeReferencedByName)]
            : [];

    private List<EntryName> Named(Value value) =>
        [.. _interpreter.Values.Atoms(value).Select(a => a switch
        {
            EntryAtom entry => new EntryName(entry.Record.Path, entry.Name),
            RequirementAtom requirement => new EntryName(requirement.Record.Path, requirement.Label, IsRequirement: true),
            EveryEntryAtom every => new EntryName(every.Record.Path, ""),
            _ => default(EntryName?),
        }).OfType<EntryName>().Distinct()];
}
