using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Editing;

/// <summary>Helps whoever writes a cell: names that fit, what a call asks for, what a name is, what the compiler has against it.</summary>
/// <remarks>
/// Every question brings the texts of the notebook's cells before the one in hand, in order, and its own text as it is typed; places are counted in letters of that text.
/// What was read of earlier cells is kept, so ask one assistant again rather than make another. It may be asked from several threads at once. Nothing is run.
/// A cell for another kernel, or one that loads other code, has no answers.
/// </remarks>
public sealed class CellAssistant : IDisposable
{
    // Made when the first question comes, beside whoever asks.
    private readonly Lazy<CellDesk> _desk;

    /// <summary>An assistant that has read no cell.</summary>
    /// <param name="references">What the cells are compiled against, such as <see cref="CellReferences.OfThisProcess"/>; with a resolver where cells may name assemblies by their files.</param>
    public CellAssistant(CellReferences references)
    {
        ArgumentNullException.ThrowIfNull(references);
        // What cells seldom name too: a name that is there must not be called unknown.
        _desk = new(() => new(references.WithAll()));
    }

    /// <summary>Reads the cells and the library beforehand, so that the first question is answered as quickly as the next.</summary>
    /// <param name="before">Cells that questions will be asked behind, such as all of a chapter.</param>
    /// <param name="ct">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task PrepareAsync(IReadOnlyList<string> before, CancellationToken ct = default)
    {
        await CompleteAsync(before, "1.", 2, ct).ConfigureAwait(false);
        await CompleteAsync(before, "", 0, ct).ConfigureAwait(false);
        await DiagnoseAsync(before, "Explain(() => 1.V)", ct).ConfigureAwait(false);
    }

    /// <summary>The names that may stand at the caret.</summary>
    /// <param name="before">The cells before the one in hand.</param>
    /// <param name="text">The cell in hand.</param>
    /// <param name="offset">The caret; 0 to the length of the text.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>Those that fit what is typed before the caret, the likeliest first; none where no name may stand.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The caret is outside the text.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<CompletionAnswer> CompleteAsync(IReadOnlyList<string> before, string text, int offset, CancellationToken ct = default) =>
        At(before, text, offset, new([], offset, offset), document => Completions.At(document, offset, ct), ct);

    /// <summary>What is written of a name that <see cref="CompleteAsync"/> gave without.</summary>
    /// <param name="before">The cells before the one in hand.</param>
    /// <param name="text">The cell in hand.</param>
    /// <param name="offset">The caret; 0 to the length of the text.</param>
    /// <param name="label">The name as it was given.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>HTML; empty where nothing is written.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The caret is outside the text.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<string> DescribeAsync(IReadOnlyList<string> before, string text, int offset, string label, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(label);
        return At(before, text, offset, "", document => Completions.Describe(document, offset, label, ct), ct);
    }

    /// <summary>What the call around the caret asks for.</summary>
    /// <param name="before">The cells before the one in hand.</param>
    /// <param name="text">The cell in hand.</param>
    /// <param name="offset">The caret; 0 to the length of the text.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>Its forms; null where the caret is in no call.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The caret is outside the text.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<SignatureAnswer?> SignaturesAsync(IReadOnlyList<string> before, string text, int offset, CancellationToken ct = default) =>
        At(before, text, offset, null, document => Signatures.At(document, offset, ct), ct);

    /// <summary>What there is to know of the name at a place.</summary>
    /// <param name="before">The cells before the one in hand.</param>
    /// <param name="text">The cell in hand.</param>
    /// <param name="offset">The place; 0 to the length of the text.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>What is known; null where no name stands or nobody knows it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside the text.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<HoverAnswer?> HoverAsync(IReadOnlyList<string> before, string text, int offset, CancellationToken ct = default) =>
        At(before, text, offset, null, document => Hovers.At(document, offset, ct), ct);

    /// <summary>What the compiler has against the cell in hand.</summary>
    /// <param name="before">The cells before it.</param>
    /// <param name="text">The cell in hand.</param>
    /// <param name="ct">Stops it.</param>
    /// <returns>Errors and warnings at the places of the text as it is typed, in their order.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<IReadOnlyList<Fault>> DiagnoseAsync(IReadOnlyList<string> before, string text, CancellationToken ct = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        // Literals in lambdas are lifted before a cell is compiled; without that the compiler would have something against each.
        var changes = LiteralLift.Changes(text);
        return At(before, CellText.With(text, changes), 0, [], document => Faults.Of(document, changes, SourceText.From(text), ct), ct);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_desk.IsValueCreated)
            _desk.Value.Dispose();
    }

    private Task<T> At<T>(IReadOnlyList<string> before, string text, int offset, T none, Func<Document, Task<T>> answer, CancellationToken ct)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(text);
        if (offset < 0 || offset > text.Length)
            throw new ArgumentOutOfRangeException(nameof(offset), offset, $"The place must lie within the cell, 0 to {text.Length}; count letters from the cell's start.");
        // Away from the asking thread: the compiler works, it does not wait.
        return Task.Run(async () => CellChain.IsForeign(text) ? none : await answer(await _desk.Value.DocumentAsync(before, text, ct).ConfigureAwait(false)).ConfigureAwait(false), ct);
    }
}
