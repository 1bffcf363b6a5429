using System.Diagnostics;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Killed;

/// <summary>A disk on which the process dies before one of the things it does, without any chance to clean up.</summary>
/// <param name="step">Before which, from 1.</param>
internal sealed class KilledDisk(int step) : Disk
{
    private int done;

    public override void Write(string path, ReadOnlySpan<byte> bytes)
    {
        if (++done == step)
        {
            // Half of it is written: the worst that a kill can leave.
            File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);
            Die();
        }

        base.Write(path, bytes);
    }

    public override void Flush(FileStream file)
    {
        Count();
        base.Flush(file);
    }

    public override void Rename(string from, string to)
    {
        Count();
        base.Rename(from, to);
    }

    public override void Delete(string path)
    {
        Count();
        base.Delete(path);
    }

    public override void DeleteFolder(string path)
    {
        Count();
        base.DeleteFolder(path);
    }

    private void Count()
    {
        if (++done == step)
            Die();
    }

    private static void Die()
    {
        using var me = Process.GetCurrentProcess();
        me.Kill();
        Thread.Sleep(Timeout.Infinite);
    }
}
