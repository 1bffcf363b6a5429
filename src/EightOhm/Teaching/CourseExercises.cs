using EightOhm.Teaching.Chapters;

namespace EightOhm.Teaching;

/// <summary>The exercises of the course, chapter by chapter.</summary>
internal static class CourseExercises
{
    public static IReadOnlyList<CourseChapter> Chapters { get; } =
    [
        Chapter00.Of, Chapter01.Of, Chapter02.Of, Chapter03.Of, Chapter04.Of,
        Chapter05.Of, Chapter06.Of, Chapter07.Of, Chapter08.Of, Chapter09.Of,
        Chapter10.Of, Chapter11.Of, Chapter12.Of, Chapter13.Of, Chapter14.Of,
    ];

    public static IEnumerable<ExerciseDefinition> All => Chapters.SelectMany(c => c.Exercises);

    public static ExerciseDefinition Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        if (All.FirstOrDefault(e => e.Id == id) is { } found)
            return found;
        var chapter = Chapters.FirstOrDefault(c => id.StartsWith(c.Number, StringComparison.Ordinal));
        throw new ArgumentException(chapter is null
            ? $"There is no exercise '{id}'. Its name begins with the chapter: {string.Join(", ", Chapters.Select(c => c.Number))}; chapter 00 has {Names(Chapters[0])}."
            : $"There is no exercise '{id}'. Chapter {chapter.Number} has {Names(chapter)}.", nameof(id));
    }

    private static string Names(CourseChapter chapter) => string.Join(", ", chapter.Exercises.Select(e => e.Id));
}

/// <summary>The exercises of a chapter.</summary>
/// <param name="Number">Two digits.</param>
/// <param name="Title">The subject.</param>
/// <param name="Exercises">From warm-up to design task.</param>
internal sealed record CourseChapter(string Number, string Title, IReadOnlyList<ExerciseDefinition> Exercises)
{
    public override string ToString() => $"{Number} {Title}";
}
