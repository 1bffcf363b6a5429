using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Tests.Sources;

/// <summary>Made-up notebooks, read and run: no source is missed, and running again only what the graph says gives what running all gives.</summary>
[Collection("stub library")]
public sealed class RandomTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, int.Parse(Environment.GetEnvironmentVariable("EIGHTOHM_SEEDS") ?? "12", System.Globalization.CultureInfo.InvariantCulture))];

    [Theory]
    [MemberData(nameof(Seeds))]
    public async Task No_source_is_missed(int seed)
    {
        var test = new Case(new RandomNotebook(seed).Cells(12));
        var readings = test.Read();
        var truth = await test.True();
        Assert.All(truth, entry => Assert.True(Case.FoundToTheInputs(readings, entry.Key).IsSupersetOf(entry.Value) || Case.FoundToTheInputs(readings, entry.Key).Contains(""),
            $"{entry.Key} hangs on {string.Join(' ', entry.Value)}, found {string.Join(' ', Case.FoundToTheInputs(readings, entry.Key))}\n{string.Join("\n---\n", test.Cells)}"));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public async Task What_moves_is_run_again_and_nothing_else_needs_to(int seed)
    {
        var test = new Case(new RandomNotebook(seed).Cells(12));
        var graph = CellGraph.Read(test.Cells, Case.References, Case.Before);
        using var run = new Submissions(Case.Before, test.Cells);
        foreach (var (input, by) in Case.Names.SelectMany(n => Case.Moves.Select(m => (n, m))))
        {
            await run.Begin(input, by);
            await run.RunAll();
            var all = Submissions.Held();
            var cells = graph.CellsToRun([new("a.json", input)]);

            // In the kernel that ran them before.
            await run.Begin(null);
            await run.RunAll();
            Submissions.Move(input, by);
            foreach (var cell in cells.Moved)
                await run.Run(cell);
            Same("again", all, Submissions.Held());

            // In a fresh kernel, beside the record of the run before.
            await run.Begin(null);
            await run.RunAll();
            await run.Restart(input, by);
            foreach (var cell in cells.InAFreshKernel)
                await run.Run(cell);
            Same("fresh", all, Submissions.Held());

            void Same(string how, IReadOnlyDictionary<string, string> expected, IReadOnlyDictionary<string, string> found) => Assert.All(expected, e =>
                Assert.True(found.GetValueOrDefault(e.Key) == e.Value, $"{how}: {input} moved, {e.Key} is {found.GetValueOrDefault(e.Key)}, not {e.Value}; moved {string.Join(' ', cells.Moved)}, needed {string.Join(' ', cells.NeededBefore)}\n{string.Join("\n---\n", test.Cells)}"));
        }
    }
}
