using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace EightOhm.Cli.Live;

/// <summary>The process that has a folder, as a file in it says.</summary>
/// <param name="Process">The process's number.</param>
/// <param name="Started">When it was started, in seconds since 1970: the number alone may be another program's by now.</param>
internal sealed record FolderOwner(int Process, long Started)
{
    /// <summary>This process.</summary>
    public static FolderOwner Here
    {
        get
        {
            using var me = System.Diagnostics.Process.GetCurrentProcess();
            return new FolderOwner(me.Id, StartOf(me));
        }
    }

    /// <summary>Whether the process is still there.</summary>
    [JsonIgnore]
    public bool IsRunning
    {
        get
        {
            try
            {
                using var process = System.Diagnostics.Process.GetProcessById(Process);
                return !process.HasExited && Math.Abs(StartOf(process) - Started) <= 2;
            }
            catch (Exception e) when (e is ArgumentException or InvalidOperationException or System.ComponentModel.Win32Exception)
            {
                return false;
            }
        }
    }

    /// <summary>Reads who has a folder; null where the file is missing or says nothing.</summary>
    public static FolderOwner? Read(string file)
    {
        try
        {
            return JsonSerializer.Deserialize<FolderOwner>(File.ReadAllBytes(file));
        }
        catch (Exception e) when (e is JsonException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>What the file says.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this);

    private static long StartOf(Process process) => new DateTimeOffset(process.StartTime.ToUniversalTime()).ToUnixTimeSeconds();
}
