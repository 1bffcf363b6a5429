namespace EightOhm.Record;

/// <summary>What may have to be looked at again after a change, sources before those who hang on them.</summary>
internal static class EvaluationOrder
{
    /// <summary>The entries that a change of some can reach, themselves included.</summary>
    /// <param name="content">A content without circles.</param>
    /// <param name="moved">The entries that changed; some may be there no more.</param>
    public static IReadOnlyList<Slot> Of(RecordContent content, IReadOnlyCollection<string> moved)
    {
        var reached = Reached(content, moved);
        var open = new Dictionary<string, int>(reached.Count, StringComparer.Ordinal);
        foreach (var (name, slot) in reached)
            open[name] = slot.Before.Count(reached.ContainsKey);
        // Inputs first: what hangs on all of them has no other place in the order.
        var ready = new Queue<Slot>(reached.Values.Where(s => open[s.Name] == 0).OrderBy(s => s.HangsOnAll));
        var order = new List<Slot>(reached.Count);
        while (ready.TryDequeue(out var slot))
        {
            order.Add(slot);
            foreach (var user in content.UsersOf(slot.Name))
            {
                if (open.TryGetValue(user, out var left) && (open[user] = left - 1) == 0)
                    ready.Enqueue(reached[user]);
            }
        }

        return order;
    }

    private static Dictionary<string, Slot> Reached(RecordContent content, IReadOnlyCollection<string> moved)
    {
        var reached = new Dictionary<string, Slot>(StringComparer.Ordinal);
        var waiting = new Stack<string>(moved);
        while (waiting.TryPop(out var name))
        {
            if (content.Find(name) is not { } slot || !reached.TryAdd(name, slot))
                continue;
            foreach (var user in content.UsersOf(name))
                waiting.Push(user);
            if (slot.Role == EntryRole.Derived)
                continue;
            foreach (var user in content.OnAll)
                waiting.Push(user);
        }

        return reached;
    }
}
