using EightOhm.Cli.Book;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Cli.Sheets;
using Microsoft.DotNet.Interactive.Formatting;
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
        var record = RecordCopy.Make(folder.Folder, book.New, request.Settings);
        var log = new RunLog();
        var links = new SyntaxLinks();
        var run = new RunContext(new RunPlan(null, ""), links, log, lost => record.Lose(links.Writes(lost.Place), lost), request.Limit);
        using (record.Enter())
            await RunNotebooksAsync(folder, kernels, run, cancellation);

        var records = record.Records;
        var sheet = new ComplianceSheet(records.SelectMany(r => r.Compliance()));
        var content = new BookContent(
            records.Count > 0 ? string.Join(", ", records.Select(r => r.Name)) : Path.GetFileName(folder.Folder),
            folder.Notebooks,
            sheet.Table,
            sheet.Tally,
            [],
            "",
            [],
            log,
            [.. records.Select(r => Path.GetFileName(r.Path))]);
        new BookWriter(book.New).Write(content);
        using var saved = new SavedFiles();
        if (request.Save && !log.HasFailures)
            Save(folder, record, saved);

        // From here on an interruption comes too late: it takes milliseconds, and half of it would be worse than all.
        cancellation.ThrowIfCancellationRequested();
        book.Publish();
        saved.Publish();

        new RunReport(console, error).Show(content, [$"The book is at {Path.GetRelativePath(Environment.CurrentDirectory, book.IndexPath)}"]);
        return log.HasFailures ? ExitCode.CellFailed
            : sheet.AllMet && log.Ends.Count == 0 ? ExitCode.Done
            : ExitCode.NotMet;
    }

    private Task RunNotebooksAsync(NotebookFolder folder, KernelQueue kernels, RunContext run, CancellationToken cancellation) =>
        RunProgress.ShowAsync(console, async progress =>
        {
            // Cells open files beside their notebook, as they do in a notebook program.
            var home = Environment.CurrentDirectory;
            Environment.CurrentDirectory = folder.Folder;
            try
            {
                for (var i = 0; i < folder.Notebooks.Count; i++)
                {
                    var notebook = folder.Notebooks[i];
                    // What a notebook tells the formatters is process-wide; the next one starts without it.
                    Formatter.ResetToDefault();
                    var kernel = run.Plan.Runs(notebook) ? await kernels.TakeAsync(more: folder.Notebooks.Skip(i + 1).Any(run.Plan.Runs)) : null;
                    await new NotebookRun(notebook, kernel, run, progress).ExecuteAsync(cancellation);
                    kernel?.Dispose();
                }
            }
            finally
            {
                Environment.CurrentDirectory = home;
            }
        });

    private static void Save(NotebookFolder folder, RecordCopy record, SavedFiles saved)
    {
        foreach (var notebook in folder.Notebooks)
            saved.Add(notebook.Path, notebook.Read, notebook.ToBytes());
        record.AddTo(saved);
    }
}
