using System.Text;

namespace EightOhm.Cli.Output;

/// <summary>A single file that a person named: written whole, and over nothing but an earlier one of the same sort.</summary>
internal static class OwnFile
{
    // Spreadsheet programs take a file without this sign for one of an older alphabet, and Ω for two letters.
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: true);

    /// <param name="path">The file.</param>
    /// <param name="mark">What every file of the sort contains.</param>
    /// <param name="text">Its content.</param>
    public static void Write(string path, string mark, string text)
    {
        var full = Path.GetFullPath(path);
        try
        {
            if (File.Exists(full) && !File.ReadAllText(full).Contains(mark, StringComparison.Ordinal))
                throw RunFailure.BadInput($"'{path}' is there already and is something else; it was left as it is. Name another file.");
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            Leftovers.SweepFiles(Path.GetDirectoryName(full)!, name => name == Path.GetFileName(full));
            Put(full, text);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput($"'{path}' cannot be written: {e.Message} Name another file.");
        }
    }

    private static void Put(string full, string text)
    {
        var written = Leftovers.FileBeside(full);
        try
        {
            File.WriteAllText(written, text, Utf8);
            File.Move(written, full, overwrite: true);
        }
        finally
        {
            File.Delete(written);
        }
    }
}
