using System.Runtime.InteropServices;

namespace EightOhm.Cells.Sources;

/// <summary>A set of atoms, kept once each: equal sets have equal numbers.</summary>
internal readonly record struct Value(int Id)
{
    public bool IsEmpty => Id == 0;
}

/// <summary>All sets of atoms of a notebook. A set is an ascending list of atom numbers; the union of two is remembered.</summary>
internal sealed class Values
{
    private readonly List<Atom> _atoms = [];
    private readonly Dictionary<Atom, int> _numbers = [];
    private readonly List<int[]> _sets = [[]];
    private readonly List<bool> _settled = [true];
    private readonly Dictionary<int[], int> _known = new(new SameNumbers()) { [[]] = 0 };
    private readonly Dictionary<(int, int), int> _unions = [];

    /// <summary>The atom of a number.</summary>
    public Atom this[int number] => _atoms[number];

    /// <summary>The numbers of a set's atoms, ascending.</summary>
    public ReadOnlySpan<int> Numbers(Value value) => _sets[value.Id];

    /// <summary>The set of many atoms at once, by their numbers: one new set, where unions one by one would make as many.</summary>
    public Value Of(IReadOnlySet<int> numbers)
    {
        int[] set = [.. numbers];
        Array.Sort(set);
        return Keep(set);
    }

    /// <summary>The set of one atom.</summary>
    public Value Of(Atom atom) => Keep([NumberOf(atom)]);

    /// <summary>The number of an atom.</summary>
    public int NumberOf(Atom atom)
    {
        ref var number = ref CollectionsMarshal.GetValueRefOrAddDefault(_numbers, atom, out var there);
        if (!there)
        {
            number = _atoms.Count;
            _atoms.Add(atom);
        }

        return number;
    }

    /// <summary>The set of several atoms.</summary>
    public Value Of(IEnumerable<Atom> atoms) => atoms.Aggregate(default(Value), (sum, atom) => Union(sum, Of(atom)));

    /// <summary>Both together.</summary>
    public Value Union(Value a, Value b)
    {
        if (a == b || b.IsEmpty)
            return a;
        if (a.IsEmpty)
            return b;
        var key = a.Id < b.Id ? (a.Id, b.Id) : (b.Id, a.Id);
        if (!_unions.TryGetValue(key, out var union))
            _unions[key] = union = Keep(Merged(_sets[a.Id], _sets[b.Id])).Id;
        return new(union);
    }

    /// <summary>The atoms of a set.</summary>
    public IEnumerable<Atom> Atoms(Value value)
    {
        foreach (var number in _sets[value.Id])
            yield return _atoms[number];
    }

    /// <summary>The part of a set that passes a test; the same set when all of it does.</summary>
    public Value Where(Value value, Func<Atom, bool> passes)
    {
        var set = _sets[value.Id];
        var kept = Array.FindAll(set, number => passes(_atoms[number]));
        return kept.Length == set.Length ? value : Keep(kept);
    }

    /// <summary>Whether a set holds entries and requirements only: nothing that can change under it.</summary>
    public bool IsSettled(Value value) => _settled[value.Id];

    /// <summary>Whether the second set adds nothing to the first.</summary>
    public bool Contains(Value all, Value part) => Union(all, part) == all;

    private Value Keep(int[] set)
    {
        if (!_known.TryGetValue(set, out var id))
        {
            id = _sets.Count;
            _known.Add(set, id);
            _sets.Add(set);
            _settled.Add(set.All(number => _atoms[number] is EntryAtom or EveryEntryAtom or RequirementAtom));
        }

        return new(id);
    }

    private static int[] Merged(int[] a, int[] b)
    {
        var merged = new List<int>(a.Length + b.Length);
        int i = 0, j = 0;
        while (i < a.Length && j < b.Length)
        {
            var (x, y) = (a[i], b[j]);
            merged.Add(Math.Min(x, y));
            i += x <= y ? 1 : 0;
            j += y <= x ? 1 : 0;
        }

        merged.AddRange(a.AsSpan(i));
        merged.AddRange(b.AsSpan(j));
        return [.. merged];
    }

    private sealed class SameNumbers : IEqualityComparer<int[]>
    {
        public bool Equals(int[]? x, int[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(int[] set)
        {
            var hash = default(HashCode);
            hash.AddBytes(MemoryMarshal.AsBytes(set.AsSpan()));
            return hash.ToHashCode();
        }
    }
}
