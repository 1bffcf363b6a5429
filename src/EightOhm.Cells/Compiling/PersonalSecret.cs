using System.Security.Cryptography;

namespace EightOhm.Cells.Compiling;

/// <summary>A random number of this person's own, in his own data folder, by which his EightOhm knows what it has compiled itself.</summary>
public static class PersonalSecret
{
    private const int Length = 32;

    /// <summary>The secret, made when it is first asked for.</summary>
    /// <returns>Its bytes; null where there is no folder to keep it in.</returns>
    public static byte[]? Get()
    {
        if (PersonalData.Folder is not { } folder)
            return null;
        var path = Path.Combine(folder, "images.key");
        try
        {
            return Read(path) ?? Make(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Two may make it at the same moment: the first one's counts.
            return Read(path);
        }
    }

    private static byte[]? Read(string path)
    {
        try
        {
            return File.Exists(path) && File.ReadAllBytes(path) is { Length: Length } secret ? secret : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static byte[] Make(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var secret = RandomNumberGenerator.GetBytes(Length);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var file = new FileStream(path, options);
        file.Write(secret);
        return secret;
    }
}
