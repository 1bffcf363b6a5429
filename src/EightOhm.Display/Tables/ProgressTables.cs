using System.Globalization;
using EightOhm.Teaching;

namespace EightOhm.Display.Tables;

/// <summary>The progress over the course as a table.</summary>
public static class ProgressTables
{
    /// <summary>A row for each chapter, and one for all.</summary>
    /// <param name="progress">The progress.</param>
    [Shows]
    public static Table Of(CourseProgress progress)
    {
        ArgumentNullException.ThrowIfNull(progress);
        var all = new ChapterProgress("all chapters", progress.Chapters.Sum(c => c.Asked), progress.Chapters.Sum(c => c.AtFirstTry), progress.Chapters.Sum(c => c.Right));
        return new Table(
            ["chapter", "asked", "right at first try", "right", "open"],
            [.. progress.Chapters.Append(all).Select(IReadOnlyList<string> (c) => [c.Chapter, Count(c.Asked), Count(c.AtFirstTry), Count(c.Right), Count(c.Open)])],
            [1, 2, 3, 4],
            progress.Note.Length > 0 ? $"progress over the course. {progress.Note}" : "progress over the course");
    }

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
