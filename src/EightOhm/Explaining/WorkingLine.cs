namespace EightOhm.Explaining;

/// <summary>One line of working: name = symbols = numbers = result.</summary>
/// <param name="Name">The local's name; empty for the result of a free expression.</param>
/// <param name="InSymbols">The expression in symbols; of cases only the one that applies.</param>
/// <param name="InNumbers">The same with the numbers put in.</param>
/// <param name="Result">The value as text.</param>
/// <param name="IsCondition">Whether the line says that something is true or false.</param>
public sealed record WorkingLine(string Name, MathNode InSymbols, MathNode InNumbers, string Result, bool IsCondition = false)
{
    /// <summary>Why the case that is shown is the one that applies; empty where there are no cases.</summary>
    public IReadOnlyList<CaseNote> Cases { get; init; } = [];

    /// <summary>What stands between the parts: an equals sign, or "is the same as" between conditions.</summary>
    public string Joint { get; init; } = IsCondition ? " ⇔ " : " = ";

    /// <summary>The line as the parts between its equals signs, without repetition: a bare value gives way to the same with its decibels.</summary>
    public IReadOnlyList<MathNode> Parts()
    {
        var parts = new List<MathNode>();
        if (Name.Length > 0)
            parts.Add(new NameNode(Name));
        var seen = parts.Select(MathText.Write).ToHashSet(StringComparer.Ordinal);
        foreach (var part in new[] { InSymbols, InNumbers, Last })
            if (part is not NumberNode { Text: "" } && !InFull(part) && seen.Add(MathText.Write(part)))
                parts.Add(part);
        return parts;
    }

    private MathNode Last => InNumbers is WordsNode || IsCondition ? new WordsNode(Result) : new NumberNode(Result, Spaced: true);

    // A bare "23.62" says nothing beside the result "23.62 (27.47 dB)".
    private bool InFull(MathNode part) => part is NumberNode n && Result.StartsWith(n.Text + " (", StringComparison.Ordinal);
}

/// <summary>The condition of the case that applies.</summary>
/// <param name="InSymbols">The condition in symbols.</param>
/// <param name="InNumbers">The same with the numbers put in.</param>
public sealed record CaseNote(MathNode InSymbols, MathNode InNumbers);

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
