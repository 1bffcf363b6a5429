namespace EightOhm.Cli.Book;

/// <summary>Picture files beside a notebook, as text that stands in the page.</summary>
internal static class PictureFile
{
    /// <summary>The picture as a data URI; null when there is no such file or it is no picture that pages show.</summary>
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
        if (mimeType is null || relative.Contains("://", StringComparison.Ordinal))
            return null;

        var path = Path.Combine(folder, Uri.UnescapeDataString(relative));
        return File.Exists(path) ? $"data:{mimeType};base64,{Convert.ToBase64String(File.ReadAllBytes(path))}" : null;
    }
}
