namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Copying of folders.</summary>
internal static class Folders
{
    /// <summary>Copies a folder and all below it, over what is there.</summary>
    public static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target, overwrite: true);
        }
    }
}
