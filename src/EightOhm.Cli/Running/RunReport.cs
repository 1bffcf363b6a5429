using EightOhm.Cli.Book;
using EightOhm.Cli.Consoles;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Sheets;
using EightOhm.Display;
using Spectre.Console;
using Table = EightOhm.Display.Tables.Table;

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
        foreach (var design in book.Designs)
            Show(design, isOne: book.Designs.Count == 1);
        foreach (var tally in DesignSheets.Tallies(book.Designs))
            Say(tally);
        foreach (var (first, after) in book.Log.Causes(NoticeKind.NoAnswer))
            Say($"No answer in {first.OnConsole}{CellEnds.After(after)}");
        foreach (var (first, after) in book.Log.Causes(NoticeKind.Failed))
            error.WriteLine(PlainText.Of(first.OnConsole + CellEnds.After(after)));
        foreach (var note in notes)
            Say(note);
    }

    private void Show(DesignSheet design, bool isOne)
    {
        if (design.Moved is null)
        {
            if (isOne)
                Table(design.Compliance.Table, ConsoleTable.Show);
            else
                Table(design.Compliance.Table with { Caption = design.Name }, ConsoleTable.ShowWithCaption);
            return;
        }

        if (!isOne)
            Say(design.Name);
        foreach (var table in design.Moved)
            Table(table, ConsoleTable.ShowWithCaption);
        if (design.Moved.Count == 0)
            Say("Nothing moved with it.");
    }

    private void Table(Table table, Action<IAnsiConsole, Table> show)
    {
        if (table.Rows.Count == 0)
            return;
        show(console, table);
        console.WriteLine();
    }

    private void Say(string sentence)
    {
        foreach (var line in Folding.Lines(sentence, console.Profile.Width))
            console.WriteLine(line);
    }
}
