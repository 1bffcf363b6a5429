using EightOhm.Cells.Compiling;
using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Running;

/// <summary>Our own host: compiles a cell and runs it.</summary>
/// <param name="references">What cells are compiled against.</param>
/// <param name="folder">The notebook's folder, from which cells name files.</param>
/// <param name="kept">What was compiled before; null to compile all anew.</param>
public sealed class CellHost(CellReferences references, string folder, IKeptImages? kept = null) : ICellHost
{
    private readonly NotebookCompiler compiler = new(references, folder, kept);
    private readonly CellSession session = new();

    /// <inheritdoc/>
    public Task<CellOutcome> RunAsync(string source, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress = null) =>
        session.RunAsync(compiler.Next(source), executionCount, cancellation, progress);

    /// <inheritdoc/>
    public void Dispose()
    {
        // Its variables go when nobody holds them.
    }
}
