using System.Globalization;

namespace EightOhm.Cli.Live;

/// <summary>Sees to it that a folder has one owner of its record: a file that names the process. What a killed one has left is taken over.</summary>
internal sealed class FolderLock : IDisposable
{
    public const string File = ".eightohm-open.json";

    private readonly string? path;

    private FolderLock(string? path) => this.path = path;

    /// <summary>Takes a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="RunFailure">Another program has it open.</exception>
    public static FolderLock Take(string folder)
    {
        var path = Path.Combine(folder, File);
        var mine = FolderOwner.Here.ToBytes();
        for (var attempt = 0; ; attempt++)
        {
            try
            {
                using var made = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
                made.Write(mine);
                return new FolderLock(path);
            }
            catch (IOException) when (System.IO.File.Exists(path) && attempt < 3)
            {
                if (FolderOwner.Read(path) is { IsRunning: true } owner)
                    throw RunFailure.BadInput($"'{Path.GetFileName(folder)}' is open already, by process {owner.Process.ToString(CultureInfo.InvariantCulture)}. One folder has one owner of its record: use that page (its \"another window\"), or end that program first.");
                System.IO.File.Delete(path);
            }
            catch (UnauthorizedAccessException)
            {
                // Nothing can be saved here, and so nobody's work can be lost.
                return new FolderLock(null);
            }
        }
    }

    public void Dispose()
    {
        if (path is not null)
            System.IO.File.Delete(path);
    }
}
