using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;

namespace EightOhm.Notebook.Sources;

/// <summary>From what a value holds to what it hangs on.</summary>
internal sealed partial class Interpreter
{
    /// <summary>All that a value hangs on now: what its objects hold, what its functions read.</summary>
    /// <param name="value">The value.</param>
    /// <param name="texts">Whether strings in it are kept, as possible names.</param>
    private Value Resolve(Value value, bool texts = false)
    {
        if (_values.IsSettled(value))
            return value;
        RuntimeHelpers.EnsureSufficientExecutionStack();
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

        return texts ? found.Flat : _values.Where(found.Flat, atom => atom is EntryAtom or EveryEntryAtom or RequirementAtom);
    }

    /// <summary>What a cell saw, when it has ended: no function is asked, because each was when it ran, and a record is not read by being held.</summary>
    private Value Seen(Value value)
    {
        var seen = new HashSet<Atom>();
        var sum = default(Value);
        var open = new Stack<Value>([value]);
        while (open.TryPop(out var next))
        {
            foreach (var atom in _values.Atoms(next))
            {
                if (!seen.Add(atom))
                    continue;
                if (atom is ObjectAtom made)
                    open.Push(Inside(_heap[made.Id]));
                else if (atom is EntryAtom or EveryEntryAtom or RequirementAtom)
                    sum = _values.Union(sum, _values.Of(atom));
            }
        }

        return sum;
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
        var sum = value;
        var seen = new HashSet<int>();
        var open = new Stack<Value>([value]);
        while (open.TryPop(out var next))
        {
            foreach (var atom in _values.Atoms(next))
            {
                if (atom is ObjectAtom made && seen.Add(made.Id))
                    open.Push(Inside(_heap[made.Id]));
                if (atom is ObjectAtom or ClosureAtom or RecordAtom)
                    sum = _values.Union(sum, _values.Of(atom));
            }
        }

        return sum;
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
                    open.Push(Inside(_heap[made.Id]));
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

    private Value Inside(HeapObject made) => made.Fields.Values.Aggregate(made.Whole, _values.Union);

    private Value Without<T>(Value value)
        where T : Atom => _values.Where(value, atom => atom is not T);

    private Value Only<T>(Value value)
        where T : Atom => _values.Where(value, atom => atom is T);

    private bool Has<T>(Value value)
        where T : Atom => _values.Atoms(value).Any(atom => atom is T);

    // What is found on the way through the objects of a value.
    private sealed class Gathered(Values values, Heap heap, Func<HeapObject, Value> beyond)
    {
        private readonly HashSet<Atom> _seen = [];

        /// <summary>Entries and strings.</summary>
        public Value Flat { get; private set; }

        /// <summary>All but functions.</summary>
        public Value All { get; private set; }

        public List<ClosureAtom> Functions { get; } = [];

        public void Take(Value value)
        {
            var open = new Stack<Value>([value]);
            while (open.TryPop(out var next))
            {
                foreach (var atom in values.Atoms(next))
                {
                    if (!_seen.Add(atom))
                        continue;
                    if (atom is ClosureAtom closure)
                    {
                        Functions.Add(closure);
                        continue;
                    }

                    All = values.Union(All, values.Of(atom));
                    if (atom is ObjectAtom made)
                    {
                        open.Push(heap[made.Id].Fields.Values.Aggregate(heap[made.Id].Whole, values.Union));
                        open.Push(beyond(heap[made.Id]));
                    }
                    else
                    {
                        Flat = values.Union(Flat, values.Of(atom is RecordAtom record ? new EveryEntryAtom(record) : atom));
                    }
                }
            }
        }
    }
}
