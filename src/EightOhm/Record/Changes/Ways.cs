namespace EightOhm.Record;

/// <summary>The shortest ways from moved inputs to what hangs on them.</summary>
internal sealed class Ways
{
    private readonly RecordContent _content;
    private readonly Dictionary<string, string?> _first;
    private readonly IReadOnlyList<string> _moved;
    private readonly Dictionary<string, Dictionary<string, string?>> _fromOne = new(StringComparer.Ordinal);

    public Ways(RecordContent content, IReadOnlyList<string> moved)
    {
        (_content, _moved) = (content, moved);
        _first = From(moved);
    }

    /// <summary>The names from the nearest moved input to an entry; empty where none leads to it.</summary>
    public IReadOnlyList<string> To(string name) => Back(_first, name);

    /// <summary>For each moved input that leads to one of some entries, the names of the way.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Into(IReadOnlyList<string> targets)
    {
        var ways = new List<IReadOnlyList<string>>();
        foreach (var input in _moved)
        {
            // Many requirements are asked about one after the other.
            if (!_fromOne.TryGetValue(input, out var from))
                _fromOne[input] = from = From([input]);
            if (targets.Select(t => Back(from, t)).Where(w => w.Count > 0).MinBy(w => w.Count) is { } way)
                ways.Add(way);
        }

        return ways;
    }

    // Breadth first, each entry once: from whom it was reached.
    private Dictionary<string, string?> From(IReadOnlyList<string> starts)
    {
        var reached = new Dictionary<string, string?>(StringComparer.Ordinal);
        var waiting = new Queue<string>();
        foreach (var start in starts.Where(s => reached.TryAdd(s, null)))
            waiting.Enqueue(start);
        while (waiting.TryDequeue(out var name))
        {
            var users = _content.UsersOf(name).Concat(_content.OnAll.Where(u => _content.Find(u)!.From.Contains(name, StringComparer.Ordinal)));
            foreach (var user in users.OrderBy(u => _content.Find(u)!.Order).Where(u => reached.TryAdd(u, name)))
                waiting.Enqueue(user);
        }

        return reached;
    }

    private static List<string> Back(Dictionary<string, string?> reached, string name)
    {
        var way = new List<string>();
        if (!reached.ContainsKey(name))
            return way;
        for (string? at = name; at is not null; at = reached[at])
            way.Add(at);
        way.Reverse();
        return way;
    }
}
