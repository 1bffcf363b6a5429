using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Record;

namespace EightOhm.Browser.Tests;

/// <summary>Every notebook in the real kernel, with the packages from the feed: what the run left in the notebook.</summary>
[Collection(SharedHosts.Name)]
public sealed partial class KernelTests(JupyterFixture jupyter)
{
    public static TheoryData<string> Notebooks => NotebookNames.All;

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task A_notebook_runs_in_the_real_kernel_without_an_error(string notebook)
    {
        Needs.Jupyter();
        var executed = await KernelRuns.Of(jupyter, notebook);
        // The kernel reports what the compiler refuses as text, and the error as such says no more than "compilation error".
        Expect.Nothing(executed.Cells.SelectMany(cell => cell.Outputs.SelectMany(output => output.Data)
            .Where(entry => entry.Key == "error" || entry.Value.Contains("): error CS", StringComparison.Ordinal))
            .Select(entry => $"Cell {cell.Number}: {entry.Value.Trim()}")));
        Assert.NotEmpty(executed.Cells.Where(cell => !cell.Loads).SelectMany(cell => cell.Outputs));
    }

    [SkippableTheory]
    [MemberData(nameof(Notebooks))]
    public async Task The_real_kernel_says_what_the_file_holds(string notebook)
    {
        Needs.Jupyter();
        var executed = await KernelRuns.Of(jupyter, notebook);
        foreach (var (stored, computed) in NotebookNames.Read(notebook).Cells.Zip(executed.Cells).Where(pair => !pair.First.Loads))
        {
            var (was, now) = (Texts(stored), Texts(computed));
            Assert.True(was.Count == now.Count, $"Cell {stored.Number}: {was.Count} texts stored, {now.Count} computed:\n{string.Join('\n', now)}");
            Expect.Nothing(was.Zip(now, PrintedText.Difference).OfType<string>().Select(difference => $"Cell {stored.Number}: {difference}"));
        }
    }

    [SkippableFact]
    public async Task The_real_kernel_s_named_numbers_are_the_record_s()
    {
        Needs.Jupyter();
        foreach (var record in Clone.Records)
        {
            var stored = DesignRecord.Load(Path.Combine(Clone.Notebooks, record));
            var named = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var chapter in Clone.Chapters.Where(chapter => Clone.FolderOf(chapter) == Clone.FolderOf(record)))
                foreach (var (name, value) in (await KernelRuns.Of(jupyter, chapter)).NamedNumbers)
                    named[name] = value;
            var shared = stored.Entries.Where(entry => named.ContainsKey(entry.Name)).ToList();
            Assert.NotEmpty(shared);
            Expect.Nothing(shared.Where(entry => named[entry.Name] != entry.Reads).Select(entry => $"{entry.Name}: {named[entry.Name]} shown, {entry.Reads} in the record"));
            Expect.SameRecord(stored, DesignRecord.Load(Path.Combine(jupyter.FolderOf(JupyterFixture.Run), record)));
        }
    }

    // A kernel that has run other notebooks names the same sources in another order; the stored order is held by the embedded runs.
    private static List<string> Texts(CodeCell cell) =>
        [.. cell.Outputs.Select(output => output.Text ?? output.Data.GetValueOrDefault("stream")).OfType<string>()
            .Select(text => Sources().Replace(text, list => string.Join(", ", list.Value.Split(", ").Order(StringComparer.Ordinal))))];

    [GeneratedRegex(@"(?<=computed from )[^\s,]+(?:, [^\s,]+)*")]
    private static partial Regex Sources();
}
