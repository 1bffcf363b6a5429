using System.IO.Pipes;

namespace EightOhm.Cli.Watching;

/// <summary>The side that runs the cells: it tells the watcher where it is at work, so that a cell that ends the whole process can be named.</summary>
internal static class Watched
{
    /// <summary>The setting by which the watcher names its two pipes.</summary>
    public const string Setting = "EIGHTOHM_WATCHED";

    private static readonly Lock Gate = new();
    private static StreamWriter? teller;
    private static Interruption? interruption;
    private static int asked;

    /// <summary>Whether a watcher looks at this process.</summary>
    public static bool Is { get; private set; }

    /// <summary>Takes up the watcher's pipes, if there is one.</summary>
    public static void Begin()
    {
        if (Environment.GetEnvironmentVariable(Setting)?.Split(' ') is not [var told, var heard])
            return;
        // What cells start is not watched.
        Environment.SetEnvironmentVariable(Setting, null);
        teller = new StreamWriter(new AnonymousPipeClientStream(PipeDirection.Out, told)) { AutoFlush = true };
        var listening = new Thread(() => Listen(new StreamReader(new AnonymousPipeClientStream(PipeDirection.In, heard)))) { IsBackground = true, Name = "watcher" };
        listening.Start();
        AppDomain.CurrentDomain.UnhandledException += (_, e) =>
        {
            Tell(WatchWords.Why, ProcessEnd.Words((Exception)e.ExceptionObject));
            Environment.Exit(ExitCode.CellFailed);
        };
        Is = true;
    }

    /// <summary>A cell is about to run.</summary>
    public static void At(string place) => Tell(WatchWords.At, place);

    /// <summary>No cell runs any more.</summary>
    public static void After() => Tell(WatchWords.At, "");

    /// <summary>Files are about to be put in their places, which must not be cut off.</summary>
    public static void Placing() => Tell(WatchWords.Placing, "");

    /// <summary>The program has come to its end by itself.</summary>
    public static void End(int code) => Tell(WatchWords.End, code.ToString(System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>Names what is to be told of a signal that the watcher had.</summary>
    public static void Hear(Interruption? toTell)
    {
        Volatile.Write(ref interruption, toTell);
        if (Volatile.Read(ref asked) is > 0 and var signal)
            toTell?.Raise(signal);
    }

    private static void Listen(StreamReader watcher)
    {
        // A watcher that is gone has been killed: nobody waits for the run any more.
        const int hangUp = 1;
        while (true)
        {
            var line = watcher.ReadLine();
            var signal = line is null ? hangUp : int.TryParse(line, out var number) ? number : 0;
            if (signal > 0)
            {
                Volatile.Write(ref asked, signal);
                Volatile.Read(ref interruption)?.Raise(signal);
            }

            if (line is null)
                return;
        }
    }

    private static void Tell(string word, string text)
    {
        if (teller is not { } pipe)
            return;
        try
        {
            lock (Gate)
                pipe.WriteLine($"{word} {PlainText.Of(text).Replace('\n', ' ')}");
        }
        catch (IOException)
        {
            // The watcher is gone, and Listen says so.
        }
    }
}
