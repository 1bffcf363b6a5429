using EightOhm.Cli.Output;

namespace EightOhm.Cli.Making;

/// <summary>A folder made whole or not at all: written beside its place and moved there at the end.</summary>
internal static class NewFolder
{
    /// <summary>The folder's full path, if something can be made there.</summary>
    /// <exception cref="RunFailure">There is something already, or no folder to make it in.</exception>
    public static string Check(string typed)
    {
        if (string.IsNullOrWhiteSpace(typed))
            throw RunFailure.BadInput("The folder to make must have a name.");
        string full;
        try
        {
            full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(typed));
        }
        catch (ArgumentException)
        {
            throw RunFailure.BadInput("The folder's name has a character that no file system takes.");
        }

        if (File.Exists(full))
            throw RunFailure.BadInput($"{typed} is a file. Give the name of a folder that does not exist yet.");
        if (Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any())
            throw RunFailure.BadInput($"{typed} is not empty. Nothing of yours is written over: give the name of a folder that does not exist yet, or an empty one.");
        if (Path.GetDirectoryName(full) is null)
            throw RunFailure.BadInput($"{typed} is the root of the file system. Give the name of a folder in it.");
        return full;
    }

    /// <summary>Writes the folder.</summary>
    /// <exception cref="RunFailure">The place cannot be written to; nothing is left there.</exception>
    public static void Make(string folder, Action<string> write)
    {
        var parent = Path.GetDirectoryName(folder)!;
        var beside = Leftovers.FolderBeside(folder);
        try
        {
            Directory.CreateDirectory(parent);
            foreach (var left in Leftovers.FoldersOf(folder))
                Directory.Delete(left, recursive: true);
            Directory.CreateDirectory(beside);
            write(beside);
            if (Directory.Exists(folder))
                Directory.Delete(folder);
            Directory.Move(beside, folder);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"{folder} cannot be made: {e.Message} Choose a place that can be written to.");
        }
        finally
        {
            if (Directory.Exists(beside))
                Directory.Delete(beside, recursive: true);
        }
    }

    /// <summary>A file in it, its folders made as needed.</summary>
    public static void Write(string at, string file, byte[] bytes)
    {
        var path = Path.Combine(at, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }
}
