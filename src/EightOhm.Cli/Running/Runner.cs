using EightOhm.Cli.Book;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Cli.Sheets;
using EightOhm.Cli.WhatIf;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>The whole run: read, check, run, write the book, and only then put anything in its place.</summary>
internal sealed class Runner(IAnsiConsole console, TextWriter error)
{
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(RunRequest request, CancellationToken cancellation)
    {
        // Most of the wait for a first cell is the compiler's start: it starts while the files are read and checked.
        using var kernels = new KernelQueue();

        var folder = NotebookFolder.Open(request.Notebooks);
        foreach (var notebook in folder.Notebooks)
            PackageDirectives.Check(notebook);
        if (request.Save)
            SavedFiles.CheckWritable(folder.Folder);

        using var book = OutFolder.Prepare(request.Out);
        var copy = RecordCopy.Make(folder.Folder, book.New);
        using var entered = copy.Enter();
        var set = SetValues.Apply(copy.Records, request.Settings);
        var log = new RunLog();
        var graphs = new NotebookGraphs();
        var plan = new RerunPlanner(folder, copy, graphs).Make(set, request.Full);
        var run = new RunContext(plan, new CellNeeds(graphs), log, copy.Lose, request.Limit);
        await new NotebookRuns(console, folder, kernels, run).ExecuteAsync(cancellation);

        var saves = request.Save && !log.HasFailures;
        copy.BringCards();
        var records = copy.Records;
        var sheet = new ComplianceSheet(records.SelectMany(r => r.Compliance()));
        var content = new BookContent(
            records.Count > 0 ? string.Join(", ", records.Select(r => r.Name)) : Path.GetFileName(folder.Folder),
            folder.Notebooks,
            sheet.Table,
            sheet.Tally,
            WhatIfWords.InForce(records, set),
            WhatIfWords.Banner(set, saves),
            Movement.Of(set, copy.Kept, records),
            log,
            [.. records.Select(r => Path.GetFileName(r.Path))]);
        new BookWriter(book.New).Write(content);
        using var saved = new SavedFiles();
        if (saves)
        {
            KeptOutputs.Stamp(folder, copy, areKept: set.Count == 0 && log.Ends.Count == 0);
            Save(folder, copy, saved);
        }


        // From here on an interruption comes too late: it takes milliseconds, and half of it would be worse than all.
        cancellation.ThrowIfCancellationRequested();
        book.Publish();
        saved.Publish();

        new RunReport(console, error).Show(content, Notes(request, run, saves, book));
        return log.HasFailures ? ExitCode.CellFailed
            : sheet.AllMet && log.Ends.Count == 0 ? ExitCode.Done
            : ExitCode.NotMet;
    }

    private static void Save(NotebookFolder folder, RecordCopy copy, SavedFiles saved)
    {
        foreach (var notebook in folder.Notebooks)
            saved.Add(notebook.Path, notebook.Read, notebook.ToBytes());
        copy.AddTo(saved);
    }

    private static IEnumerable<string> Notes(RunRequest request, RunContext run, bool saves, OutFolder book)
    {
        if (run.Plan.Says(run.Log.Ran, run.Log.All) is { } which)
            yield return which;
        if (request.Save && !saves)
            yield return "A cell failed: the notebooks and the record were left as they were, and the book shows this run.";
        else if (request.Save && request.Settings.Count > 0)
            yield return "Saved: notebooks and record now hold what was set, until it is given back with --set \"name=\" --save.";
        yield return $"The book is at {Path.GetRelativePath(Environment.CurrentDirectory, book.IndexPath)}";
    }
}
