namespace EightOhm.Cli.Notebooks;

/// <summary>A folder of notebooks with what belongs to them: the record of their design, its cards, pictures.</summary>
/// <param name="Path">Full path of the folder.</param>
/// <param name="Name">Its name within the book, "tern-100"; empty for the folder or notebook that the run was asked for itself.</param>
/// <param name="Notebooks">The notebooks to run, in name order.</param>
internal sealed record NotebookFolder(string Path, string Name, IReadOnlyList<NotebookFile> Notebooks);
