using System.Text.RegularExpressions;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>The notebooks that are tested: every chapter, and the tests' own probe, which needs nothing of ours but the package.</summary>
internal static class NotebookNames
{
    public const string Probe = "_probe.ipynb";

    /// <summary>A notebook that never loads us: what its page complains of is the host's own.</summary>
    public const string Alone = "_alone.ipynb";

    private static readonly string[] Kinds = ["<math", "<figure", "<table"];

    public static TheoryData<string> All => [.. Clone.Chapters, Probe];

    /// <summary>Of each folder the shortest notebook that has formulas, figures and tables on its page: for what a whole page of Jupyter costs, which is more than a run.</summary>
    /// <remarks>Every output of every notebook is shown by JupyterLab's renderer; what is added here is the page itself, its trust and its own sanitiser.</remarks>
    public static TheoryData<string> OneOfEach =>
        [.. Clone.Chapters.GroupBy(Clone.FolderOf).Select(folder => folder.Where(name => Kinds.All(kind => Shown(name, kind) > 0)).MinBy(name => Read(name).Outputs.Sum(output => output.Html?.Length ?? 0))!), Probe];

    public static NotebookFile Read(string name) =>
        NotebookFile.Read(Path.Combine(name == Probe ? Clone.Fixtures : Clone.Notebooks, name));

    private static int Shown(string name, string kind) => Read(name).Outputs.Sum(output => Regex.Count(output.Html ?? "", kind));
}
