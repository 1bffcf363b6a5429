using EightOhm.Record;

namespace EightOhm.Notebook.Tests;

/// <summary>An exercise as a cell shows it: question, blank, wrong, right, hint, solution, progress.</summary>
[Collection(Cells.Kernels)]
public sealed class ExerciseCellTests(Cells cells) : IClassFixture<Cells>, IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("eightohm-exercise-");
    private IDisposable? _here;

    public void Dispose()
    {
        _here?.Dispose();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public async Task An_exercise_goes_from_question_to_progress()
    {
        _here = RecordFolder.Use(_folder.FullName);
        await Says("var ripple = Exercise.Of(\"05-ripple\"); ripple", "A bridge at 50 Hz charges 10 mF, which feeds 3 A.", "Answer with Check(…): a voltage");
        await Says("ripple.Check()", "Not answered yet.");
        Assert.Empty(_folder.EnumerateFiles());
        await Says("ripple.Check(6.V)", "6 V: That is I/(f·C), half-wave");
        await Says("ripple.Check(3.A)", "That is a current; a voltage is asked.");
        await Says("ripple.Hint()", "Hint 1 of 3:");
        await Says("ripple.Check(3000.mV)", "3 V: Right: 3 V.");
        await Says("ripple.Solution()", "Answer: 3 V.");
        Assert.Contains("<math", (await cells.Shown("ripple.Solution()"))["text/html"], StringComparison.Ordinal);
        await Says("Exercise.Progress()", "05 rails and supply", "right at first try");
        Assert.Single(_folder.EnumerateFiles("course-progress.json"));
    }

    [Fact]
    public async Task A_choice_is_judged_against_its_limits()
    {
        _here = RecordFolder.Use(_folder.FullName);
        await Says("Exercise.Of(\"05-reservoir\").Check(10.mF, 2.2.kOhm)", "Not yet: 1 of 3 limits is not kept.", "ripple: 3 V, at most 2 V: not met. A larger reservoir.");
        await Says("Exercise.Of(\"05-reservoir\").Check(22.mF, 2.2.kOhm)", "Right: it keeps all 3 limits.");
    }

    [Fact]
    public async Task A_teachers_own_is_written_in_a_cell()
    {
        await Says(
            "var own = Exercise.Ask($\"A peak of {40.V} in {8.Ohm}\", () => 40.V / 8.Ohm).Slip(40.V / Sqrt(2) / 8.Ohm, \"That is rms.\").Hints(\"Ohm.\"); own.Check(3.54.A)",
            "A peak of 40 V in 8 Ω",
            "3.54 A: That is rms.");
        await Says("own.Check(5000.mA)", "Right: 5 A.");
    }

    private async Task Says(string cell, params string[] words)
    {
        var shown = await cells.Shown(cell);
        Assert.DoesNotContain("dni-", shown["text/html"], StringComparison.Ordinal);
        Assert.All(words, w => Assert.Contains(w, shown["text/plain"], StringComparison.Ordinal));
    }
}
