using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace EightOhm.Cells.Sources;

/// <summary>Functions of cells: followed at each call, to a fixpoint where they call themselves, and asked when they are values.</summary>
internal sealed partial class Interpreter
{
    private readonly List<Closure> _closures = [];
    private readonly Dictionary<(ISymbol Method, int Lexical, Value This, Frame? Begun), int> _closureIds = new(new ClosureKeys());
    private readonly Dictionary<(ISymbol Method, int Lexical), Active> _active = new(new FunctionKeys());
    private readonly List<Active> _nesting = [];
    private readonly Dictionary<(IOperation Body, int Lexical, Value This, string Arguments, Value Reason, int State, int Heap), (Value Value, Value Evaluated, Value Threw)> _memo = [];
    private readonly Dictionary<(Value Given, Value Reason, int State, int Heap), (Value Value, Value Evaluated)> _asked = [];

    // Goes up whenever a result is used that is not whole yet.
    private int _partial;
    private readonly Dictionary<ITypeSymbol, bool> _calledBack = new(SymbolEqualityComparer.Default);

    // A call that has not come back yet.
    private sealed class Active(Frame frame, State entry, Value[] arguments, Value self, Value reason)
    {
        public Frame Frame { get; } = frame;

        public State Entry { get; } = entry;

        public Value[] Arguments { get; } = arguments;

        public Value This { get; set; } = self;

        public Value Reason { get; set; } = reason;

        public Value Result { get; set; }

        public State Exit { get; init; } = new State([]);

        public bool Again { get; set; }

        public bool CalledItself { get; set; }

        // Whether a call further out, whose result is not whole yet, went in.
        public bool Unfinished { get; set; }
    }

    /// <summary>Runs a function's body.</summary>
    private Value Run(IMethodSymbol method, IOperation body, Frame? lexical, Value self, IReadOnlyList<Value> arguments, SyntaxNode site, Frame caller, IReadOnlyList<(Frame Frame, IOperation Target)?>? references)
    {
        if (_active.TryGetValue((method, lexical?.Id ?? -1), out var running))
            return CallItself(running, self, arguments);
        var reason = Deciding();
        var key = (body, lexical?.Id ?? -1, self, string.Join(',', arguments.Select(a => a.Id)), reason, _state.Version, _heap.Version);
        if (references is null && _memo.TryGetValue(key, out var known))
        {
            Note(known.Evaluated);
            Thrown(known.Threw, reason);
            return known.Value;
        }

        if (_nesting.Count > MostDepth)
            throw new CannotReadException($"its calls lie too deep in each other at {method.Name}");
        var frame = FrameOf(caller, site, method, lexical);
        var (outer, control, seen) = (_frame, _control, _evaluated);
        var active = new Active(frame, _state.Copy(), [.. arguments], self, reason) { Exit = new State(_shared) { IsDead = true } };
        _active.Add((method, lexical?.Id ?? -1), active);
        _nesting.Add(active);
        _evaluated = default;
        try
        {
            for (var round = 0; ; round++)
            {
                if (round > MostRounds)
                    throw new CannotReadException($"{method.Name} does not settle");
                Round(method, body, active, references);
                if (!active.Again)
                    break;
            }
        }
        finally
        {
            _active.Remove((method, lexical?.Id ?? -1));
            _nesting.RemoveAt(_nesting.Count - 1);
            (_frame, _control) = (outer, control);
        }

        Thrown(frame.Threw, reason);
        var inner = _evaluated;
        _evaluated = _values.Union(seen, inner);
        _state = active.Exit;
        // The rest of it may run later.
        if (method.IsAsync)
            Maybe(active.Entry.Copy());
        if (references is null && !active.Unfinished && !_state.IsDead && _state.Version == key.Item6 && _heap.Version == key.Item7)
            _memo[key] = (active.Result, inner, frame.Threw);
        return active.Result;
    }

    // What decided over a throw in a call decides over the rest of who called.
    private void Thrown(Value threw, Value reason)
    {
        if (_values.Contains(reason, threw))
            return;
        _frame.Residual = _values.Union(_frame.Residual, threw);
        _frame.Threw = _values.Union(_frame.Threw, threw);
    }

    private void Round(IMethodSymbol method, IOperation body, Active active, IReadOnlyList<(Frame Frame, IOperation Target)?>? references)
    {
        active.Again = false;
        var frame = active.Frame;
        frame.Begin();
        frame.This = active.This;
        (_frame, _state, _control) = (frame, active.Entry.Copy(), active.Reason);
        for (var i = 0; i < method.Parameters.Length; i++)
        {
            if (references is not null && i < references.Count && references[i] is { } reference)
                frame.Aliases[method.Parameters[i]] = reference;
            var slot = Declare(frame, method.Parameters[i]);
            var value = i < active.Arguments.Length ? active.Arguments[i] : default;
            _state.Set(slot, method.IsIterator || _code.IsCaptured(method.Parameters[i]) ? _values.Union(_state.Get(slot), value) : value);
        }

        // An iterator runs when it is enumerated.
        if (!method.IsIterator)
            Eval(body);
        var grown = active.Exit.Join(_state, _values) | active.Exit.Join(frame.Exit, _values);
        var result = _values.Union(active.Result, Given(method, body, frame));
        // What it gave and left before is what its own calls of itself were told.
        if (active.CalledItself && (grown || result != active.Result))
            active.Again = true;
        active.Result = result;
    }

    private Value Given(IMethodSymbol method, IOperation body, Frame frame)
    {
        if (!method.IsIterator && !method.IsAsync)
            return method.ReturnsVoid ? default : Settle(method.ReturnType, frame.Returned);
        // It runs on when it is awaited or enumerated, with what its variables hold then.
        var made = _heap.Make(body.Syntax, frame, _cell, null);
        _heap.Add(made, frame.Returned);
        return _values.Union(_values.Of(new ObjectAtom(made.Id)), Closure(method, body, frame.Lexical, frame.This, frame));
    }

    private Value CallItself(Active running, Value self, IReadOnlyList<Value> arguments)
    {
        var again = running.Entry.Join(_state, _values);
        for (var i = 0; i < running.Arguments.Length && i < arguments.Count; i++)
        {
            var sum = _values.Union(running.Arguments[i], arguments[i]);
            again |= sum != running.Arguments[i];
            running.Arguments[i] = sum;
        }

        var (this_, reason) = (_values.Union(running.This, self), _values.Union(running.Reason, Deciding()));
        again |= this_ != running.This || reason != running.Reason;
        (running.This, running.Reason, running.CalledItself) = (this_, reason, true);
        running.Again |= again;
        _partial++;
        for (var i = _nesting.Count - 1; i >= 0 && _nesting[i] != running; i--)
            _nesting[i].Unfinished = true;
        _state.Join(running.Exit, _values);
        return running.Result;
    }

    // An iterator that was called before, run where it is enumerated.
    private Value Resume(Closure closure, Frame begun)
    {
        if (_active.ContainsKey((closure.Method, -2 - begun.Id)))
        {
            _partial++;
            _nesting.ForEach(call => call.Unfinished = true);
            return default;
        }

        var (outer, control) = (_frame, _control);
        var before = _state.Copy();
        var reason = Deciding();
        var active = new Active(begun, _state, [], closure.This, reason);
        _active.Add((closure.Method, -2 - begun.Id), active);
        begun.Begin();
        (_frame, _control) = (begun, reason);
        Eval(closure.Body);
        _active.Remove((closure.Method, -2 - begun.Id));
        (_frame, _control) = (outer, control);
        _state.Join(begun.Exit, _values);
        Maybe(before);
        return _values.Union(begun.Returned, begun.Yielded);
    }

    private Value Function(IMethodSymbol method, IOperation? body, Frame? lexical) => Closure(method, body, lexical, _frame.This, null);

    private Value MethodGroup(IMethodReferenceOperation group)
    {
        var method = group.Method.OriginalDefinition;
        if (method.MethodKind == MethodKind.LocalFunction)
            return _state.Get(SlotOf(method));
        return Closure(method, null, null, method.ContainingType.IsScriptClass ? default : Eval(group.Instance), null);
    }

    private Value Closure(IMethodSymbol method, IOperation? body, Frame? lexical, Value self, Frame? begun)
    {
        var key = (method, lexical?.Id ?? -1, self, begun);
        if (!_closureIds.TryGetValue(key, out var id))
        {
            _closureIds.Add(key, id = _closures.Count);
            _closures.Add(new(id, method, body, lexical, self, begun));
        }

        return _values.Of(new ClosureAtom(id));
    }

    /// <summary>What a function gives when it is called with anything out of a pool. It may have run or not.</summary>
    /// <param name="closure">The function.</param>
    /// <param name="flat">The entries and strings in the pool: what a plain parameter gets.</param>
    /// <param name="pool">The pool.</param>
    private Value Ask(Closure closure, Value flat, Value pool)
    {
        var before = _state.Copy();
        var arguments = closure.Method.Parameters
            .Select(p => !_kinds.IsPlain(p.Type) ? pool : p.Type.SpecialType == SpecialType.System_String ? flat : Settled(flat)).ToList();
        var value = CallFunction(closure, arguments, (closure.Body ?? _code.Body(closure.Method))?.Syntax ?? _code.Tree(_cell).GetRoot(), closure.Lexical ?? FrameOf(null, null, null, null));
        Maybe(before);
        return value;
    }

    /// <summary>What all functions that can be reached from a value give, each fed with what the others give.</summary>
    private Value AskAll(Value given)
    {
        if (_values.IsSettled(given))
            return default;
        var key = (given, Deciding(), _state.Version, _heap.Version);
        if (_asked.TryGetValue(key, out var known))
        {
            Note(known.Evaluated);
            return known.Value;
        }

        var (partial, residual, threw, seen) = (_partial, _frame.Residual, _frame.Threw, _evaluated);
        _evaluated = default;
        known = (AskAllAnew(given), _evaluated);
        _evaluated = _values.Union(seen, _evaluated);
        if (partial == _partial && (residual, threw) == (_frame.Residual, _frame.Threw) && !_state.IsDead && key.Item3 == _state.Version && key.Item4 == _heap.Version)
            _asked[key] = known;
        return known.Value;
    }

    private Value AskAllAnew(Value given)
    {
        var sum = default(Value);
        for (var round = 0; round < MostRounds; round++)
        {
            var (before, heap, state) = (sum, _heap.Version, _state.Version);
            var all = Reach(_values.Union(given, sum));
            var functions = _values.Atoms(all).OfType<ClosureAtom>().Select(c => _closures[c.Id]).ToList();
            if (functions.Count == 0)
                return sum;
            var (flat, pool) = (Flat(all), Enumerated(all));
            foreach (var function in functions)
                sum = _values.Union(sum, Ask(function, flat, function.Method.Parameters.Any(p => MayBeFunction(p.Type)) ? all : pool));
            if (sum == before && heap == _heap.Version && state == _state.Version)
                break;
        }

        return sum;
    }

    /// <summary>Makes an object of a cell's type: its initialisers, then its constructor.</summary>
    private void Construct(HeapObject made, INamedTypeSymbol type, IMethodSymbol? constructor, IReadOnlyList<Value> arguments, SyntaxNode site, IReadOnlyList<(Frame Frame, IOperation Target)?>? references)
    {
        var self = _values.Of(new ObjectAtom(made.Id));
        var all = arguments.Aggregate(Deciding(), _values.Union);
        if (type.BaseType is { SpecialType: SpecialType.None } parent)
        {
            // What a header hands on to its parent is not followed: it can be anything.
            foreach (var shared in _statics.Where(s => _code.IsOfACell(s.Key)))
                all = _values.Union(all, _state.Get(shared.Value));
            if (_code.IsOfACell(parent))
                Construct(made, parent, parent.InstanceConstructors.FirstOrDefault(c => c.Parameters.IsEmpty), [all], site, null);
            else
                _heap.Add(made, all);
        }

        var header = Header(type);
        var byHeader = constructor is not null && SymbolEqualityComparer.Default.Equals(constructor.OriginalDefinition, header?.OriginalDefinition);
        for (var i = 0; i < header?.Parameters.Length; i++)
            _heap.Add(made, header.Parameters[i].Name, byHeader && i < arguments.Count ? _values.Union(arguments[i], Deciding()) : all);

        var outer = _frame;
        _frame = FrameOf(outer, site, type, null);
        _frame.Begin();
        _frame.This = self;
        foreach (var member in type.GetMembers().Where(m => m is { IsStatic: false } and (IFieldSymbol or IPropertySymbol)))
        {
            if (_code.Initial(member.OriginalDefinition) is { } initial)
                _heap.Add(made, NameOf(member), Settle(TypeOf(member), Eval(initial)));
        }

        _frame = outer;
        if (constructor is not null && _code.Body(constructor) is not null)
            Call(constructor, self, arguments, site, references);
    }

    // A constructor that begins with another: of the same object.
    private Value ConstructAlso(IMethodSymbol constructor, IReadOnlyList<Value> arguments, SyntaxNode site, IReadOnlyList<(Frame Frame, IOperation Target)?>? references)
    {
        foreach (var made in Objects(_frame.This))
        {
            if (_code.IsOfACell(constructor.ContainingType))
                Construct(made, constructor.ContainingType, constructor, arguments, site, references);
            else
                _heap.Add(made, arguments.Aggregate(default(Value), _values.Union));
        }

        return default;
    }

    // Whether a library may call it back: it stands in for a type or an interface of a library.
    private bool IsCalledBack(ITypeSymbol type)
    {
        if (!_calledBack.TryGetValue(type, out var back))
        {
            _calledBack[type] = back = _code.IsOfACell(type) && type.TypeKind == TypeKind.Class
                && (type.BaseType is { SpecialType: SpecialType.None } || type.Interfaces.Any(i => !(i.Name == "IEquatable" && type.IsRecord)));
        }

        return back;
    }

    /// <summary>What an object may read besides what it holds: a member of a cell's type can read a static one, or a record of its own.</summary>
    private Value Beyond(HeapObject made)
    {
        if (made.Type is not { } type || !_code.IsOfACell(type))
            return default;
        var names = _code.WordsOf(type);
        return names.Contains("DesignRecord") || _statics.Keys.Any(s => _code.IsOfACell(s) && names.Contains(s.Name))
            ? _values.Of(new EveryEntryAtom(RecordAtom.Unknown))
            : default;
    }

    private sealed class FunctionKeys : IEqualityComparer<(ISymbol Method, int Lexical)>
    {
        public bool Equals((ISymbol Method, int Lexical) x, (ISymbol Method, int Lexical) y) => x.Lexical == y.Lexical && SymbolEqualityComparer.Default.Equals(x.Method, y.Method);

        public int GetHashCode((ISymbol Method, int Lexical) key) => HashCode.Combine(SymbolEqualityComparer.Default.GetHashCode(key.Method), key.Lexical);
    }

    private sealed class ClosureKeys : IEqualityComparer<(ISymbol Method, int Lexical, Value This, Frame? Begun)>
    {
        public bool Equals((ISymbol Method, int Lexical, Value This, Frame? Begun) x, (ISymbol Method, int Lexical, Value This, Frame? Begun) y) =>
            x.Lexical == y.Lexical && x.This == y.This && ReferenceEquals(x.Begun, y.Begun) && SymbolEqualityComparer.Default.Equals(x.Method, y.Method);

        public int GetHashCode((ISymbol Method, int Lexical, Value This, Frame? Begun) key) => HashCode.Combine(SymbolEqualityComparer.Default.GetHashCode(key.Method), key.Lexical, key.This, key.Begun?.Id);
    }
}
