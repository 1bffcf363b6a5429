using System.Text.RegularExpressions;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The notebooks that are tested: every chapter, and the tests' own probe, which needs nothing of ours but the package.</summary>
internal static partial class NotebookNames
{
    public const string Probe = "_probe.ipynb";

    /// <summary>A notebook that never loads us: what its page complains of is the host's own.</summary>
    public const string Alone = "_alone.ipynb";

    public static TheoryData<string> All => [.. Clone.Chapters, Probe];

    /// <summary>Of each folder the notebook with the most on its page: for what a whole page of Jupyter costs, which is more than a run.</summary>
    public static TheoryData<string> OneOfEach => [.. Clone.Chapters.Append(Probe).GroupBy(Clone.FolderOf).Select(folder => folder.MaxBy(Shown)!)];

    public static NotebookFile Read(string name) =>
        NotebookFile.Read(Path.Combine(name == Probe ? Clone.Fixtures : Clone.Notebooks, name));

    private static int Shown(string name) => Read(name).Outputs.Sum(output => Shows().Count(output.Html ?? ""));

    [GeneratedRegex("<math|<figure")]
    private static partial Regex Shows();
}
