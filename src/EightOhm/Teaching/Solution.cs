using EightOhm.Explaining;

namespace EightOhm.Teaching;

/// <summary>The worked solution of an exercise.</summary>
/// <param name="Question">The question.</param>
/// <param name="Steps">Its steps in order.</param>
/// <param name="Answer">The answer as text; of a design task one choice that keeps all limits, others may.</param>
public sealed record Solution(string Question, IReadOnlyList<SolutionStep> Steps, string Answer)
{
    /// <summary>The solution as text.</summary>
    public override string ToString() => string.Join('\n', [Question, .. Steps.Select(s => s.ToString()), Answer]);
}

/// <summary>A step of a solution: words, or the working of a formula.</summary>
/// <param name="Words">The words; empty where the step is a working.</param>
/// <param name="Working">The working; null where the step is words.</param>
public sealed record SolutionStep(string Words, Explanation? Working = null)
{
    /// <summary>The step as text.</summary>
    public override string ToString() => Working?.ToString() ?? Words;
}
