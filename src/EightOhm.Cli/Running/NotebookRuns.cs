using EightOhm.Cli.Notebooks;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>Runs the notebooks one after the other, each in its own folder and with variables of its own.</summary>
internal sealed class NotebookRuns(IAnsiConsole console, RecordCopies copies, NotebookPrograms programs, RunContext run)
{
    public Task ExecuteAsync(CancellationToken cancellation) => RunProgress.ShowAsync(console, async progress =>
    {
        // Cells open files beside their notebook, as they do in a notebook program.
        var home = Environment.CurrentDirectory;
        try
        {
            programs.Begin(copies.All.SelectMany(c => c.Home.Notebooks).Where(run.Plan.Runs));
            foreach (var copy in copies.All)
            {
                Environment.CurrentDirectory = copy.Home.Path;
                using var entered = copy.Enter();
                foreach (var notebook in copy.Home.Notebooks)
                    await ExecuteAsync(notebook, progress, cancellation);
            }
        }
        finally
        {
            Environment.CurrentDirectory = home;
        }
    });

    private async Task ExecuteAsync(NotebookFile notebook, RunProgress progress, CancellationToken cancellation)
    {
        await new NotebookRun(notebook, run.Plan.Runs(notebook) ? programs.Of(notebook) : null, run, progress).ExecuteAsync(cancellation);
        await programs.ReleaseAsync(notebook);
    }
}
