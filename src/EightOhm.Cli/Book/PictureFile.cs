namespace EightOhm.Cli.Book;

/// <summary>Picture files beside a notebook, as text that stands in the page.</summary>
internal static class PictureFile
{
    /// <summary>The picture as a data URI; null when there is no such file, when it is no picture that pages show, or when it lies outside the notebook's folder.</summary>
    public static string? DataUri(string folder, string relative)
    {
        var mimeType = Path.GetExtension(relative).ToUpperInvariant() switch
        {
            ".SVG" => "image/svg+xml",
            ".PNG" => "image/png",
            ".JPG" or ".JPEG" => "image/jpeg",
            ".WEBP" => "image/webp",
            _ => null,
        };
        var name = Uri.UnescapeDataString(relative);
        if (mimeType is null || name.Contains("://", StringComparison.Ordinal) || name.Contains('\0', StringComparison.Ordinal) || Path.IsPathRooted(name))
            return null;

        var path = Path.GetFullPath(name, folder);
        return IsWithin(path, folder) && OrdinaryFile.IsLarger(path, 0)
            ? $"data:{mimeType};base64,{Convert.ToBase64String(OrdinaryFile.Read(path))}"
            : null;
    }

    // A book goes to others: what a link or a way up leads to was not meant for them.
    private static bool IsWithin(string path, string folder)
    {
        var way = Path.GetRelativePath(folder, path);
        if (Path.IsPathRooted(way) || way.Split(Path.DirectorySeparatorChar)[0] == "..")
            return false;
        for (var part = path; part.Length > folder.Length; part = Path.GetDirectoryName(part)!)
        {
            if (new FileInfo(part).LinkTarget is not null)
                return false;
        }

        return true;
    }
}
