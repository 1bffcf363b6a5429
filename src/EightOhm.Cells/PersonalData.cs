namespace EightOhm.Cells;

/// <summary>Where EightOhm keeps what belongs to a person and not to a design.</summary>
internal static class PersonalData
{
    /// <summary>The folder, which may not be there yet; null on a system that names none.</summary>
    public static string? Folder =>
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } data ? Path.Combine(data, "eightohm") : null;
}
