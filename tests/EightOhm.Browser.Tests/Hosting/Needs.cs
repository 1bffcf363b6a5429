namespace EightOhm.Browser.Tests.Hosting;

/// <summary>What a test needs of its machine. Missing: the test skips with the reason; where EIGHTOHM_REQUIRE_BROWSER=1 it fails.</summary>
internal static class Needs
{
    private static readonly bool Required = IsSet("EIGHTOHM_REQUIRE_BROWSER");

    public static string? JupyterPath { get; } = OnPath("jupyter");

    /// <summary>The Python that Jupyter itself runs on: its first line names it.</summary>
    public static string? Python { get; } = JupyterPath is { } jupyter && File.ReadLines(jupyter).First() is { } first && first.StartsWith("#!", StringComparison.Ordinal) ? first[2..].Trim() : OnPath("python3");

    // The one without a window first: it is the same engine and costs less.
    public static string? ChromiumPath { get; } = OnPath("chromium-headless-shell") ?? OnPath("chromium") ?? OnPath("chromium-browser") ?? OnPath("google-chrome");

    public static bool HasJupyter => JupyterPath is not null && OnPath("jupyter-notebook") is not null && OnPath("jupyter-nbconvert") is not null;

    public static void Jupyter() =>
        Unless(HasJupyter, "Jupyter is not on the path (Debian: jupyter-notebook and jupyter-nbconvert).");

    public static void Chromium() => Unless(ChromiumPath is not null, "Chromium is not on the path (Debian: chromium-headless-shell or chromium).");

    /// <summary>Whether tests of minutes run.</summary>
    public static bool IsPatient => Required || IsSet("EIGHTOHM_SLOW");

    /// <summary>A test of minutes, kept out of a plain <c>dotnet test</c>.</summary>
    public static void Patience() =>
        Unless(IsPatient, "A slow test: set EIGHTOHM_SLOW=1 to run it.");

    private static void Unless(bool met, string reason)
    {
        if (!met && Required)
            Assert.Fail($"{reason} EIGHTOHM_REQUIRE_BROWSER=1 forbids to skip.");
        Skip.IfNot(met, reason);
    }

    private static bool IsSet(string variable) => Environment.GetEnvironmentVariable(variable) == "1";

    private static string? OnPath(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .SelectMany(folder => new[] { Path.Combine(folder, program), Path.Combine(folder, program + ".exe") })
            .FirstOrDefault(File.Exists);
}
