using EightOhm.Devices;

namespace EightOhm.Tests.Devices;

/// <summary>The invented cards beside the notebooks.</summary>
internal static class Cards
{
    public static string Folder { get; } = Path.Combine(Root(), "notebooks", "course", "cards");

    public static string Output { get; } = Path.Combine(Folder, "output-npn.json");

    public static string OutputPnp { get; } = Path.Combine(Folder, "output-pnp.json");

    /// <summary>A card of each kind beside transistors, for the tests alone: the design's may move.</summary>
    public static string Design { get; } = Path.Combine(Root(), "tests", "EightOhm.Tests", "Devices", "Examples");

    /// <summary>The cards of the design.</summary>
    public static IEnumerable<DeviceCard> All => Directory.GetFiles(Path.Combine(Root(), "notebooks", "tern-100", "cards"), "*.json").Select(DeviceCard.Load<DeviceCard>);

    /// <summary>One of the tests' own.</summary>
    public static T Of<T>(string role)
        where T : DeviceCard => DeviceCard.Load<T>(Path.Combine(Design, role + ".json"));

    /// <summary>The repository.</summary>
    public static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "EightOhm.slnx")))
            folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
