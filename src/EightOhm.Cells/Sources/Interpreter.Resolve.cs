using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>From what a value holds to what it hangs on.</summary>
internal sealed partial class Interpreter
{
    private readonly Dictionary<Value, Value> _reached = [];
    private int _reachedAt = -1;
    private readonly Dictionary<(Value Value, Value Reason, int State, int Heap), (Value Flat, Value Evaluated)> _resolved = [];

    /// <summary>All that a value hangs on now: what its objects hold, what its functions read.</summary>
    /// <param name="value">The value.</param>
    /// <param name="texts">Whether strings in it are kept, as possible names.</param>
    private Value Resolve(Value value, bool texts = false)
    {
        if (_values.IsSettled(value))
            return value;
        RuntimeHelpers.EnsureSufficientExecutionStack();
        // What was looked up before is what it was, as long as nothing that a function could see has grown.
        var key = (value, Deciding(), _state.Version, _heap.Version);
        if (!_resolved.TryGetValue(key, out var known))
        {
            var (partial, residual, threw, seen) = (_partial, _frame.Residual, _frame.Threw, _evaluated);
            _evaluated = default;
            known = (Flattened(value), _evaluated);
            _evaluated = _values.Union(seen, _evaluated);
            if (partial == _partial && (residual, threw) == (_frame.Residual, _frame.Threw) && !_state.IsDead && key.Item3 == _state.Version && key.Item4 == _heap.Version)
                _resolved[key] = known;
        }
        else
        {
            Note(known.Evaluated);
        }

        return texts ? known.Flat : Settled(known.Flat);
    }

    private Value Flattened(Value value)
    {
        for (var round = 0; ; round++)
        {
            var heap = _heap.Version;
            var flat = FlattenedOnce(value);
            // A function may have put something into an object that had been looked through already.
            if (heap == _heap.Version || round > MostRounds)
                return flat;
        }
    }

    private Value FlattenedOnce(Value value)
    {
        var found = new Gathered(_values, _heap, Beyond);
        found.Take(value);
        var asked = 0;
        // Each function is asked with all that lies beside it, what the others give among that.
        for (var (flat, all) = (default(Value), default(Value)); asked < found.Functions.Count || found.Flat != flat || found.All != all;)
        {
            (flat, all) = (found.Flat, found.All);
            for (var i = 0; i < found.Functions.Count; i++)
            {
                var closure = _closures[found.Functions[i].Id];
                if (i >= asked || closure.Method.Parameters.Length > 0)
                    found.Take(Ask(closure, flat, all));
            }

            asked = Math.Max(asked, found.Functions.Count);
        }

        return found.Flat;
    }

    /// <summary>What a cell saw, when it has ended: no function is asked, because each was when it ran, and a record is not read by being held.</summary>
    private Value Seen(Value value)
    {
        var (seen, kept) = (new HashSet<int>(), new HashSet<int>());
        var open = new Stack<Value>([value]);
        while (open.TryPop(out var next))
        {
            foreach (var number in _values.Numbers(next))
            {
                if (!seen.Add(number))
                    continue;
                if (_values[number] is ObjectAtom made)
                    open.Push(_heap[made.Id].Inside);
                else if (_values[number] is EntryAtom or EveryEntryAtom or RequirementAtom)
                    kept.Add(number);
            }
        }

        return _values.Of(kept);
    }

    /// <summary>The entries and strings that lie in a value or in what it holds, no function asked.</summary>
    private Value Flat(Value value)
    {
        var found = new Gathered(_values, _heap, Beyond);
        found.Take(value);
        return found.Flat;
    }

    /// <summary>The value itself with all objects, functions and records that can be reached from it.</summary>
    private Value Reach(Value value)
    {
        if (_values.IsSettled(value))
            return value;
        // Objects only grow, so what was reached is reached as long as none has grown.
        if (_reachedAt != _heap.Version)
            _reached.Clear();
        _reachedAt = _heap.Version;
        if (!_reached.TryGetValue(value, out var reached))
            _reached[value] = reached = ReachAnew(value);
        return reached;
    }

    private Value ReachAnew(Value value)
    {
        var (seen, kept) = (new HashSet<int>(), new HashSet<int>());
        foreach (var number in _values.Numbers(value))
            kept.Add(number);
        var open = new Stack<Value>([value]);
        while (open.TryPop(out var next))
        {
            foreach (var number in _values.Numbers(next))
            {
                if (!seen.Add(number) || _values[number] is not (ObjectAtom or ClosureAtom or RecordAtom))
                    continue;
                kept.Add(number);
                if (_values[number] is ObjectAtom made)
                    open.Push(_heap[made.Id].Inside);
            }
        }

        return _values.Of(kept);
    }

    /// <summary>The objects that can be reached from a value, through functions' own variables too.</summary>
    public IReadOnlySet<int> Held(Value value, ICollection<Closure> functions)
    {
        var seen = new HashSet<Atom>();
        var open = new Stack<Value>([value]);
        while (open.TryPop(out var next))
        {
            foreach (var atom in _values.Atoms(next))
            {
                if (!seen.Add(atom))
                    continue;
                if (atom is ObjectAtom made)
                    open.Push(_heap[made.Id].Inside);
                if (atom is not ClosureAtom closure)
                    continue;
                functions.Add(_closures[closure.Id]);
                open.Push(_closures[closure.Id].This);
                for (var frame = _closures[closure.Id].Lexical; frame is not null; frame = frame.Lexical)
                {
                    foreach (var slot in frame.Slots.Values)
                        open.Push(_state.Get(slot));
                }
            }
        }

        return seen.OfType<ObjectAtom>().Select(o => o.Id).ToHashSet();
    }

    /// <summary>A value as a place of a type keeps it: a plain one settles.</summary>
    private Value Settle(ITypeSymbol? type, Value value) =>
        _kinds.IsPlain(type) ? Resolve(value, texts: type!.SpecialType == SpecialType.System_String) : value;

    /// <summary>What a new collection of a type holds when it is filled from a value: plain items settle.</summary>
    private Value Items(ITypeSymbol? type, Value value)
    {
        var items = Kinds.ItemsOf(type);
        return items.Count > 0 && items.All(_kinds.IsPlain)
            ? Resolve(value, texts: items.Any(i => i.SpecialType == SpecialType.System_String))
            : value;
    }

    /// <summary>One item of a collection, whichever.</summary>
    private Value ItemOf(Value collection, ITypeSymbol? type)
    {
        if (_kinds.IsPlain(type))
            return Resolve(collection, texts: type!.SpecialType == SpecialType.System_String);
        var answers = AskAll(collection);
        var items = _values.Union(collection, answers);
        items = type is null || MayBeFunction(type) ? items : Enumerated(items);
        var sum = Reach(items);
        foreach (var made in Objects(items))
            sum = _values.Union(sum, made.Whole);
        return type is not null && _kinds.IsVisible(type) ? Without<ClosureAtom>(sum) : sum;
    }

    // A function, or a sequence that waits.
    private static bool MayBeFunction(ITypeSymbol type) => Kinds.IsFunction(type) || type.SpecialType is SpecialType.System_Object or SpecialType.System_Delegate || type.TypeKind is TypeKind.TypeParameter or TypeKind.Dynamic or TypeKind.Interface;

    private static bool HoldsFunctions(ITypeSymbol? type) => Kinds.ItemsOf(type) is var items && (items.Count == 0 || items.Any(MayBeFunction));

    private Value Without<T>(Value value)
        where T : Atom => _values.Where(value, atom => atom is not T);

    private Value Only<T>(Value value)
        where T : Atom => _values.Where(value, atom => atom is T);

    private bool Has<T>(Value value)
        where T : Atom => _values.Atoms(value).Any(atom => atom is T);

    // What is found on the way through the objects of a value.
    private sealed class Gathered(Values values, Heap heap, Func<HeapObject, Value> beyond)
    {
        private readonly HashSet<int> _seen = [];
        private readonly HashSet<int> _flat = [];
        private readonly HashSet<int> _all = [];

        /// <summary>Entries and strings.</summary>
        public Value Flat => values.Of(_flat);

        /// <summary>All but functions.</summary>
        public Value All => values.Of(_all);

        public List<ClosureAtom> Functions { get; } = [];

        /// <summary>Takes in what lies in a value.</summary>
        /// <returns>Whether that was anything new.</returns>
        public bool Take(Value value)
        {
            var before = _seen.Count;
            var open = new Stack<Value>([value]);
            while (open.TryPop(out var next))
            {
                foreach (var number in values.Numbers(next))
                {
                    if (_seen.Add(number))
                        Take(number, open);
                }
            }

            return _seen.Count > before;
        }

        private void Take(int number, Stack<Value> open)
        {
            if (values[number] is ClosureAtom closure)
            {
                Functions.Add(closure);
                return;
            }

            _all.Add(number);
            if (values[number] is ObjectAtom made)
            {
                open.Push(heap[made.Id].Inside);
                open.Push(beyond(heap[made.Id]));
            }
            else
            {
                _flat.Add(values[number] is RecordAtom record ? values.NumberOf(new EveryEntryAtom(record)) : number);
            }
        }
    }
}
