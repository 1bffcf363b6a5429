using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Editing;

/// <summary>Finds the place in a cell as it was written from the place in its lifted text.</summary>
/// <param name="changes">What was changed, by the places of the written text.</param>
internal sealed class TypedPlaces(IReadOnlyList<TextChange> changes)
{
    private readonly List<TextChange> _changes = [.. changes.OrderBy(c => c.Span.Start)];

    /// <summary>The place in the written text; what stands only in the lifted text is where it was put in.</summary>
    /// <param name="lifted">A place in the lifted text, in letters from its start.</param>
    public int Of(int lifted)
    {
        var moved = 0;
        foreach (var change in _changes)
        {
            var start = change.Span.Start + moved;
            var put = change.NewText?.Length ?? 0;
            if (lifted <= start)
                break;
            if (lifted < start + put)
                return change.Span.Start;
            moved += put - change.Span.Length;
            if (lifted == start + put)
                return change.Span.End;
        }

        return lifted - moved;
    }
}
