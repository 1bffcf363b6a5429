namespace EightOhm.Tests.Devices;

/// <summary>The invented cards beside the notebooks.</summary>
internal static class Cards
{
    public static string Folder { get; } = Path.Combine(Root(), "notebooks", "cards");

    public static string Output { get; } = Path.Combine(Folder, "tern-output-npn.json");

    public static string OutputPnp { get; } = Path.Combine(Folder, "tern-output-pnp.json");

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "EightOhm.slnx")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
