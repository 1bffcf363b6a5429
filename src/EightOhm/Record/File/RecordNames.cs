namespace EightOhm.Record;

/// <summary>What a design is called as long as nobody has named it.</summary>
internal static class RecordNames
{
    // The record of a folder that holds one design: the folder is named for the design, the file is not.
    private const string OneOfAFolder = "record.json";

    /// <summary>The name of a record by its place: tern-100/record.json is Tern 100, amp.json is amp.</summary>
    /// <param name="path">The record's full path.</param>
    /// <param name="home">The folder that it belongs to; a runner works on a copy elsewhere.</param>
    public static string Of(string path, string home) =>
        Path.GetFileName(path).Equals(OneOfAFolder, StringComparison.OrdinalIgnoreCase) && InWords(Path.GetFileName(Path.TrimEndingDirectorySeparator(home))) is { Length: > 0 } folder
            ? folder
            : Path.GetFileNameWithoutExtension(path);

    private static string InWords(string folder)
    {
        var words = string.Join(' ', (Words.Clean(folder) ?? "").Split(['-', '_', ' '], StringSplitOptions.RemoveEmptyEntries));
        return words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
