using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cells.Sources;

/// <summary>Runs cells with sets of sources in place of numbers, in the order in which the kernel runs them.</summary>
/// <remarks>
/// An abstract interpretation over the compiler's own operations. A plain value is the entries it hangs on, settled when it is made; a mutable
/// object is the place that makes it, and only grows; a function of a cell is followed at each call; a function as a value is asked when it is
/// used; what decides whether something runs counts as a source of what it does. Whatever is not known counts as too much, never as nothing.
/// </remarks>
internal sealed partial class Interpreter
{
    // A cell that takes more to follow hangs on everything; it runs all the same. Counted and not timed, so that a record does not hang on how busy the machine was.
    private const int MostSteps = 100_000;
    private const int MostDepth = 120;
    private const int MostRounds = 60;

    private readonly CellCode _code;
    private readonly Kinds _kinds;
    private readonly Values _values = new();
    private readonly Heap _heap;
    private readonly Dictionary<(Way Way, int Function, int Lexical), Frame> _frames = [];
    private readonly Dictionary<ISymbol, int> _functions = new(SymbolEqualityComparer.Default);
    private readonly List<(ISymbol Symbol, int Position)> _slots = [];
    private readonly Dictionary<(int Position, string Name), int> _variables = [];
    private readonly Dictionary<ISymbol, int> _statics = new(SymbolEqualityComparer.Default);

    private readonly List<bool> _shared = [];
    private State _state;
    private Frame _frame;
    private Notes _notes = new();
    private Value _control;
    private Value _evaluated;
    private int _cell;
    private int _steps;
    private int _weak;

    public Interpreter(CellCode code)
    {
        _code = code;
        _kinds = new(code);
        _heap = new(_values);
        _state = new(_shared);
        _frame = FrameOf(null, null, null, null);
    }

    /// <summary>How many steps the last cell took to follow.</summary>
    public int Steps => _steps;

    public Values Values => _values;

    public Heap Heap => _heap;

    /// <summary>What the variables hold now; a copy can be kept to come back to.</summary>
    public State State
    {
        get => _state;
        set => _state = value;
    }

    /// <summary>The variables of a cell, and what they hold now.</summary>
    public IEnumerable<Value> VariablesOf(int position) => _variables.Where(v => v.Key.Position == position).Select(v => _state.Get(v.Value));

    /// <summary>The position of the cell whose variable a slot is.</summary>
    public int PositionOf(int slot) => _slots[slot].Position;

    /// <summary>Reads the cell at a position, after all before it.</summary>
    /// <param name="position">Its position in the chain.</param>
    /// <param name="reads">What the cell hangs on: entries and requirements, settled.</param>
    /// <exception cref="CannotReadException">The cell does what this reader does not follow.</exception>
    public Notes Read(int position, out Value reads)
    {
        _notes = new();
        (_cell, _control, _evaluated, _steps, _weak) = (position, default, default, 0, 0);
        _memo.Clear();
        _resolved.Clear();
        _asked.Clear();
        _active.Clear();
        _frame = FrameOf(null, _code.Tree(position).GetRoot(), null, null);
        _frame.Begin();
        var model = _code.Model(_code.Tree(position));
        foreach (var member in ((CompilationUnitSyntax)_code.Tree(position).GetRoot()).Members)
            Member(member, model);
        // A throw ends the cell and not the notebook.
        _state.IsDead = false;
        reads = Seen(_evaluated);
        return _notes;
    }

    /// <summary>What a cell that is not followed leaves: every variable may hold anything.</summary>
    public void Blur(int position, IEnumerable<ISymbol> declared)
    {
        var anything = _values.Union(_values.Of(new EveryEntryAtom(RecordAtom.Unknown)), _values.Of(new ComputedTextAtom()));
        foreach (var symbol in declared)
            Variable(position, symbol);
        foreach (var slot in _variables.Values.Concat(_statics.Values))
        {
            var more = Kinds.IsRecord(TypeOf(_slots[slot].Symbol)) ? _values.Union(anything, _values.Of(RecordAtom.Unknown)) : anything;
            _state.Set(slot, _values.Union(_state.Get(slot), more));
        }
    }

    /// <summary>What a cell leaves that failed while it ran: each variable holds its old value, its new one or one on the way.</summary>
    public void Weaken(Notes notes, Value reads)
    {
        foreach (var (slot, before) in notes.Assigned)
            _state.Set(slot, _values.Union(_values.Union(_state.Get(slot), before), reads));
    }

    private void Member(MemberDeclarationSyntax member, SemanticModel model)
    {
        switch (member)
        {
            case GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } shown }:
                Show(Of(shown.Expression));
                break;
            case GlobalStatementSyntax { Statement: CheckedStatementSyntax { Block: var block } }:
                Eval(Of(block));
                break;
            case GlobalStatementSyntax { Statement: EmptyStatementSyntax }:
                break;
            case GlobalStatementSyntax { Statement: var statement }:
                Eval(Of(statement));
                break;
            case FieldDeclarationSyntax fields:
                foreach (var declarator in fields.Declaration.Variables)
                    Begin(model.GetDeclaredSymbol(declarator)!, declarator.Initializer);
                break;
            case PropertyDeclarationSyntax { Initializer: { } initial } property:
                Begin(model.GetDeclaredSymbol(property)!, initial);
                break;
        }

        IOperation Of(SyntaxNode node) => model.GetOperation(node) ?? throw new CannotReadException($"it holds {node.ToString().Split('\n')[0]}, which is not followed");
    }

    private void Begin(ISymbol variable, EqualsValueClauseSyntax? initial)
    {
        var slot = Variable(_cell, variable);
        var value = initial is null ? default : Settle(TypeOf(variable), Eval(_code.Initial(initial)));
        Note(value);
        SetVariable(slot, _values.Union(value, Deciding()));
    }

    // What a cell shows is read to the bottom, a record with all its entries.
    private void Show(IOperation shown)
    {
        var value = Eval(shown);
        Note(Resolve(value));
    }

    /// <summary>Notes that the cell made use of something.</summary>
    private void Note(Value value) => _evaluated = _values.Union(_evaluated, value);

    /// <summary>All that decides whether this point runs.</summary>
    private Value Deciding()
    {
        var sum = _values.Union(_control, _frame.Residual);
        foreach (var running in _frame.Running)
            sum = _values.Union(sum, running.Residual);
        return sum;
    }

    // Runs something for a reason.
    private T Under<T>(Value reason, Func<T> run)
    {
        var before = _control;
        _control = _values.Union(_control, reason);
        Note(reason);
        var result = run();
        _control = before;
        return result;
    }

    private Frame FrameOf(Frame? caller, SyntaxNode? site, ISymbol? function, Frame? lexical)
    {
        var way = new Way(site, caller?.Way?.Last, caller?.Way?.Before);
        var number = 0;
        if (function is not null && !_functions.TryGetValue(function, out number))
            _functions.Add(function, number = _functions.Count + 1);
        var key = (way, number, lexical?.Id ?? -1);
        if (!_frames.TryGetValue(key, out var frame))
            _frames.Add(key, frame = new(_frames.Count, way, lexical, function));
        return frame;
    }

    private int Variable(int position, ISymbol symbol)
    {
        if (!_variables.TryGetValue((position, symbol.Name), out var slot))
            _variables.Add((position, symbol.Name), slot = NewSlot(symbol, position, shared: true));
        return slot;
    }

    private int NewSlot(ISymbol symbol, int position, bool shared)
    {
        _shared.Add(shared);
        _slots.Add((symbol, position));
        return _slots.Count - 1;
    }

    private void SetVariable(int slot, Value value)
    {
        _notes.Assigned.TryAdd(slot, _state.Get(slot));
        _state.Set(slot, _weak > 0 ? _values.Union(_state.Get(slot), value) : value);
    }

    private static ITypeSymbol? TypeOf(ISymbol symbol) => symbol switch
    {
        IFieldSymbol field => field.Type,
        ILocalSymbol local => local.Type,
        IParameterSymbol parameter => parameter.Type,
        IPropertySymbol property => property.Type,
        _ => null,
    };
}
