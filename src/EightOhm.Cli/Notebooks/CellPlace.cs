using System.Text.RegularExpressions;

namespace EightOhm.Cli.Notebooks;

/// <summary>Where a cell stands.</summary>
/// <param name="Notebook">Its notebook.</param>
/// <param name="Cell">The cell.</param>
internal sealed partial record CellPlace(NotebookFile Notebook, NotebookCell Cell)
{
    /// <summary>As a reader looks it up: "chapter 05, cell 36", or with the file's name where it begins with no number.</summary>
    public string InBook => Chapter().Match(Notebook.Name) is { Success: true } number
        ? $"chapter {number.Value}, cell {Cell.Number}"
        : InFile;

    /// <summary>As the console names it: "05-rails.ipynb, cell 36".</summary>
    public string InFile => $"{Notebook.FileLabel}, cell {Cell.Number}";

    [GeneratedRegex("^[0-9]+[a-z]?(?![0-9A-Za-z])")]
    private static partial Regex Chapter();
}
