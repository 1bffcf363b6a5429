using EightOhm.Cells.Editing;
using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Tests.Editing;

/// <summary>One assistant for all tests, asked at the place that a stroke | marks in a cell.</summary>
public sealed class Asked : IDisposable
{
    public CellAssistant Assistant { get; } = new(CellReferences.OfThisProcess());

    /// <summary>The cells of the supply's chapter up to where the bridge and the rails are known.</summary>
    public IReadOnlyList<string> Supply { get; } = [.. Chapters.Cells("tern-100/05-supply").Take(10)];

    public Task<CompletionAnswer> Completed(string marked, params IReadOnlyList<string> before) => Assistant.CompleteAsync(before, Text(marked), Place(marked));

    public Task<SignatureAnswer?> Called(string marked, params IReadOnlyList<string> before) => Assistant.SignaturesAsync(before, Text(marked), Place(marked));

    public Task<HoverAnswer?> Hovered(string marked, params IReadOnlyList<string> before) => Assistant.HoverAsync(before, Text(marked), Place(marked));

    public Task<IReadOnlyList<Fault>> Diagnosed(string text, params IReadOnlyList<string> before) => Assistant.DiagnoseAsync(before, text);

    public void Dispose() => Assistant.Dispose();

    private static string Text(string marked) => marked.Remove(Place(marked), 1);

    private static int Place(string marked) => marked.IndexOf('|', StringComparison.Ordinal);
}
