namespace EightOhm.Cli.Notebooks;

/// <summary>The notebooks that an argument names: one file, a folder's, or those of a folder's folders.</summary>
internal sealed class NotebookTree
{
    // What is taught comes before what is designed with it.
    private const string Course = "course";

    private NotebookTree(string path, IReadOnlyList<NotebookFolder> folders, IReadOnlyList<string> leftOut)
    {
        Path = path;
        Folders = folders;
        LeftOut = leftOut;
    }

    /// <summary>Full path of the folder that was asked for, or that holds the notebook that was.</summary>
    public string Path { get; }

    /// <summary>The folders in the order of the run, each with at least one notebook.</summary>
    public IReadOnlyList<NotebookFolder> Folders { get; }

    public IEnumerable<NotebookFile> Notebooks => Folders.SelectMany(f => f.Notebooks);

    /// <summary>Notebooks of another language, a sentence each.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    public static NotebookTree Open(string argument)
    {
        var path = System.IO.Path.GetFullPath(argument);
        if (File.Exists(path))
        {
            var home = System.IO.Path.GetDirectoryName(path)!;
            return new NotebookTree(home, [new NotebookFolder(home, "", [NotebookFile.Open(path)])], []);
        }

        if (!Directory.Exists(path))
            throw RunFailure.BadInput($"There is no notebook or folder '{argument}'. Give the path of a notebook (.ipynb) or of a folder of notebooks.");

        var leftOut = new List<string>();
        var folders = Below(path).Prepend(path)
            .Select(folder => Read(folder, folder == path ? "" : System.IO.Path.GetFileName(folder), leftOut))
            .Where(folder => folder.Notebooks.Count > 0)
            .ToList();
        if (folders.Count == 0)
            throw RunFailure.BadInput($"There are no notebooks (.ipynb) in the folder '{argument}', or in the folders in it, that are in C#. {string.Join(" ", leftOut)}".TrimEnd());
        return new NotebookTree(path, folders, leftOut);
    }

    private static NotebookFolder Read(string folder, string name, List<string> leftOut)
    {
        var all = Directory.GetFiles(folder, "*.ipynb").Order(StringComparer.Ordinal).Select(file => NotebookFile.Open(file, name)).ToList();
        leftOut.AddRange(all.Where(n => !n.IsCSharp).Select(n => $"{n.FileLabel} is written in {n.Language} and was left out."));
        return new NotebookFolder(folder, name, [.. all.Where(n => n.IsCSharp)]);
    }

    // Folders with a dot are a program's own: checkpoints, repositories.
    private static IEnumerable<string> Below(string path) =>
        Directory.GetDirectories(path).Where(d => !System.IO.Path.GetFileName(d).StartsWith('.'))
            .OrderBy(d => System.IO.Path.GetFileName(d) != Course).ThenBy(System.IO.Path.GetFileName, StringComparer.Ordinal);
}
