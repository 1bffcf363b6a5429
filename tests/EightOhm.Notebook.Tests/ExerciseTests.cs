using System.Text.RegularExpressions;
using EightOhm.Teaching;

namespace EightOhm.Notebook.Tests;

/// <summary>The exercises in the notebooks of the course: each once, in its chapter, and no answer with it.</summary>
public sealed partial class ExerciseTests
{
    [Fact]
    public void Every_exercise_of_the_library_is_asked_once_and_in_its_chapter()
    {
        var asked = Chapters.Names.SelectMany(n => Asked().Matches(Chapters.Code(n)).Select(m => (Notebook: n, Id: m.Groups["id"].Value))).ToList();
        Assert.All(asked, a => Assert.StartsWith(a.Id[..2], a.Notebook, StringComparison.Ordinal));
        Assert.Equal(TeacherKey.Of().Exercises.Select(e => e.Id).Order(StringComparer.Ordinal), asked.Select(a => a.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_cell_holds_an_answer_a_hint_or_a_solution() => Assert.All(Chapters.Names, notebook =>
    {
        var code = Chapters.Code(notebook);
        Assert.DoesNotContain("Exercise.Ask", code, StringComparison.Ordinal);
        foreach (Match exercise in Asked().Matches(code))
            Assert.DoesNotMatch($@"\b{exercise.Groups["name"].Value}\.(Check\(\s*[^)\s]|Hint\(|Solution\()", code);
    });

    [GeneratedRegex("""var\s+(?<name>\w+)\s*=\s*Exercise\s*\.\s*Of\("(?<id>[^"]+)"\)""")]
    private static partial Regex Asked();
}
