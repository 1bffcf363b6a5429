using EightOhm.Explaining;

namespace EightOhm.Record;

/// <summary>The name that was probably meant.</summary>
public static class NearestName
{
    /// <summary>The nearest of the names; null when none is near.</summary>
    /// <param name="typed">What was typed; a Greek letter may stand for its word (φ_L for phi_L).</param>
    /// <param name="names">What could have been meant.</param>
    public static string? Of(string typed, IEnumerable<string> names)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(names);
        // A third of the letters wrong is another word, not a slip; one slip is forgiven even in a short name, as long as a letter is right.
        var allowed = Math.Min(Math.Max(1, typed.Length / 3), typed.Length - 1);
        return names.Select(name => (Name: name, Slips: Symbols.Split(name) == Symbols.Split(typed) ? 0 : Slips(typed.ToUpperInvariant(), name.ToUpperInvariant())))
            .Where(n => n.Slips <= allowed)
            .OrderBy(n => n.Slips).ThenBy(n => n.Name, StringComparer.Ordinal)
            .Select(n => n.Name).FirstOrDefault();
    }

    /// <summary>The edit distance with neighbours exchanged as one slip (optimal string alignment).</summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other.</param>
    public static int Slips(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var other = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + other);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
