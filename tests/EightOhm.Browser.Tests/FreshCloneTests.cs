using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>What the first minute with a fresh clone needs.</summary>
[Collection(Browsing.SharedHosts.Name)]
public sealed class FreshCloneTests
{
    [SkippableFact]
    public async Task Fresh_clone_restores_with_an_empty_package_cache_and_no_feed()
    {
        Needs.Patience();
        var (said, packages) = await FreshClone.Restored;

        Assert.DoesNotContain("warning", said, StringComparison.OrdinalIgnoreCase);
        Assert.True(Directory.Exists(Path.Combine(packages, "unitsnet")));
    }
}
