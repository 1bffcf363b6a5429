using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>The answers, tolerances, usual wrong answers, hints and solutions of the course's exercises, for a seed.</summary>
/// <param name="Seed">The seed; 0 for the book's own numbers.</param>
/// <param name="Exercises">The exercises in the order of the course.</param>
public sealed record TeacherKey(int Seed, IReadOnlyList<KeyEntry> Exercises)
{
    /// <summary>The key for a seed.</summary>
    /// <param name="seed">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The seed is negative.</exception>
    public static TeacherKey Of(int seed = 0)
    {
        Guard.NotNegative(seed, nameof(seed), "A seed is a whole number such as 42; 0 gives the book's own numbers.");
        return new(seed, [.. from chapter in CourseExercises.Chapters from e in chapter.Exercises select Entry(chapter, e.Make(seed))]);
    }

    private static KeyEntry Entry(CourseChapter chapter, Exercise e) =>
        new(chapter.ToString(), e.Id, e.Level, e.Question, e.Task.Answer, e.Task.Tolerance, e.AllHints, e.Shown(), e.Task.Misconceptions);
}

/// <summary>An exercise with all that its teacher knows.</summary>
/// <param name="Chapter">Number and subject of its chapter.</param>
/// <param name="Id">Its name.</param>
/// <param name="Level">How much it asks.</param>
/// <param name="Question">The question with its numbers.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Tolerance">How near it must be, in words.</param>
/// <param name="Hints">The hints in their order.</param>
/// <param name="Solution">The worked solution.</param>
/// <param name="Misconceptions">The usual wrong answers, each with the sentence that is said.</param>
public sealed record KeyEntry(
    string Chapter,
    string Id,
    ExerciseLevel Level,
    string Question,
    string Answer,
    string Tolerance,
    IReadOnlyList<string> Hints,
    Solution Solution,
    IReadOnlyList<Misconception> Misconceptions)
{
    /// <summary>The level in words.</summary>
    public string LevelWords => Exercise.LevelWords(Level);
}
