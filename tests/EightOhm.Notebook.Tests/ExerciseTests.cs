using System.Text.RegularExpressions;

namespace EightOhm.Notebook.Tests;

/// <summary>Every exercise of every notebook: it knows its slips, and takes a right answer in any unit.</summary>
[Collection(Cells.Kernels)]
public sealed partial class ExerciseTests(Chapters chapters) : IClassFixture<Chapters>
{
    public static TheoryData<string> Notebooks => [.. Chapters.Names];

    [Theory]
    [MemberData(nameof(ExerciseRows.All), MemberType = typeof(ExerciseRows))]
    public async Task An_exercise_knows_its_slips_and_takes_another_unit(
        string notebook, string exercise, string wrong, string says, string otherWrong, string otherSays, string right)
    {
        var cells = await chapters.After(notebook);
        Assert.StartsWith(says, await Said(wrong), StringComparison.Ordinal);
        Assert.StartsWith(otherSays, await Said(otherWrong), StringComparison.Ordinal);
        Assert.StartsWith("Right: ", await Said(right), StringComparison.Ordinal);

        async Task<string> Said(string answer) => (await cells.Shown($"{exercise}.Check({answer}).Says"))["text/plain"];
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task The_last_answer_in_a_notebook_is_right(string notebook)
    {
        var cells = await chapters.After(notebook);
        foreach (var exercise in Declared(notebook))
        {
            var answer = Checked().Matches(string.Join("\n", Chapters.Code(notebook))).Last(m => m.Groups["name"].Value == exercise).Value;
            Assert.Equal("True", (await cells.Shown($"{answer}.Right.ToString()"))["text/plain"]);
        }
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void A_notebook_has_two_exercises_and_each_has_its_row(string notebook)
    {
        var declared = Declared(notebook);
        Assert.True(declared.Count >= 2, $"{notebook} has {declared.Count} exercises; a chapter has at least two.");
        Assert.Equal(Asked().Count(string.Join("\n", Chapters.Code(notebook))), declared.Count);
        Assert.Equal(
            declared.Order(StringComparer.Ordinal),
            ExerciseRows.All.Where(row => (string)row[0] == notebook).Select(row => (string)row[1]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_row_is_of_a_notebook_that_is_not_there() =>
        Assert.Empty(ExerciseRows.All.Select(row => (string)row[0]).Except(Chapters.Names));

    private static List<string> Declared(string notebook) =>
        [.. Declaration().Matches(string.Join("\n", Chapters.Code(notebook))).Select(m => m.Groups["name"].Value)];

    [GeneratedRegex(@"var\s+(?<name>\w+)\s*=\s*Exercise\s*\.\s*Ask\b")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"\bExercise\s*\.\s*Ask\b")]
    private static partial Regex Asked();

    [GeneratedRegex(@"\b(?<name>\w+)\.Check\((?>[^()]+|\((?<open>)|\)(?<-open>))*(?(open)(?!))\)")]
    private static partial Regex Checked();
}
