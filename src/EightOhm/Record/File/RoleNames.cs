namespace EightOhm.Record;

/// <summary>The roles' names in a file; they stay when the code is renamed.</summary>
internal static class RoleNames
{
    private static readonly Dictionary<string, EntryRole> Roles = new(StringComparer.Ordinal)
    {
        ["target"] = EntryRole.Target,
        ["choice"] = EntryRole.Choice,
        ["assumption"] = EntryRole.Assumption,
        ["part"] = EntryRole.Part,
        ["derived"] = EntryRole.Derived,
        ["computed"] = EntryRole.Computed,
    };

    public static IEnumerable<string> All => Roles.Keys;

    public static string Of(EntryRole role) => Roles.First(r => r.Value == role).Key;

    public static EntryRole? Find(string name) => Roles.TryGetValue(name, out var role) ? role : null;
}
