using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cells.Running;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using DiagnosticSeverity = Microsoft.CodeAnalysis.DiagnosticSeverity;

namespace EightOhm.Notebook;

/// <summary>A C# kernel of .NET Interactive in this process as a host of cells: what the tool's own host is held against.</summary>
/// <param name="root">The root kernel.</param>
/// <param name="csharp">The C# kernel within it.</param>
/// <param name="assemblies">The files of the assemblies that the package line brings.</param>
public sealed class KernelCellHost(CompositeKernel root, CSharpKernel csharp, IReadOnlyList<string> assemblies) : ICellHost
{
    private bool loaded;

    /// <inheritdoc/>
    public async Task<CellOutcome> RunAsync(string source, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress = null)
    {
        // The cell's own threads inherit this flow, and so its loops see the work.
        using var work = Work.Begin(cancellation, progress);
        var events = new List<KernelEvent>();
        if (PackageLines.AskIn(source) && !loaded)
        {
            loaded = true;
            csharp.AddAssemblyReferences(assemblies);
            events.AddRange(await SendAsync(NotebookExtension.Script, cancellation).ConfigureAwait(false));
        }

        events.AddRange(await SendAsync(PackageLines.Remove(source), cancellation).ConfigureAwait(false));
        return new CellOutcome(Outputs(events, executionCount), Failure(events));
    }

    /// <inheritdoc/>
    public void Dispose() => root.Dispose();

    private static JsonArray Outputs(IEnumerable<KernelEvent> events, int executionCount)
    {
        var outputs = new CellOutputs();
        foreach (var shown in events.OfType<DisplayEvent>())
        {
            // All of these derive from DisplayEvent: the special ones come first.
            if (shown is StandardOutputValueProduced or StandardErrorValueProduced)
                outputs.Print(shown is StandardErrorValueProduced ? "stderr" : "stdout", string.Concat(shown.FormattedValues.Select(v => v.Value)));
            else if (shown is not (ErrorProduced or DisplayedValueUpdated) && shown.FormattedValues.Count > 0)
                Add(outputs, shown, executionCount);
        }

        return outputs.End();
    }

    private static void Add(CellOutputs outputs, DisplayEvent shown, int executionCount)
    {
        var forms = shown.FormattedValues.DistinctBy(v => v.MimeType).Select(v => KeyValuePair.Create(v.MimeType, v.Value));
        if (shown is ReturnValueProduced)
            outputs.Return(forms, executionCount);
        else
            outputs.Show(forms);
    }

    private static CellFailure? Failure(List<KernelEvent> events)
    {
        if (events.OfType<CommandFailed>().LastOrDefault() is not { } failed)
            return null;
        var faults = events.OfType<DiagnosticsProduced>().SelectMany(d => d.Diagnostics).Where(d => d.Severity == DiagnosticSeverity.Error)
            .Select(d => new EightOhm.Cells.Compiling.CellFault(d.LinePositionSpan.Start.Line + 1, $"error {d.Code}: {d.Message}")).ToList();
        return failed.Exception is null or CodeSubmissionCompilationErrorException && faults.Count > 0 ? CellFailure.Of(faults)
            : failed.Exception is { } exception ? CellFailures.Of(exception)
            : new CellFailure(FailureKind.Failed, null, null, failed.Message);
    }

    private async Task<IReadOnlyList<KernelEvent>> SendAsync(string code, CancellationToken cancellation) =>
        [.. (await root.SendAsync(new SubmitCode(code), cancellation).ConfigureAwait(false)).Events];
}
