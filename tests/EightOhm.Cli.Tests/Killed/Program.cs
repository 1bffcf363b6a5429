using System.Globalization;
using EightOhm.Cli.Output;

namespace EightOhm.Cli.Tests.Killed;

/// <summary>The tests as a program of their own, to be killed while it puts files in their places.</summary>
internal static class Program
{
    public static int Main(string[] args)
    {
        var (job, folder, n) = (args[0], args[1], int.Parse(args[2], CultureInfo.InvariantCulture));
        switch (job)
        {
            case "publish":
                NumberedRun.Publish(folder, n, saves: args[4] == "save", new KilledDisk(int.Parse(args[3], CultureInfo.InvariantCulture)));
                return 0;
            case "recover":
                NumberedRun.Recover(folder, new KilledDisk(int.Parse(args[3], CultureInfo.InvariantCulture)));
                return 0;
            case "loop":
                NumberedRun.Recover(folder, Disk.Real);
                for (; ; n++)
                {
                    NumberedRun.Publish(folder, n, saves: true, Disk.Real);
                    Console.WriteLine(n);
                }

            default:
                return 2;
        }
    }
}
