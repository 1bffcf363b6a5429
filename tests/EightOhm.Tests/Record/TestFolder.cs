using EightOhm.Record;

namespace EightOhm.Tests.Record;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("record");

    public string File => Path.Combine(_folder.FullName, "tern.json");

    public string Text => System.IO.File.ReadAllText(File);

    public string[] Names => [.. _folder.GetFiles().Select(f => f.Name).Order(StringComparer.Ordinal)];

    public DesignRecord Open() => DesignRecord.Open(File);

    public void Put(string text) => System.IO.File.WriteAllText(File, text);

    /// <summary>Replaces a piece of the file that must stand there, as a hand with an editor would.</summary>
    public void Edit(string old, string with)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        Put(Text.Replace(old, with, StringComparison.Ordinal));
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
