using EightOhm.Cli.Book;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Output;
using EightOhm.Display.Tables;
using Microsoft.DotNet.Interactive.Formatting;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>The whole run: read, check, run, write the book, and only then put anything in its place.</summary>
internal sealed class Runner(IAnsiConsole console)
{
    public async Task RunAsync(RunRequest request, CancellationToken cancellation)
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
        using (record.Enter())
            await RunNotebooksAsync(folder, kernels, request.Limit, cancellation);

        var records = record.Records;
        var sheet = RecordTables.Compliance(records.SelectMany(r => r.Compliance()));
        new BookWriter(book.New).Write(
            records.Count > 0 ? string.Join(", ", records.Select(r => r.Name)) : Path.GetFileName(folder.Folder),
            folder.Notebooks,
            sheet,
            [.. records.Select(r => Path.GetFileName(r.Path))]);
        using var saved = new SavedFiles();
        if (request.Save)
        {
            foreach (var notebook in folder.Notebooks)
                saved.Add(notebook.Path, notebook.Read, notebook.ToBytes());
            record.AddTo(saved);
        }

        // From here on an interruption comes too late: it takes milliseconds, and half of it would be worse than all.
        cancellation.ThrowIfCancellationRequested();
        book.Publish();
        saved.Publish();

        ComplianceTable.Show(console, sheet);
        console.WriteLine($"The book is at {Path.GetRelativePath(Environment.CurrentDirectory, book.IndexPath)}");
    }

    private Task RunNotebooksAsync(NotebookFolder folder, KernelQueue kernels, TimeSpan limit, CancellationToken cancellation) =>
        RunProgress.ShowAsync(console, async progress =>
        {
            // Cells open files beside their notebook, as they do in a notebook program.
            var home = Environment.CurrentDirectory;
            Environment.CurrentDirectory = folder.Folder;
            try
            {
                for (var i = 0; i < folder.Notebooks.Count; i++)
                {
                    // What a notebook tells the formatters is process-wide; the next one starts without it.
                    Formatter.ResetToDefault();
                    var kernel = await kernels.TakeAsync(more: i + 1 < folder.Notebooks.Count);
                    await new NotebookRun(folder.Notebooks[i], kernel, limit, progress).ExecuteAsync(cancellation);
                    kernel.Dispose();
                }
            }
            finally
            {
                Environment.CurrentDirectory = home;
            }
        });
}
