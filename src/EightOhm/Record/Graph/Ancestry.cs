namespace EightOhm.Record;

/// <summary>What an entry comes from, through everything between; each is looked at once.</summary>
internal static class Ancestry
{
    /// <summary>The entries that one comes from, without itself.</summary>
    public static IReadOnlyList<Slot> Of(RecordContent content, params IEnumerable<string> names)
    {
        var seen = new HashSet<string>(names, StringComparer.Ordinal);
        var found = new List<Slot>();
        var waiting = new Queue<string>(seen);
        while (waiting.TryDequeue(out var name))
        {
            foreach (var source in content.Find(name)?.From ?? [])
            {
                if (!seen.Add(source) || content.Find(source) is not { } slot)
                    continue;
                found.Add(slot);
                waiting.Enqueue(source);
            }
        }

        return found;
    }
}
