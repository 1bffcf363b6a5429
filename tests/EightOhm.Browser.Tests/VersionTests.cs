using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>Notebooks ask for the packages of this build.</summary>
public sealed class VersionTests
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void A_notebook_asks_for_the_version_of_the_build(string notebook)
    {
        var versions = NotebookNames.Read(notebook).PackageVersions.ToList();
        Assert.NotEmpty(versions);
        Assert.All(versions, version => Assert.Equal(Clone.Version, version));
    }
}
