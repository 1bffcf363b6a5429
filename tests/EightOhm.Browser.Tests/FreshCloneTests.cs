using EightOhm.Browser.Tests.Hosting;

namespace EightOhm.Browser.Tests;

/// <summary>What the first minute with a fresh clone needs.</summary>
public sealed class FreshCloneTests
{
    [SkippableFact]
    public async Task Fresh_clone_restores_with_an_empty_package_cache_and_no_feed()
    {
        Needs.Patience();
        using var burrow = new Burrow(emptyPackageCache: true);
        var clone = Directory.CreateDirectory(burrow.Below("clone")).FullName;
        // What is here and not ignored: a fresh clone of the commit that this working copy will become.
        var listed = await Command.Must(Clone.Root, burrow.Environment, TimeSpan.FromMinutes(1),
            "git", "-c", "safe.directory=*", "-c", "core.quotePath=off", "ls-files", "--cached", "--others", "--exclude-standard");
        foreach (var name in listed.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var file = Path.Combine(Clone.Root, name);
            if (!File.Exists(file))
                continue;
            var target = Path.Combine(clone, name);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
        Assert.True(File.Exists(Path.Combine(clone, "EightOhm.slnx")));
        Assert.False(Directory.Exists(Path.Combine(clone, "artifacts")));

        var said = await Command.Must(clone, burrow.Environment, TimeSpan.FromMinutes(10), "dotnet", "restore");

        Assert.DoesNotContain("warning", said, StringComparison.OrdinalIgnoreCase);
        Assert.True(Directory.Exists(Path.Combine(burrow.Packages, "unitsnet")));
    }
}
