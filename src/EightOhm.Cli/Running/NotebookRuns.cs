using EightOhm.Cli.Notebooks;
using Microsoft.DotNet.Interactive.Formatting;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>Runs the notebooks one after the other, each in its own folder and in a kernel of its own.</summary>
internal sealed class NotebookRuns(IAnsiConsole console, RecordCopies copies, KernelQueue kernels, RunContext run)
{
    public Task ExecuteAsync(CancellationToken cancellation) => RunProgress.ShowAsync(console, async progress =>
    {
        // Cells open files beside their notebook, as they do in a notebook program.
        var home = Environment.CurrentDirectory;
        try
        {
            var all = copies.All.SelectMany(c => c.Home.Notebooks).ToList();
            foreach (var copy in copies.All)
            {
                Environment.CurrentDirectory = copy.Home.Path;
                using var entered = copy.Enter();
                foreach (var notebook in copy.Home.Notebooks)
                    await ExecuteAsync(notebook, all.Skip(all.IndexOf(notebook) + 1), progress, cancellation);
            }
        }
        finally
        {
            Environment.CurrentDirectory = home;
        }
    });

    private async Task ExecuteAsync(NotebookFile notebook, IEnumerable<NotebookFile> after, RunProgress progress, CancellationToken cancellation)
    {
        // What a notebook tells the formatters is process-wide; the next one starts without it.
        Formatter.ResetToDefault();
        var kernel = run.Plan.Runs(notebook) ? await kernels.TakeAsync(more: after.Any(run.Plan.Runs), cancellation) : null;
        await new NotebookRun(notebook, kernel, run, progress).ExecuteAsync(cancellation);
        kernel?.Dispose();
    }
}
