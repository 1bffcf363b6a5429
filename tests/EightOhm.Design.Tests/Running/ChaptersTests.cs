using Xunit.Abstractions;

namespace EightOhm.Design.Tests.Running;

/// <summary>The chapters of each design compile, are read and run as they stand, without any notebook host.</summary>
public class ChaptersTests(ITestOutputHelper output)
{
    public static TheoryData<string> Designs => TestedDesign.Names;

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_cell_is_followed_to_what_it_hangs_on(string design)
    {
        foreach (var chapter in TestedDesign.Of(design).Chapters)
        {
            Assert.Equal(chapter.Text.Cells.Count, chapter.Readings.Count);
            Assert.All(chapter.Readings, (reading, i) => Assert.True(reading.Unknown is null, $"{chapter.Name}, code cell {i + 1}: {reading.Unknown}"));
        }
    }

    // The record keeps the last that was given: a chapter that gives a name of another takes its value from all that hang on it.
    [Theory]
    [MemberData(nameof(Designs))]
    public void A_name_is_given_by_one_cell_of_a_design(string design)
    {
        var given = TestedDesign.Of(design).Chapters
            .SelectMany(chapter => chapter.Readings.SelectMany((reading, i) => reading.Writes.Select(w => (w.Entry, By: $"{chapter.Name}, code cell {i + 1}")))).Distinct().ToList();
        Assert.True(given.Count > 300, $"{given.Count} names found");
        Assert.Empty(given.GroupBy(g => g.Entry).Where(g => g.Count() > 1).Select(g => $"{g.Key.Name}: {string.Join("; ", g.Select(x => x.By))}"));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public async Task Every_cell_of_the_design_has_an_answer(string design)
    {
        var (folder, failures) = await DesignFolder.Settled(TestedDesign.Of(design));
        foreach (var requirement in folder.Record().Compliance())
            output.WriteLine($"{requirement.State}: {requirement.Label}: {requirement.Value} {requirement.Where} {requirement.Limit} {requirement.Reason}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
        // What hangs on all is stale whenever a later chapter moves anything.
        Assert.Empty(folder.Record().Entries.Where(e => e.HangsOnAll).Select(e => e.Name));
    }
}
