namespace EightOhm.Explaining;

/// <summary>The working of a number: the line in symbols, with numbers, the result, and the formulas it called.</summary>
/// <param name="Name">What is computed: a symbol; empty for a free expression.</param>
/// <param name="Lines">Its lines; the last gives the result.</param>
/// <param name="Value">The result.</param>
/// <param name="Source">Where the formula stands; null for a free expression.</param>
/// <param name="Where">What the formula's symbols stand for where the caller has another name for them, and what the objects are; in the order they appear.</param>
/// <param name="Opened">The formulas called in the lines, each with its own working, one level down.</param>
/// <param name="Solved">What a solver left over; null for a plain formula.</param>
public sealed record Explanation(
    string Name,
    IReadOnlyList<WorkingLine> Lines,
    object Value,
    string? Source,
    IReadOnlyList<WorkingLine> Where,
    IReadOnlyList<Explanation> Opened,
    SolvedNote? Solved)
{
    /// <summary>What a solver without an equation looked for and how; null otherwise.</summary>
    public string? Worked { get; init; }

    /// <summary>The result as text.</summary>
    public string Result => Lines[^1].Result;

    /// <summary>The sources of all that is shown, each once, in the order they are met; a reference is the place in this list, from 1.</summary>
    public IReadOnlyList<string> Sources => [.. AllSources.Distinct(StringComparer.Ordinal)];

    private IEnumerable<string> AllSources => (Source is null ? [] : new[] { Source }).Concat(Opened.SelectMany(o => o.AllSources));

    /// <summary>The working as plain text.</summary>
    public override string ToString() => ExplanationText.Write(this);
}
