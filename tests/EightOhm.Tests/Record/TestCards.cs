using EightOhm.Tests.Devices;

namespace EightOhm.Tests.Record;

/// <summary>Invented cards in a test's own folder, to be changed and removed.</summary>
internal static class TestCards
{
    /// <summary>Puts a copy of a card into the folder and gives its name there.</summary>
    public static string Demo(TestFolder folder, string name = "npn.json")
    {
        File.Copy(Cards.Output, Path(folder, name), overwrite: true);
        return name;
    }

    public static string Path(TestFolder folder, string name) => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(folder.File)!, name);

    public static void Edit(TestFolder folder, string name, string old, string with)
    {
        var text = File.ReadAllText(Path(folder, name));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(Path(folder, name), text.Replace(old, with, StringComparison.Ordinal));
    }
}
