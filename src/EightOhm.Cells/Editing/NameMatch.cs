namespace EightOhm.Cells.Editing;

/// <summary>How well a name fits the letters that are typed.</summary>
internal static class NameMatch
{
    /// <summary>0 for the whole name, 1 for its beginning, 2 for its beginning in other case, 3 for the beginnings of its words (vd: VoltageDensity), 4 for letters within; null when they are not in it.</summary>
    /// <param name="name">The name.</param>
    /// <param name="typed">The letters; none fit every name alike.</param>
    public static int? Of(string name, string typed) =>
        typed.Length == 0 ? 1
        : name == typed ? 0
        : name.StartsWith(typed, StringComparison.Ordinal) ? 1
        : name.StartsWith(typed, StringComparison.OrdinalIgnoreCase) ? 2
        : ByWords(name, 0, typed) ? 3
        : name.Contains(typed, StringComparison.OrdinalIgnoreCase) ? 4
        : null;

    // Each letter goes on with the word that the one before stands in, or begins a later one.
    private static bool ByWords(string name, int at, string typed)
    {
        if (typed.Length == 0)
            return true;
        for (var i = at; i < name.Length; i++)
        {
            if ((i == at && at > 0 || Begins(name, i)) && char.ToUpperInvariant(name[i]) == char.ToUpperInvariant(typed[0]) && ByWords(name, i + 1, typed[1..]))
                return true;
        }

        return false;
    }

    private static bool Begins(string name, int i) => i == 0 || name[i] != '_' && (name[i - 1] == '_' || (char.IsUpper(name[i]) && !char.IsUpper(name[i - 1])) || (char.IsDigit(name[i]) && !char.IsDigit(name[i - 1])));
}
