using System.Text.RegularExpressions;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Record;

namespace EightOhm.Browser.Tests;

/// <summary>The chapters in the embedded kernel give what their files hold. Needs neither Jupyter nor a browser.</summary>
public sealed class StoredOutputTests
{
    private static Task<BookOfChapters> Run => BookOfChapters.OfThisBuild;

    public static TheoryData<string> Chapters => [.. Clone.Chapters];

    [Theory]
    [MemberData(nameof(Chapters))]
    public async Task Stored_outputs_are_current(string chapter)
    {
        var run = await Run;
        var (stored, computed) = (NotebookFile.Read(Path.Combine(Clone.Notebooks, chapter)), NotebookFile.Read(Path.Combine(run.Notebooks, chapter)));
        foreach (var (was, now) in stored.Cells.Zip(computed.Cells))
        {
            Assert.Equal(now.Outputs.Select(o => string.Join(", ", o.Data.Keys)), was.Outputs.Select(o => string.Join(", ", o.Data.Keys)));
            foreach (var (old, fresh) in was.Outputs.Zip(now.Outputs))
                Expect.Nothing(old.Data.Select(entry => StoredOutput.Difference(entry.Value, fresh.Data[entry.Key]))
                    .OfType<string>().Select(difference => $"{chapter}, cell {was.Number}: {difference} (run with --save)"));
        }
    }

    [Theory]
    [MemberData(nameof(Chapters))]
    public void A_stored_notebook_is_small_and_holds_nothing_of_a_machine(string chapter)
    {
        var file = new FileInfo(Path.Combine(Clone.Notebooks, chapter));
        Assert.True(file.Length < 1_000_000, $"{chapter} has {file.Length} bytes.");
        var text = File.ReadAllText(file.FullName);
        foreach (var mark in new[] { "/root/", "/home/", "/tmp/", "127.0.0.1", "dni-", "Plotly.register" })
            Assert.DoesNotContain(mark, text, StringComparison.Ordinal);
        // A short name of a machine may be a part of a word.
        Assert.DoesNotMatch($@"\b{Regex.Escape(Environment.MachineName)}\b", text);
    }

    [Fact]
    public async Task The_stored_record_is_current()
    {
        var run = await Run;
        foreach (var record in Clone.Records)
            Expect.SameRecord(DesignRecord.Load(Path.Combine(Clone.Notebooks, record)), DesignRecord.Load(Path.Combine(run.Notebooks, record)));
    }

    [Theory]
    [InlineData("<p>28.28 V</p>", "<p>28.29 V</p>", true)]
    [InlineData("<p>28.28 V</p>", "<p>28.30 V</p>", false)]
    [InlineData("<p>28.28 V</p>", "<p>28.28 A</p>", false)]
    public void The_comparison_itself_can_tell(string stored, string computed, bool same) =>
        Assert.Equal(same, StoredOutput.Difference(stored, computed) is null);

    [Theory]
    [InlineData("<svg x=\"10.0\"/>", "<svg x=\"10.2\"/>", true)]
    [InlineData("<svg x=\"10.0\"/>", "<svg x=\"10.3\"/>", false)]
    [InlineData("<svg x=\"10.0\"/>", "<svg y=\"10.0\"/>", false)]
    public void The_comparison_of_pictures_can_tell(string stored, string computed, bool same) =>
        Assert.Equal(same, StoredOutput.Difference(Picture(stored), Picture(computed)) is null);

    private static string Picture(string svg) => $"<img src=\"data:image/svg+xml;base64,{Convert.ToBase64String(System.Text.Encoding.UTF8.GetBytes(svg))}\">";
}
