using System.Text;

namespace EightOhm.Cells.Running;

/// <summary>The console that a cell writes to: its own screen, and outside of cells the process's.</summary>
internal sealed class CellConsole(TextWriter process, string stream) : TextWriter
{
    private static readonly Lock Gate = new();

    public override Encoding Encoding => process.Encoding;

    /// <summary>Puts it in the place of the process's console, once.</summary>
    public static void Install()
    {
        lock (Gate)
        {
            // Somebody else may have put his own in its place meanwhile.
            if (Console.Out is not CellConsole)
                Console.SetOut(new CellConsole(Console.Out, "stdout"));
            if (Console.Error is not CellConsole)
                Console.SetError(new CellConsole(Console.Error, "stderr"));
        }
    }

    public override void Write(char value)
    {
        if (CellScreen.Current is { } screen)
            screen.Print(stream, [value]);
        else
            process.Write(value);
    }

    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    public override void Write(ReadOnlySpan<char> buffer)
    {
        if (CellScreen.Current is { } screen)
            screen.Print(stream, buffer);
        else
            process.Write(buffer);
    }

    public override void Write(string? value) => Write(value.AsSpan());

    public override void Flush() => process.Flush();
}
