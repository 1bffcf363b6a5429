namespace EightOhm.Explaining;

/// <summary>The working of a number: the line in symbols, with numbers, the result, and the formulas it called.</summary>
/// <param name="Name">What is computed: a symbol; empty for a free expression.</param>
/// <param name="Lines">Its lines; the last gives the result.</param>
/// <param name="Value">The result.</param>
/// <param name="Source">Where the formula stands; null for a free expression.</param>
/// <param name="Where">What the formula's parameters stand for, where their names differ from the caller's.</param>
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
    /// <summary>The result as text.</summary>
    public string Result => Lines[^1].Result;

    /// <summary>The working as plain text.</summary>
    public override string ToString() => ExplanationText.Write(this);
}

/// <summary>One line of working: name = symbols = numbers = result.</summary>
/// <param name="Name">The local's name; empty for the result of a free expression.</param>
/// <param name="InSymbols">The expression in symbols.</param>
/// <param name="InNumbers">The same with the numbers put in.</param>
/// <param name="Result">The value as text.</param>
public sealed record WorkingLine(string Name, MathNode InSymbols, MathNode InNumbers, string Result)
{
    /// <summary>The line as the parts between its equals signs, without repetition: a bare value gives way to the same with its decibels.</summary>
    public IReadOnlyList<MathNode> Parts()
    {
        var parts = new List<MathNode>();
        if (Name.Length > 0)
            parts.Add(new NameNode(Name));
        var seen = parts.Select(MathText.Write).ToHashSet(StringComparer.Ordinal);
        foreach (var part in new[] { InSymbols, InNumbers, new NumberNode(Result, Spaced: true) })
            if (part is not NumberNode { Text: "" } && !InFull(part) && seen.Add(MathText.Write(part)))
                parts.Add(part);
        return parts;
    }

    // A bare "23.62" says nothing beside the result "23.62 (27.47 dB)".
    private bool InFull(MathNode part) => part is NumberNode n && Result.StartsWith(n.Text + " (", StringComparison.Ordinal);
}

/// <summary>How well a solver's result satisfies its balance.</summary>
/// <param name="Left">The left side with the solution put in.</param>
/// <param name="Right">The right side with the solution put in.</param>
/// <param name="LeftOver">The difference of the sides.</param>
/// <param name="Iterations">The steps taken, when the solver said so.</param>
public sealed record SolvedNote(string Left, string Right, string LeftOver, int? Iterations)
{
    /// <summary>The note in one line.</summary>
    public override string ToString()
    {
        var steps = Iterations is { } n ? FormattableString.Invariant($", {n} iterations") : "";
        return $"solved: left {Left}, right {Right}, left over {LeftOver}{steps}";
    }
}
