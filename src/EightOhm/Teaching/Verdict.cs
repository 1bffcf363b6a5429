namespace EightOhm.Teaching;

/// <summary>How an answer was found.</summary>
public enum VerdictKind
{
    /// <summary>Nothing was given yet.</summary>
    Blank,

    /// <summary>Something was given and is not right, or could not be judged; the sentence says which.</summary>
    Wrong,

    /// <summary>The answer is right.</summary>
    Right,
}

/// <summary>What an exercise says of an answer.</summary>
/// <param name="Question">The question.</param>
/// <param name="Given">The answer given; empty for none.</param>
/// <param name="Kind">How it was found.</param>
/// <param name="Says">One sentence or two.</param>
public sealed record Verdict(string Question, string Given, VerdictKind Kind, string Says)
{
    /// <summary>Whether the answer is right.</summary>
    public bool Right => Kind == VerdictKind.Right;

    /// <summary>The limits of a design task, each met or not; empty for a question with one answer.</summary>
    public IReadOnlyList<Criterion> Criteria { get; init; } = [];

    /// <summary>A sentence on the keeping of the progress, where there is something to say; mostly empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>The verdict in one line, without the question.</summary>
    public string Line => Kind == VerdictKind.Blank ? Says : $"{Given}: {Says}";

    /// <summary>The verdict as text.</summary>
    public override string ToString() => string.Join('\n', [Question, Line, .. Criteria.Select(c => c.ToString()), .. Note.Length > 0 ? [Note] : Array.Empty<string>()]);
}
