namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Each notebook run in the real kernel by Jupyter's own client, once for all tests that ask: a run costs more than all that is asserted of it.</summary>
/// <remarks>
/// Notebooks of one folder share a kernel (Fixtures/run-notebooks.py). That a notebook needs nothing of another is held by the embedded
/// runs, each in a kernel of its own (<see cref="BookOfChapters"/>); that it loads the package by its own line, by the first of each kernel and the live pages.
/// </remarks>
internal static class KernelRuns
{
    // A start costs as much as eight notebooks of a course. Those of a design say the same of other parts in the same names, and a kernel takes no name for a variable and a type.
    private const int OfOneDesign = 8;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);
    private static readonly Lock Gate = new();
    private static Dictionary<string, Task<string>>? started;

    /// <summary>What a notebook gave; the first that asks starts all.</summary>
    public static async Task<NotebookFile> Of(JupyterFixture jupyter, string notebook)
    {
        lock (Gate)
            started ??= Start(jupyter);
        var results = await started[notebook];
        return NotebookFile.Read(Path.Combine(results, Path.GetFileName(notebook)));
    }

    // Notebooks of one record write into it: their kernels go one after the other, and first, since that takes longest.
    private static Dictionary<string, Task<string>> Start(JupyterFixture jupyter)
    {
        var designs = Clone.Records.Select(Clone.FolderOf).ToHashSet(StringComparer.Ordinal);
        var runs = new Dictionary<string, Task<string>>(StringComparer.Ordinal);
        foreach (var folder in Clone.Chapters.Append(NotebookNames.Probe).GroupBy(Clone.FolderOf).OrderBy(folder => !designs.Contains(folder.Key)))
        {
            Task before = Task.CompletedTask;
            foreach (var notebooks in folder.Chunk(designs.Contains(folder.Key) ? OfOneDesign : int.MaxValue))
            {
                var run = After(before, () => Run(jupyter, notebooks));
                before = designs.Contains(folder.Key) ? run : before;
                foreach (var notebook in notebooks)
                    runs[notebook] = run;
            }
        }

        return runs;
    }

    private static async Task<string> After(Task before, Func<Task<string>> run)
    {
        await before.ContinueWith(_ => { }, TaskScheduler.Default);
        return await Places.Take(run);
    }

    private static async Task<string> Run(JupyterFixture jupyter, string[] notebooks)
    {
        var results = Directory.CreateDirectory(jupyter.FolderOf(Path.Combine("ran", Clone.FolderOf(notebooks[0])))).FullName;
        // A kernel that runs many notebooks lives long enough for code that is compiled well at once.
        var environment = new Dictionary<string, string?>(jupyter.Environment) { ["DOTNET_TieredCompilation"] = "0" };
        await Command.Must(jupyter.FolderOf(JupyterFixture.Run), environment, Patience,
            [Needs.Python!, Path.Combine(Clone.Fixtures, "run-notebooks.py"), results, .. notebooks.Select(notebook => Path.Combine(jupyter.FolderOf(JupyterFixture.Run), notebook))]);
        return results;
    }
}
