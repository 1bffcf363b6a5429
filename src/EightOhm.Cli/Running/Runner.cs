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

        var tree = NotebookTree.Open(request.Notebooks);
        foreach (var notebook in tree.Notebooks)
            PackageDirectives.Check(notebook);
        if (request.Save)
        {
            foreach (var folder in tree.Folders)
                SavedFiles.CheckWritable(folder.Path);
        }

        using var book = request.Publication();
        var copies = RecordCopies.Make(tree, book.New);
        var set = SetValues.Apply(copies.Records, request.Settings);
        var log = new RunLog();
        var graphs = new NotebookGraphs();
        var plan = new RerunPlanner(copies, graphs).Make(set, request.Full);
        var run = new RunContext(plan, new CellNeeds(graphs), log, copies.Lose, request.Limit);
        await new NotebookRuns(console, copies, kernels, run).ExecuteAsync(cancellation);

        var saves = request.Save && !log.HasFailures;
        copies.BringCards();
        var designs = DesignSheets.Of(copies, set);
        var content = new BookContent(
            designs.Count > 0 ? string.Join(", ", designs.Select(d => d.Name)) : Path.GetFileName(tree.Path),
            [.. tree.Notebooks],
            designs,
            WhatIfWords.InForce(copies.Records, set),
            WhatIfWords.Banner(set, saves),
            [.. copies.Records.SelectMany(SymbolMeaning.OfRecord), .. SymbolMeaning.OfLibrary()],
            NotebookStamp.Fingerprint(copies.Records.Select(r => File.ReadAllText(r.Path)))[..8],
            log);
        await book.MakeAsync(content, cancellation);
        using var saved = new SavedFiles();
        if (saves)
        {
            foreach (var copy in copies.All)
                KeptOutputs.Stamp(copy, areKept: set.Count == 0 && log.Ends.Count == 0);
            Save(tree, copies, saved);
        }

        book.CheckOwn();
        // From here on an interruption comes too late: it takes milliseconds, and half of it would be worse than all.
        cancellation.ThrowIfCancellationRequested();
        book.Publish();
        saved.Publish();

        new RunReport(console, error).Show(content, [.. tree.LeftOut, .. Notes(request, run, saves, book)]);
        return log.HasFailures ? ExitCode.CellFailed
            : designs.All(d => d.Compliance.AllMet) && log.Ends.Count == 0 ? ExitCode.Done
            : ExitCode.NotMet;
    }

    private static void Save(NotebookTree tree, RecordCopies copies, SavedFiles saved)
    {
        foreach (var notebook in tree.Notebooks)
            saved.Add(notebook.Path, notebook.Read, notebook.ToBytes());
        copies.AddTo(saved);
    }

    private static IEnumerable<string> Notes(RunRequest request, RunContext run, bool saves, IPublication book)
    {
        if (run.Plan.Says(run.Log.Ran, run.Log.All) is { } which)
            yield return which;
        if (request.Save && !saves)
            yield return "A cell failed: the notebooks and the record were left as they were, and the book shows this run.";
        else if (request.Save && request.Settings.Count > 0)
            yield return "Saved: notebooks and record now hold what was set, until it is given back with --set \"name=\" --save.";
        yield return book.Says;
    }
}
