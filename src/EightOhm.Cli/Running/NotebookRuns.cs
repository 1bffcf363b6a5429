using EightOhm.Cli.Notebooks;
using Microsoft.DotNet.Interactive.Formatting;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>Runs a folder's notebooks one after the other, each in a kernel of its own.</summary>
internal sealed class NotebookRuns(IAnsiConsole console, NotebookFolder folder, KernelQueue kernels, RunContext run)
{
    public Task ExecuteAsync(CancellationToken cancellation) => RunProgress.ShowAsync(console, async progress =>
    {
        // Cells open files beside their notebook, as they do in a notebook program.
        var home = Environment.CurrentDirectory;
        Environment.CurrentDirectory = folder.Folder;
        try
        {
            for (var i = 0; i < folder.Notebooks.Count; i++)
                await ExecuteAsync(folder.Notebooks[i], folder.Notebooks.Skip(i + 1), progress, cancellation);
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
        var kernel = run.Plan.Runs(notebook) ? await kernels.TakeAsync(more: after.Any(run.Plan.Runs)) : null;
        await new NotebookRun(notebook, kernel, run, progress).ExecuteAsync(cancellation);
        kernel?.Dispose();
    }
}
