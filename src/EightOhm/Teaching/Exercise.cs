using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>A question that checks itself: <c>var ripple = Exercise.Of("05-ripple"); ripple.Check(3.V)</c>.</summary>
/// <remarks>The exercises of the course are defined in the library, so that no answer stands in a cell; a teacher's own begin with <see cref="Ask{T}(ExerciseText, T)"/>.
/// Nothing that a student gives throws: it is judged in words.</remarks>
public sealed partial class Exercise
{
    private readonly List<string> _hints = [];
    private readonly List<SolutionStep> _steps = [];
    private readonly ExerciseTask _task;
    private int _hinted;
    private bool _solved;

    private Exercise(ExerciseText question, ExerciseTask task) => (Question, _task) = (question.ToString(), task);

    /// <summary>The question with its numbers.</summary>
    public string Question { get; }

    /// <summary>Its name, such as "05-ripple"; empty for one that is not kept in the progress.</summary>
    public string Id { get; private set; } = "";

    /// <summary>How much it asks.</summary>
    public ExerciseLevel Level { get; private set; }

    /// <summary>The seed of its numbers; 0 for the book's own.</summary>
    public int NumbersOfSeed { get; private set; }

    /// <summary>What to type for an answer, in words.</summary>
    public string AnswerWith => _task.AnswerWith;

    /// <summary>How many hints there are.</summary>
    public int Hintable => _hints.Count;

    internal ExerciseTask Task => _task;

    internal IReadOnlyList<string> AllHints => _hints;

    /// <summary>Judges an answer; without one it says how to give it.</summary>
    /// <param name="answer">The answer: a value in any unit, or in a design task the values of the choice in the order the question names.</param>
    /// <returns>A verdict; a wrong answer gets a sentence that helps and never the right one.</returns>
    public Verdict Check(params object?[]? answer)
    {
        if (answer is null or [])
            return new Verdict(Question, "", VerdictKind.Blank, $"Not answered yet. {AnswerWith} {(Hintable > 0 ? "Hint() gives a hint." : "")}".TrimEnd());
        var verdict = _task.Judge(Question, answer);
        return Id.Length == 0 ? verdict : verdict with { Note = ProgressFile.Here.Keep(Id, verdict.Right, aided: _solved) };
    }

    /// <summary>The next hint, from a nudge to nearly there; the last again after the last.</summary>
    public Hint Hint()
    {
        if (_hints.Count == 0)
            return new Hint(0, 0, "There is no hint; Solution() shows the working.");
        _hinted = Math.Min(_hinted + 1, _hints.Count);
        return new Hint(_hinted, _hints.Count, _hints[_hinted - 1]);
    }

    /// <summary>The worked solution. An answer checked after it does not count as right at the first try.</summary>
    public Solution Solution()
    {
        _solved = true;
        return Shown();
    }

    /// <summary>The exercise as text.</summary>
    public override string ToString() => string.Join('\n', [.. Id.Length > 0 ? [$"Exercise {Title}"] : Array.Empty<string>(), Question, AnswerWith]);

    /// <summary>Its name, level, and seed where it is not the book's.</summary>
    public string Title => $"{Id}{(Id.Length > 0 ? ", " : "")}{LevelWords(Level)}{(NumbersOfSeed > 0 ? $", numbers of seed {QuantityFormat.Short(NumbersOfSeed)}" : "")}";

    internal static string LevelWords(ExerciseLevel level) => level switch
    {
        ExerciseLevel.WarmUp => "warm-up",
        ExerciseLevel.Steps => "several steps",
        _ => "open design task",
    };

    // What a teacher's key shows, without counting it as seen.
    internal Solution Shown() => new(Question, [.. _steps, .. _task.OwnSteps], $"Answer: {_task.Answer}.");

    private static Explanation Worked<T>(System.Linq.Expressions.Expression<Func<T>> working) => Workings.Explain(working);
}
