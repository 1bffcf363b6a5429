using EightOhm.Cli.Book;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Cli.Sheets;
using EightOhm.Cli.Watching;
using EightOhm.Cli.WhatIf;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>The whole run: read, check, run, write the book, and only then put anything in its place.</summary>
internal sealed class Runner(IAnsiConsole console, TextWriter error)
{
    /// <returns>The exit code.</returns>
    public async Task<int> RunAsync(RunRequest request, CancellationToken cancellation)
    {
        using var programs = new NotebookPrograms();

        Say(SaveRecovery.Around(request.Notebooks, Disk.Real));
        var tree = await StageAsync("Reading the notebooks", () => Read(request));
        using var book = request.Publication();
        Say(book.Found);
        var copies = await StageAsync("Reading the records", () => RecordCopies.Make(tree, book.New));
        var log = new RunLog();
        var graphs = new NotebookGraphs();
        var (set, plan) = await StageAsync("Working out what follows from --set", () =>
        {
            var moved = SetValues.Apply(copies.Records, request.Settings);
            return (moved, new RerunPlanner(copies, graphs).Make(moved, request.Full));
        });
        var run = new RunContext(plan, new CellNeeds(graphs), log, copies.Lose, request.Limit);
        await new NotebookRuns(console, copies, programs, run).ExecuteAsync(cancellation);
        graphs.Keep();

        var saves = request.Save && !log.HasFailures;
        using var saved = new SavedFiles(tree.Path, Disk.Real);
        var content = await StageAsync("Working out how the design complies", () => Content(tree, copies, set, log, saves));
        await Stage.RunAsync("Writing the book", Stage.LimitOf(request.Limit), async stop =>
        {
            await book.MakeAsync(content, stop);
            if (saves)
                Save(tree, copies, saved, areKept: set.Count == 0 && log.Ends.Count == 0);
            return true;
        }, cancellation);

        book.CheckOwn();
        // From here on an interruption comes too late: it takes milliseconds, and half of it would be worse than all.
        cancellation.ThrowIfCancellationRequested();
        Watched.Placing();
        saved.Publish(book);

        new RunReport(console, error).Show(content, [.. tree.LeftOut, .. Notes(request, run, saves, book)]);
        return log.HasFailures ? ExitCode.CellFailed
            : content.Designs.All(d => d.Compliance.AllMet) && log.Ends.Count == 0 ? ExitCode.Done
            : ExitCode.NotMet;

        Task<T> StageAsync<T>(string what, Func<T> work) => Stage.RunAsync(what, Stage.LimitOf(request.Limit), work, cancellation);
    }

    private static NotebookTree Read(RunRequest request)
    {
        var tree = NotebookTree.Open(request.Notebooks);
        foreach (var notebook in tree.Notebooks)
        {
            PackageDirectives.Check(notebook);
            MarkdownText.Check(notebook);
        }

        if (!request.Save)
            return tree;
        foreach (var folder in tree.Folders.Select(f => f.Path).Prepend(tree.Path).Distinct(StringComparer.Ordinal))
            SavedFiles.CheckWritable(folder);
        foreach (var notebook in tree.Notebooks)
            SavedPlace.CheckWritable(notebook.Path);
        return tree;
    }

    private static BookContent Content(NotebookTree tree, RecordCopies copies, IReadOnlyList<SetValue> set, RunLog log, bool saves)
    {
        copies.BringCards();
        var designs = DesignSheets.Of(copies, set);
        return new BookContent(
            designs.Count > 0 ? string.Join(", ", designs.Select(d => d.Name)) : Path.GetFileName(tree.Path),
            [.. tree.Notebooks],
            designs,
            WhatIfWords.InForce(copies.Records, set),
            WhatIfWords.Banner(set, saves),
            [.. copies.Records.SelectMany(SymbolMeaning.OfRecord), .. SymbolMeaning.OfLibrary()],
            NotebookStamp.Fingerprint(copies.Records.Select(r => File.ReadAllText(r.Path)))[..8],
            log);
    }

    private void Say(IEnumerable<string> found)
    {
        foreach (var sentence in found)
            error.WriteLine(PlainText.Of(sentence));
    }

    private static void Save(NotebookTree tree, RecordCopies copies, SavedFiles saved, bool areKept)
    {
        foreach (var copy in copies.All)
            KeptOutputs.Stamp(copy, areKept);
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
