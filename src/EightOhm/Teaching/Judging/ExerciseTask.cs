namespace EightOhm.Teaching;

/// <summary>What is asked and how an answer is judged: one figure, or a choice against limits.</summary>
internal abstract class ExerciseTask
{
    /// <summary>What to type, in words.</summary>
    public abstract string AnswerWith { get; }

    /// <summary>The answer as a key gives it.</summary>
    public abstract string Answer { get; }

    /// <summary>How near it must be, in words.</summary>
    public abstract string Tolerance { get; }

    /// <summary>The usual wrong answers, each with what is said.</summary>
    public abstract IReadOnlyList<Misconception> Misconceptions { get; }

    /// <summary>What closes a solution by itself: the working of the answer.</summary>
    public abstract IReadOnlyList<SolutionStep> OwnSteps { get; }

    /// <summary>Whether every usual wrong answer can be told from the right one.</summary>
    public abstract bool Separated { get; }

    /// <summary>Judges what was given; never throws on it.</summary>
    public abstract Verdict Judge(string question, object?[] given);

    protected static Verdict Wrong(string question, object?[] given, string says) =>
        new(question, string.Join(", ", given.Select(AskedKind.Said)), VerdictKind.Wrong, says);
}
