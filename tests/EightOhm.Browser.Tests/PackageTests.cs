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
    public void Pack_makes_the_four_packages_and_the_tool() =>
        Assert.Equal(["EightOhm.", "EightOhm.Cells.", "EightOhm.Cli.", "EightOhm.Display.", "EightOhm.Notebook."],
            Directory.EnumerateFiles(jupyter.Feed).Select(path => Path.GetFileName(path).Replace($"{Clone.Version}.nupkg", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("EightOhm", "MathNet.Numerics UnitsNet")]
    [InlineData("EightOhm.Display", "EightOhm Plotly.NET")]
    [InlineData("EightOhm.Cells", "EightOhm.Display")]
    [InlineData("EightOhm.Notebook", "EightOhm.Cells")]
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
    [InlineData("EightOhm.Cells")]
    [InlineData("EightOhm.Notebook")]
    public void A_package_brings_one_assembly_with_its_documentation_beside_it(string package)
    {
        using var archive = Open(package);
        Assert.Equal([$"lib/net10.0/{package}.dll", $"lib/net10.0/{package}.xml"],
            archive.Entries.Select(entry => entry.FullName).Where(name => name.StartsWith("lib/", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("EightOhm")]
    [InlineData("EightOhm.Display")]
    [InlineData("EightOhm.Cells")]
    [InlineData("EightOhm.Notebook")]
    [InlineData("EightOhm.Cli")]
    public void A_package_says_what_it_is_and_where_it_comes_from(string package)
    {
        using var archive = Open(package);
        using var stream = archive.Entries.Single(entry => entry.FullName == $"{package}.nuspec").Open();
        var said = XDocument.Load(stream).Descendants().ToLookup(element => element.Name.LocalName);
        Assert.Equal("README.md", said["readme"].Single().Value);
        Assert.Equal("icon.png", said["icon"].Single().Value);
        Assert.NotEmpty(said["tags"].Single().Value);
        Assert.Equal(40, said["repository"].Single().Attribute("commit")!.Value.Length);
        Assert.All(["README.md", "icon.png"], file => Assert.Contains(archive.Entries, entry => entry.FullName == file));
        // The next major version of another's package, or another version of ours, breaks it.
        Assert.All(said["dependency"], asked => Assert.Matches(@"^\[.+(\)|\])$", asked.Attribute("version")!.Value));
    }

    [Theory]
    [InlineData("EightOhm", "analyzers/dotnet/cs/EightOhm.Generators.dll")]
    [InlineData("EightOhm", "analyzers/dotnet/cs/Microsoft.CodeAnalysis.CSharp.BannedApiAnalyzers.dll")]
    [InlineData("EightOhm", "buildTransitive/BannedSymbols.txt")]
    [InlineData("EightOhm", "buildTransitive/EightOhm.props")]
    [InlineData("EightOhm", "licenses/analyzers/LICENSE-analyzers.txt")]
    [InlineData("EightOhm.Display", "licenses/LICENSE-maths-font.txt")]
    [InlineData("EightOhm.Cli", "licenses/LICENSE-kernel.txt")]
    [InlineData("EightOhm.Cli", "tools/net10.0/any/feed/EightOhm.Cells.VERSION.nupkg")]
    [InlineData("EightOhm.Cli", "tools/net10.0/any/feed/EightOhm.Notebook.VERSION.nupkg")]
    public void A_package_holds(string package, string file)
    {
        using var archive = Open(package);
        Assert.Contains(archive.Entries, entry => entry.FullName == file.Replace("VERSION", Clone.Version, StringComparison.Ordinal));
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
