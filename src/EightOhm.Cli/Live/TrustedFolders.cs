using EightOhm.Cells;

namespace EightOhm.Cli.Live;

/// <summary>The folders whose cells this person has let run: a list in the person's own data. A cell may do whatever its owner may do.</summary>
/// <param name="list">The list's file; null where there is no place for one, and nothing is remembered then.</param>
internal sealed class TrustedFolders(string? list)
{
    /// <summary>This person's list.</summary>
    public static TrustedFolders OfThisPerson() =>
        new(PersonalData.Folder is { } folder ? Path.Combine(folder, "trusted-folders.txt") : null);

    /// <summary>The folder that is trusted when a person names it or one notebook in it.</summary>
    /// <param name="path">The folder or the notebook.</param>
    public static string FolderOf(string path) => File.Exists(path) ? Path.GetDirectoryName(Path.GetFullPath(path))! : Path.GetFullPath(path);

    /// <summary>Whether a folder's cells may run.</summary>
    public bool Has(string folder) => Read().Contains(Path.GetFullPath(folder), StringComparer.Ordinal);

    /// <summary>Remembers a folder. Where the list cannot be written it is asked again the next time.</summary>
    public void Add(string folder)
    {
        try
        {
            if (list is null || Has(folder))
                return;
            Directory.CreateDirectory(Path.GetDirectoryName(list)!);
            File.AppendAllText(list, Path.GetFullPath(folder) + "\n");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It is trusted until the program ends.
        }
    }

    private string[] Read()
    {
        try
        {
            return File.Exists(list) ? File.ReadAllLines(list) : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
