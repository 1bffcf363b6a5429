using EightOhm.Devices;
using EightOhm.Tests.Docs;

namespace EightOhm.Tests.Devices;

/// <summary>The invented cards beside the notebooks.</summary>
internal static class Cards
{
    public static string Folder { get; } = Path.Combine(WrittenTable.Root(), "notebooks", "course", "cards");

    public static string Output { get; } = Path.Combine(Folder, "output-npn.json");

    public static string OutputPnp { get; } = Path.Combine(Folder, "output-pnp.json");

    /// <summary>A card of each kind beside transistors, for the tests alone: the design's may move.</summary>
    public static string Design { get; } = Path.Combine(WrittenTable.Root(), "tests", "EightOhm.Tests", "Devices", "Examples");

    /// <summary>The cards of the design.</summary>
    public static IEnumerable<DeviceCard> All => Directory.GetFiles(Path.Combine(WrittenTable.Root(), "notebooks", "tern-100", "cards"), "*.json").Select(DeviceCard.Load<DeviceCard>);

    /// <summary>One of the tests' own.</summary>
    public static T Of<T>(string role)
        where T : DeviceCard => DeviceCard.Load<T>(Path.Combine(Design, role + ".json"));
}
