using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>An object made at one place in the cells: what went into it since, never taken out again.</summary>
internal sealed class HeapObject(int id, int madeIn, ITypeSymbol? type)
{
    public int Id { get; } = id;

    /// <summary>The position of the cell that made it.</summary>
    public int MadeIn { get; } = madeIn;

    /// <summary>Its very type, where a cell's own expression makes it; null where a library does.</summary>
    public ITypeSymbol? Type { get; } = type;

    /// <summary>What is in it, no matter where.</summary>
    public Value Whole { get; set; }

    /// <summary>What is in a member of its own, where the cells show the type's inside.</summary>
    public Dictionary<string, Value> Fields { get; } = [];

    /// <summary>All that is in it, in members of its own or no matter where.</summary>
    public Value Inside { get; set; }

    /// <summary>What it refers to without hanging on it: the record of a requirement, the names of conditions.</summary>
    public Value Aside { get; set; }

    /// <summary>Whether it is a sequence that runs its functions when it is enumerated, and holds nothing else of its own.</summary>
    public bool IsLazy { get; set; }

    /// <summary>The cells that changed it.</summary>
    public HashSet<int> ChangedIn { get; } = [];
}

/// <summary>The objects of a notebook. They only grow, so that any order of growing gives the same.</summary>
internal sealed class Heap(Values values)
{
    private readonly List<HeapObject> _objects = [new(0, -1, null)];
    private readonly Dictionary<(SyntaxNode Place, int Frame, string Part), HeapObject> _sites = [];

    /// <summary>Moves on whenever anything grows.</summary>
    public int Version { get; private set; }

    /// <summary>What cells write into files, the process and libraries' own memory, and may read back.</summary>
    public HeapObject World => _objects[0];

    public HeapObject this[int id] => _objects[id];

    public IReadOnlyList<HeapObject> All => _objects;

    /// <summary>The object that a place makes in a frame: one, however often it runs.</summary>
    public HeapObject Make(SyntaxNode place, Frame frame, int cell, ITypeSymbol? type, string part = "")
    {
        if (!_sites.TryGetValue((place, frame.Id, part), out var made))
        {
            made = new(_objects.Count, cell, type);
            _objects.Add(made);
            _sites.Add((place, frame.Id, part), made);
            Version++;
        }

        return made;
    }

    public void Add(HeapObject to, Value value)
    {
        var sum = values.Union(to.Whole, value);
        if (sum == to.Whole)
            return;
        to.Whole = sum;
        to.Inside = values.Union(to.Inside, value);
        Version++;
    }

    public void AddAside(HeapObject to, Value value)
    {
        var sum = values.Union(to.Aside, value);
        if (sum == to.Aside)
            return;
        to.Aside = sum;
        Version++;
    }

    public void Add(HeapObject to, string field, Value value)
    {
        var old = to.Fields.GetValueOrDefault(field);
        var sum = values.Union(old, value);
        if (sum == old && to.Fields.ContainsKey(field))
            return;
        to.Fields[field] = sum;
        to.Inside = values.Union(to.Inside, value);
        Version++;
    }

    /// <summary>Notes that a cell changed an object.</summary>
    public void Changed(HeapObject changed, int cell)
    {
        if (changed.ChangedIn.Add(cell))
            Version++;
    }
}
