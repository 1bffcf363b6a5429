namespace EightOhm.Cli.WhatIf;

/// <summary>The name that was probably meant.</summary>
internal static class NearestName
{
    /// <summary>The nearest of the names; null when none is near.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="names">What could have been meant.</param>
    public static string? Of(string typed, IEnumerable<string> names)
    {
        // A third of the letters wrong is another word, not a slip; one slip is forgiven even in the shortest name.
        var allowed = Math.Max(1, typed.Length / 3);
        return names.Select(name => (Name: name, Slips: Slips(typed.ToUpperInvariant(), name.ToUpperInvariant())))
            .Where(n => n.Slips <= allowed)
            .OrderBy(n => n.Slips).ThenBy(n => n.Name, StringComparer.Ordinal)
            .Select(n => n.Name).FirstOrDefault();
    }

    /// <summary>The edit distance with neighbours exchanged as one slip (optimal string alignment).</summary>
    public static int Slips(string a, string b)
    {
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
