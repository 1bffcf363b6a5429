namespace EightOhm.Teaching;

/// <summary>How far a student is, chapter by chapter.</summary>
/// <param name="Chapters">A row for each chapter.</param>
/// <param name="Note">A sentence where the file could not be read; empty otherwise.</param>
public sealed record CourseProgress(IReadOnlyList<ChapterProgress> Chapters, string Note = "")
{
    internal static CourseProgress Of(IReadOnlyDictionary<string, ExerciseProgress> kept, string note)
    {
        // A teacher's own exercises count where they were tried.
        var ids = CourseExercises.All.Select(e => e.Id).Union(kept.Keys, StringComparer.Ordinal);
        var rows = ids.GroupBy(ExerciseId.Chapter).OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => new ChapterProgress(
            CourseExercises.Chapters.FirstOrDefault(k => k.Number == c.Key)?.ToString() ?? c.Key,
            c.Count(),
            c.Count(id => kept.GetValueOrDefault(id)?.First == true),
            c.Count(id => kept.GetValueOrDefault(id)?.Right == true)));
        return new([.. rows], note);
    }
}

/// <summary>How far a student is in a chapter.</summary>
/// <param name="Chapter">Number and subject.</param>
/// <param name="Asked">The exercises it has.</param>
/// <param name="AtFirstTry">Those right with the first answer, the solution unseen.</param>
/// <param name="Right">Those right.</param>
public sealed record ChapterProgress(string Chapter, int Asked, int AtFirstTry, int Right)
{
    /// <summary>Those not right yet.</summary>
    public int Open => Asked - Right;
}
