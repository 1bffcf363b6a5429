using EightOhm.Cli.Consoles;
using EightOhm.Cli.Output;
using EightOhm.Display.Tables;
using EightOhm.Record;
using Spectre.Console;

namespace EightOhm.Cli.Comparing;

/// <summary>Compares two kept records, and writes what differs where it was asked for.</summary>
internal sealed class Comparer(IAnsiConsole console)
{
    /// <returns>The exit code: comparing is done, whatever differs.</returns>
    public int Run(CompareRequest request)
    {
        foreach (var unfinished in new[] { request.Before, request.After }.Select(r => SaveRecovery.Unfinished(Path.GetDirectoryName(Path.GetFullPath(r))!)).OfType<string>().Distinct())
            console.WriteLine(unfinished);
        var changes = RecordChanges.Compare(Load(request.Before), Load(request.After));
        var tables = ChangeTables.All(changes);
        var title = $"{request.Before} and {request.After}";
        if (request.Page is { } page)
            OwnFile.Write(page, Book.PageTemplate.Mark, ChangesPage.Of(title, tables));
        if (request.Csv is { } csv)
            OwnFile.Write(csv, ChangesCsv.Mark, ChangesCsv.Of(changes));

        if (changes.None)
            console.WriteLine("Nothing differs.");
        foreach (var table in tables)
        {
            ConsoleTable.ShowWithCaption(console, table);
            console.WriteLine();
        }

        return ExitCode.Done;
    }

    private static DesignRecord Load(string path)
    {
        try
        {
            return DesignRecord.Load(path);
        }
        catch (Exception e) when (e is RecordException or IOException or UnauthorizedAccessException)
        {
            throw RunFailure.BadInput(File.Exists(path) ? e.Message : $"There is no record '{path}'. Give the path of a record's file, such as notebooks/tern-100/record.json.");
        }
    }
}
