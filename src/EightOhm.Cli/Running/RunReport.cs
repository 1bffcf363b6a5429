using EightOhm.Cli.Book;
using EightOhm.Cli.Consoles;
using EightOhm.Cli.Ends;
using EightOhm.Display;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>What the console says at the end of a run.</summary>
internal sealed class RunReport(IAnsiConsole console, TextWriter error)
{
    /// <param name="book">What the book tells.</param>
    /// <param name="notes">What else is to be said of the run, a sentence each.</param>
    public void Show(BookContent book, IEnumerable<string> notes)
    {
        foreach (var line in book.Set)
            Say(line);
        foreach (var table in book.Moved.DefaultIfEmpty(book.Sheet).Where(t => t.Rows.Count > 0))
        {
            if (book.Moved.Count > 0)
                Say(table.Caption);
            ConsoleTable.Show(console, table);
            console.WriteLine();
        }

        Say(book.Tally);
        foreach (var (first, after) in book.Log.Causes(NoticeKind.NoAnswer))
            Say($"No answer in {first.OnConsole}{CellEnds.After(after)}");
        foreach (var (first, after) in book.Log.Causes(NoticeKind.Failed))
            error.WriteLine(first.OnConsole + CellEnds.After(after));
        foreach (var note in notes)
            Say(note);
    }

    private void Say(string sentence)
    {
        foreach (var line in Folding.Lines(sentence, console.Profile.Width))
            console.WriteLine(line);
    }
}
