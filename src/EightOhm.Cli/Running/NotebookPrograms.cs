using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Running;

/// <summary>The notebooks of a run on their way from text to what runs: compiled in the background in their order, as many at a time as there are processors.</summary>
/// <remarks>The compiler's own start is most of the wait for a first cell: it starts with the object, while files are read and checked.</remarks>
internal sealed class NotebookPrograms : IDisposable
{
    private static readonly byte[]? Secret = PersonalSecret.Get();

    private readonly CancellationTokenSource end = new();
    private readonly SemaphoreSlim turns = new(Environment.ProcessorCount);
    private readonly Dictionary<NotebookFile, NotebookProgram> programs = [];

    /// <summary>Begins to compile what is about to run.</summary>
    public void Begin(IEnumerable<NotebookFile> notebooks)
    {
        foreach (var notebook in notebooks)
            programs[notebook] = Begin(notebook);
    }

    /// <summary>A notebook that was begun.</summary>
    public NotebookProgram Of(NotebookFile notebook) => programs[notebook];

    /// <summary>Gives up a notebook that has run: its variables may be large. What was compiled of it is kept.</summary>
    public async Task ReleaseAsync(NotebookFile notebook)
    {
        if (programs.Remove(notebook, out var program))
            await program.KeepAsync();
    }

    public void Dispose()
    {
        end.Cancel();
        end.Dispose();
    }

    private NotebookProgram Begin(NotebookFile notebook)
    {
        var cells = notebook.Cells.Where(c => c.IsCode && !string.IsNullOrWhiteSpace(c.Source)).ToList();
        var kept = new Lazy<KeptImages?>(() => KeptImages.Open(notebook.Path, Secret));
        var home = Path.GetDirectoryName(Path.GetFullPath(notebook.Path))!;
        var ahead = CellsAhead.Begin([.. cells.Select(c => c.Source)], () => new NotebookCompiler(CellReferences.OfThisProcess(), home, kept.Value), TurnAsync, end.Token);
        return new NotebookProgram(cells, ahead, kept, KeptGraph.Open(notebook.Path, Secret));
    }

    private async Task<IDisposable> TurnAsync(CancellationToken cancellation)
    {
        await turns.WaitAsync(cancellation);
        return new Turn(turns);
    }

    private sealed class Turn(SemaphoreSlim turns) : IDisposable
    {
        public void Dispose() => turns.Release();
    }
}
