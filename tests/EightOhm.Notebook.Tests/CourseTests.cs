using System.Text.Json;
using System.Text.RegularExpressions;
using EightOhm.Teaching;

namespace EightOhm.Notebook.Tests;

/// <summary>What every notebook of the course has: a question, its cautions in the one wording, no design of somebody's, exercises without answers.</summary>
public sealed partial class CourseTests
{
    private static readonly string Folder = Path.Combine(Chapters.Home(), "course");

    public static TheoryData<string> Notebooks => [.. Directory.GetFiles(Folder, "*.ipynb").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void OpensWithAQuestionAndItsCautions(string notebook)
    {
        var cells = Cells(notebook);
        Assert.StartsWith("# ", cells[0].Source, StringComparison.Ordinal);
        Assert.Contains("?**", cells[0].Source, StringComparison.Ordinal);

        // The words of docs/cautions.md, line by line, so that there is one wording.
        var words = File.ReadAllLines(Path.Combine(Path.GetDirectoryName(Chapters.Home())!, "docs", "cautions.md"));
        var box = cells[1].Source.Split('\n');
        Assert.StartsWith("> **Caution.** ", box[0], StringComparison.Ordinal);
        Assert.Contains(box[0], words);
        Assert.All(box[2..], line => Assert.Contains(line["> ".Length..], words));
        Assert.NotEmpty(box[2..]);
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void HasNoDesignAndEndsWithTheWayOn(string notebook)
    {
        var cells = Cells(notebook);
        if (notebook.StartsWith("00-", StringComparison.Ordinal))
            return;                                     // 00 shows what a record is, with one for trying
        Assert.DoesNotContain(cells, c => c.IsCode && c.Source.Contains("DesignRecord", StringComparison.Ordinal));
        Assert.Contains($"design notebook {notebook[..2]}", cells[^1].Source, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void ItsLinesAndNamesFitAPage(string notebook)
    {
        var cells = Cells(notebook);
        Assert.Equal(cells.Count, cells.Select(c => c.Id).Distinct(StringComparer.Ordinal).Count());
        Assert.All(cells.Where(c => c.IsCode).SelectMany(c => c.Source.Split('\n')), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void EveryExerciseIsAskedOnceAndBlank()
    {
        var code = string.Join('\n', Directory.GetFiles(Folder, "*.ipynb").Order(StringComparer.Ordinal).SelectMany(f => Cells(Path.GetFileNameWithoutExtension(f))).Where(c => c.IsCode).Select(c => c.Source));
        Assert.Equal(TeacherKey.Of().Exercises.Select(e => e.Id).Order(StringComparer.Ordinal), Asked().Matches(code).Select(m => m.Groups["id"].Value).Order(StringComparer.Ordinal));
        Assert.Equal(Asked().Count(code), Blank().Count(code));
        Assert.DoesNotContain(".Slip(", code, StringComparison.Ordinal);
    }

    private static List<Cell> Cells(string notebook)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Folder, notebook + ".ipynb")));
        return [.. file.RootElement.GetProperty("cells").EnumerateArray().Select(cell => new Cell(
            cell.GetProperty("id").GetString()!,
            cell.GetProperty("cell_type").GetString() == "code",
            string.Concat(cell.GetProperty("source").EnumerateArray().Select(line => line.GetString()))))];
    }

    private sealed record Cell(string Id, bool IsCode, string Source);

    [GeneratedRegex("""Exercise\.Of\("(?<id>[^"]+)"\)""")]
    private static partial Regex Asked();

    [GeneratedRegex(@"\.Check\(\)")]
    private static partial Regex Blank();
}
