namespace EightOhm.Cli.Notebooks;

/// <summary>The notebooks that an argument names: one file, or a folder's in name order.</summary>
internal sealed class NotebookFolder
{
    private NotebookFolder(string folder, IReadOnlyList<NotebookFile> notebooks)
    {
        Folder = folder;
        Notebooks = notebooks;
    }

    /// <summary>Full path of the folder that holds the notebooks and the record.</summary>
    public string Folder { get; }

    public IReadOnlyList<NotebookFile> Notebooks { get; }

    public static NotebookFolder Open(string argument)
    {
        var path = Path.GetFullPath(argument);
        if (File.Exists(path))
            return new NotebookFolder(Path.GetDirectoryName(path)!, [NotebookFile.Open(path)]);
        if (!Directory.Exists(path))
            throw RunFailure.BadInput($"There is no notebook or folder '{argument}'. Give the path of a notebook (.ipynb) or of a folder of notebooks.");

        var files = Directory.GetFiles(path, "*.ipynb");
        if (files.Length == 0)
            throw RunFailure.BadInput($"There are no notebooks (.ipynb) in the folder '{argument}'.");

        return new NotebookFolder(path, [.. files.Order(StringComparer.Ordinal).Select(NotebookFile.Open)]);
    }
}
