using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

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
        var mine = JsonSerializer.SerializeToUtf8Bytes(Here());
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
                if (Holder(path) is { } holder && IsRunning(holder))
                    throw RunFailure.BadInput($"'{Path.GetFileName(folder)}' is open already, by process {holder.Process.ToString(CultureInfo.InvariantCulture)}. One folder has one owner of its record: use that page (its \"another window\"), or end that program first.");
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

    private static LockHolder Here()
    {
        using var me = Process.GetCurrentProcess();
        return new LockHolder(me.Id, Started(me));
    }

    private static LockHolder? Holder(string path)
    {
        try
        {
            return JsonSerializer.Deserialize<LockHolder>(System.IO.File.ReadAllBytes(path));
        }
        catch (Exception e) when (e is JsonException or IOException)
        {
            return null;
        }
    }

    // The number alone may be another program's by now.
    private static bool IsRunning(LockHolder holder)
    {
        try
        {
            using var process = Process.GetProcessById(holder.Process);
            return !process.HasExited && Math.Abs(Started(process) - holder.Started) <= 2;
        }
        catch (Exception e) when (e is ArgumentException or InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static long Started(Process process) => new DateTimeOffset(process.StartTime.ToUniversalTime()).ToUnixTimeSeconds();
}

/// <summary>Who has a folder open.</summary>
/// <param name="Process">The process's number.</param>
/// <param name="Started">When it was started, in seconds since 1970.</param>
internal sealed record LockHolder(int Process, long Started);
