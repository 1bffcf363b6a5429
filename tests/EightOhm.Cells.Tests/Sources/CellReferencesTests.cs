using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Tests.Sources;

/// <summary>What cells are compiled against in this process.</summary>
public sealed class CellReferencesTests
{
    [Fact]
    public void All_that_the_process_was_started_with_is_among_them_and_read_once()
    {
        var own = CellReferences.OfThisProcess();
        var all = own.WithAll();
        var platform = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(File.Exists);
        Assert.Equal(platform.Order(StringComparer.Ordinal), Files(all.References).Order(StringComparer.Ordinal));
        Assert.True(own.References.Count < all.References.Count / 3);

        var now = CellReferences.OfWhatIsLoaded();
        Assert.Subset(now.References.ToHashSet(), own.References.ToHashSet());
        Assert.Subset(now.WithAll().References.ToHashSet(), all.References.ToHashSet());
    }

    private static IEnumerable<string> Files(IEnumerable<MetadataReference> references) => references.Select(r => Assert.IsAssignableFrom<PortableExecutableReference>(r).FilePath!);
}
