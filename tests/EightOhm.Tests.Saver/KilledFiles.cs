using System.Diagnostics;
using EightOhm.Record;

namespace EightOhm.Tests.Saver;

internal enum KillPoint
{
    InWrite,
    BeforeRename,
}

/// <summary>A disk on which the process dies, without any chance to clean up.</summary>
internal sealed class KilledFiles(KillPoint point) : DiskFiles
{
    public override void Write(string path, byte[] bytes)
    {
        base.Write(path, point == KillPoint.InWrite ? bytes[..(bytes.Length / 2)] : bytes);
        if (point == KillPoint.InWrite)
            Die();
    }

    public override void Rename(string from, string to) => Die();

    private static void Die()
    {
        using var me = Process.GetCurrentProcess();
        me.Kill();
        Thread.Sleep(Timeout.Infinite);
    }
}
