namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The notebooks that are tested: every chapter, and the tests' own probe, which needs nothing of ours but the package.</summary>
internal static class NotebookNames
{
    public const string Probe = "_probe.ipynb";

    /// <summary>A notebook that never loads us: what its page complains of is the host's own.</summary>
    public const string Alone = "_alone.ipynb";

    public static TheoryData<string> All => [.. Clone.Chapters, Probe];

    public static NotebookFile Read(string name) =>
        NotebookFile.Read(Path.Combine(name == Probe ? Clone.Fixtures : Clone.Notebooks, name));
}
