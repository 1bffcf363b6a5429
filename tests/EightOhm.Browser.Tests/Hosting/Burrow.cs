namespace EightOhm.Browser.Tests.Hosting;

/// <summary>
/// A temporary home for the kernel and Jupyter, so that neither sees what the user has, nor leaves anything with them:
/// Jupyter's trust database, the kernel's memory of resolved packages, an EightOhm of the same version unpacked earlier.
/// </summary>
internal sealed class Burrow : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-");

    public Burrow(bool emptyPackageCache = false)
    {
        var home = folder.CreateSubdirectory("home");
        var packages = folder.CreateSubdirectory("packages");
        LinkNuGetSettings(home);
        if (!emptyPackageCache)
            LinkPackages(packages);
        Environment = new Dictionary<string, string?>
        {
            ["HOME"] = home.FullName,
            ["DOTNET_CLI_HOME"] = home.FullName,
            ["NUGET_PACKAGES"] = packages.FullName,
            ["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1",
            ["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1",
            ["DOTNET_NOLOGO"] = "1",
            ["DOTNET_GENERATE_ASPNET_CERTIFICATE"] = "false",
            ["DOTNET_CLI_UI_LANGUAGE"] = "en",
            // A build or compiler server would keep this folder alive after the test, and `dotnet test` hands its own settings down.
            ["MSBUILDDISABLENODEREUSE"] = "1",
            ["UseSharedCompilation"] = "false",
            ["MSBuildSDKsPath"] = null,
            ["MSBUILD_EXE_PATH"] = null,
            ["MSBuildExtensionsPath"] = null,
            ["JUPYTER_DATA_DIR"] = Path.Combine(home.FullName, "jupyter", "data"),
            ["JUPYTER_CONFIG_DIR"] = Path.Combine(home.FullName, "jupyter", "config"),
            ["JUPYTER_RUNTIME_DIR"] = Path.Combine(home.FullName, "jupyter", "runtime"),
            ["IPYTHONDIR"] = Path.Combine(home.FullName, "ipython"),
        };
    }

    public string Root => folder.FullName;

    public IReadOnlyDictionary<string, string?> Environment { get; }

    public string Kernels => Path.Combine(Environment["JUPYTER_DATA_DIR"]!, "kernels");

    public string Packages => Environment["NUGET_PACKAGES"]!;

    public string Below(params string[] parts) => Path.Combine([Root, .. parts]);

    public void Dispose() => folder.Delete(recursive: true);

    private static string UserHome => System.Environment.GetFolderPath(System.Environment.SpecialFolder.UserProfile);

    // The machine's own package sources stand in the user's settings.
    private static void LinkNuGetSettings(DirectoryInfo home)
    {
        var settings = Path.Combine(UserHome, ".nuget", "NuGet");
        if (Directory.Exists(settings))
            Directory.CreateSymbolicLink(Path.Combine(home.CreateSubdirectory(".nuget").FullName, "NuGet"), settings);
    }

    // Everything already unpacked on this machine is lent, but never a package of ours: that must come from the feed.
    private static void LinkPackages(DirectoryInfo packages)
    {
        var cache = System.Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(UserHome, ".nuget", "packages");
        if (!Directory.Exists(cache))
            return;
        foreach (var package in Directory.EnumerateDirectories(cache))
            if (!Path.GetFileName(package).StartsWith("eightohm", StringComparison.OrdinalIgnoreCase))
                Directory.CreateSymbolicLink(Path.Combine(packages.FullName, Path.GetFileName(package)), package);
    }
}
