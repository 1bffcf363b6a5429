using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Tests.Record;

public sealed class RecordNameTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("names");

    public void Dispose() => _home.Delete(recursive: true);

    [Theory]
    [InlineData("tern-100", "record.json", "Tern 100")]
    [InlineData("my_small amp", "record.json", "My small amp")]
    [InlineData("-", "record.json", "record")]
    [InlineData("tern-100", "amp.json", "amp")]
    public void A_record_that_nobody_named_is_called_by_its_place(string folder, string file, string name)
    {
        var design = DesignRecord.Open(Path.Combine(_home.CreateSubdirectory(folder).FullName, file));
        Assert.Equal(name, design.Name);
        design.Target("P", 100.W);
        Assert.Contains($"\"design\": \"{name}\"", File.ReadAllText(design.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kept_name_stays_when_the_folder_is_another()
    {
        var design = DesignRecord.Open(Path.Combine(_home.CreateSubdirectory("tern-100").FullName, "record.json"));
        design.Target("P", 100.W);
        var other = Path.Combine(_home.CreateSubdirectory("copy").FullName, "record.json");
        File.Copy(design.Path, other);
        Assert.Equal("Tern 100", DesignRecord.Open(other).Name);
    }

    [Fact]
    public void A_file_without_a_name_takes_its_folder_s()
    {
        var file = Path.Combine(_home.CreateSubdirectory("hall-amp").FullName, "record.json");
        File.WriteAllText(file, """{ "format": "eightohm-record", "version": 2, "entries": [], "requirements": [] }""");
        Assert.Equal("Hall amp", DesignRecord.Open(file).Name);
    }

    [Fact]
    public void A_runner_s_copy_is_called_as_the_design_at_home()
    {
        var home = _home.CreateSubdirectory("tern-100").FullName;
        using (RecordFolder.Use(_home.CreateSubdirectory("run-1234").FullName, home))
            Assert.Equal("Tern 100", DesignRecord.Open("record.json").Name);
    }
}
