using System.IO.Compression;
using System.Xml.Linq;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>The packages as <c>dotnet pack</c> makes them.</summary>
[Collection(SharedHosts.Name)]
public sealed class PackageTests(JupyterFixture jupyter)
{
    [Fact]
    public void Pack_makes_the_three_packages_and_no_other() =>
        Assert.Equal(["EightOhm.", "EightOhm.Display.", "EightOhm.Notebook."],
            Directory.EnumerateFiles(jupyter.Feed).Select(path => Path.GetFileName(path).Replace($"{Clone.Version}.nupkg", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("EightOhm", "MathNet.Numerics UnitsNet")]
    [InlineData("EightOhm.Display", "EightOhm Plotly.NET")]
    [InlineData("EightOhm.Notebook", "EightOhm.Display")]
    public void A_package_asks_for_its_neighbours_only(string package, string neighbours)
    {
        using var archive = Open(package);
        using var nuspec = archive.Entries.Single(entry => entry.FullName == $"{package}.nuspec").Open();
        var asked = XDocument.Load(nuspec).Descendants().Where(element => element.Name.LocalName == "dependency").Select(element => element.Attribute("id")!.Value);
        Assert.Equal(neighbours, string.Join(' ', asked.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("EightOhm")]
    [InlineData("EightOhm.Display")]
    [InlineData("EightOhm.Notebook")]
    public void A_package_brings_one_assembly_with_its_documentation_beside_it(string package)
    {
        using var archive = Open(package);
        Assert.Equal([$"lib/net10.0/{package}.dll", $"lib/net10.0/{package}.xml"],
            archive.Entries.Select(entry => entry.FullName).Where(name => name.StartsWith("lib/", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_extension_folder_holds_the_script_alone()
    {
        // The host instantiates what it finds in any assembly there.
        using var archive = Open("EightOhm.Notebook");
        Assert.Equal("interactive-extensions/dotnet/extension.dib",
            Assert.Single(archive.Entries, entry => entry.FullName.StartsWith("interactive-extensions", StringComparison.Ordinal)).FullName);
    }

    [Fact]
    public void Packing_forgets_the_unpacked_copy_of_the_same_version() =>
        Assert.False(File.Exists(jupyter.StaleCopy), "A package unpacked before would shadow the one just built.");

    private ZipArchive Open(string package) => ZipFile.OpenRead(Path.Combine(jupyter.Feed, $"{package}.{Clone.Version}.nupkg"));
}
