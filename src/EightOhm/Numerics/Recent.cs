namespace EightOhm.Numerics;

/// <summary>The last few answers of a long calculation, by what they were asked for; both must be immutable. Safe for several threads.</summary>
/// <param name="most">How many are kept; the one that was longest not asked for leaves.</param>
internal sealed class Recent<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly Lock gate = new();
    private readonly List<(TKey Key, TValue Value)> kept = new(most);

    /// <summary>The kept answer, else a new one. What the calculation throws is not kept.</summary>
    public TValue Get(TKey key, Func<TKey, TValue> calculate)
    {
        lock (gate)
        {
            var place = kept.FindIndex(k => k.Key.Equals(key));
            if (place >= 0)
            {
                var found = kept[place];
                kept.RemoveAt(place);
                kept.Add(found);
                return found.Value;
            }
        }

        // Not under the lock: it may take long, be ended, or ask for others.
        var value = calculate(key);
        lock (gate)
        {
            if (kept.Count == most)
                kept.RemoveAt(0);
            kept.Add((key, value));
        }

        return value;
    }
}
