namespace EightOhm.Browser.Tests.Hosting;

/// <summary>A fresh clone of the commit that this working copy will become, restored with an empty package cache.</summary>
internal static class FreshClone
{
    private static readonly Lazy<Task<(string Said, string Packages)>> Made = new(() => Task.Run(Restore));

    /// <summary>What the restoring said, and the folder of the packages that it fetched; the first that asks makes it.</summary>
    public static Task<(string Said, string Packages)> Restored => Made.Value;

    private static async Task<(string Said, string Packages)> Restore()
    {
        var burrow = new Burrow(emptyPackageCache: true);
        var clone = Directory.CreateDirectory(burrow.Below("clone")).FullName;
        // What is here and not ignored.
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
        return (await Command.Must(clone, burrow.Environment, TimeSpan.FromMinutes(10), "dotnet", "restore"), burrow.Packages);
    }
}
