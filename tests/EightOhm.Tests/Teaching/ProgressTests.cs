using System.Text;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Teaching;

namespace EightOhm.Tests.Teaching;

/// <summary>The file of the progress. The folder of a notebook is one for the process, so these run when nothing else does.</summary>
[Collection(nameof(Tests.Record.Alone))]
public sealed class ProgressTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("eightohm-progress-");
    private readonly IDisposable _here;

    public ProgressTests() => _here = RecordFolder.Use(_folder.FullName);

    private string Kept => Path.Combine(_folder.FullName, ProgressFile.Name);

    public void Dispose()
    {
        _here.Dispose();
        _folder.Delete(recursive: true);
    }

    [Fact]
    public void Looking_writes_nothing()
    {
        var ripple = Exercise.Of("05-ripple");
        ripple.Check();
        ripple.Hint();
        ripple.Solution();
        Exercise.Progress();
        Exercise.Ask("?", 3.V).Check(3.V);
        Assert.Empty(_folder.EnumerateFileSystemInfos());
    }

    [Fact]
    public void A_right_answer_at_the_first_try_counts_as_such()
    {
        Assert.Equal("", Exercise.Of("05-ripple").Check(3.V).Note);
        Exercise.Of("05-stored-energy").Check(1.J);
        Exercise.Of("05-stored-energy").Check(18.75.J);
        var aided = Exercise.Of("05-bleeder-time");
        aided.Solution();
        aided.Check(105.s);
        Exercise.Of("05-half-winding").Check(1.A);
        var row = Exercise.Progress().Chapters.Single(c => c.Chapter == "05 rails and supply");
        Assert.Equal((5, 1, 3, 2), (row.Asked, row.AtFirstTry, row.Right, row.Open));
        Assert.Equal([ProgressFile.Name], _folder.EnumerateFiles().Select(f => f.Name));
    }

    // Whoever plays on after the right answer does not lose it.
    [Fact]
    public void What_was_right_stays_right()
    {
        var ripple = Exercise.Of("05-ripple");
        ripple.Check(3.V);
        var before = File.ReadAllText(Kept);
        ripple.Check(5.V);
        Assert.Equal(before, File.ReadAllText(Kept));
        Assert.DoesNotContain(Environment.UserName, before, StringComparison.Ordinal);
    }

    [Fact]
    public void A_teachers_own_exercise_counts_in_its_chapter()
    {
        Exercise.Ask("?", 3.V).As("05-mine").Check(3.V);
        Assert.Equal(6, Exercise.Progress().Chapters.Single(c => c.Chapter == "05 rails and supply").Asked);
    }

    [Theory]
    [InlineData("{ nonsense")]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("{\"version\": 1}")]
    [InlineData("{\"version\": \"one\", \"exercises\": {}}")]
    [InlineData("{\"version\": 2, \"exercises\": {}}")]
    [InlineData("{\"version\": 1, \"exercises\": {\"05-ripple\": true}}")]
    [InlineData("{\"version\": 1, \"exercises\": {\"<b>\": {\"tries\": 1, \"right\": true, \"first\": true}}}")]
    [InlineData("{\"version\": 1, \"exercises\": {\"05-ripple\": {\"tries\": 0, \"right\": true, \"first\": true}}}")]
    public void A_damaged_file_is_set_aside_and_said(string text)
    {
        File.WriteAllText(Kept, text);
        Assert.Contains("cannot be read", Exercise.Progress().Note, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Kept));

        var verdict = Exercise.Of("05-ripple").Check(3.V);
        Assert.True(verdict.Right);
        Assert.Equal("course-progress.json could not be read; it is now course-progress.damaged.json, and a new one was begun.", verdict.Note);
        Assert.Equal(text, File.ReadAllText(Path.Combine(_folder.FullName, "course-progress.damaged.json")));
        Assert.Equal(1, Exercise.Progress().Chapters.Sum(c => c.Right));

        File.WriteAllText(Kept, text);
        Assert.Contains("damaged-2.json", Exercise.Of("05-ripple").Check(3.V).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void A_disk_that_does_not_write_does_not_stop_a_judgement()
    {
        var files = new Refusing();
        Assert.Contains("could not be kept: no room", new ProgressFile(Kept, files).Keep("05-ripple", right: true, aided: false), StringComparison.Ordinal);
        Assert.Empty(_folder.EnumerateFileSystemInfos());
    }

    [Fact]
    public void A_stop_in_the_middle_leaves_the_old_file()
    {
        new ProgressFile(Kept, new DiskFiles()).Keep("05-ripple", right: true, aided: false);
        var before = File.ReadAllBytes(Kept);
        new ProgressFile(Kept, new Unfinished()).Keep("05-reservoir", right: true, aided: false);
        Assert.Equal(before, File.ReadAllBytes(Kept));
        Assert.Equal("", new ProgressFile(Kept, new DiskFiles()).Keep("05-reservoir", right: true, aided: false));
        Assert.Contains("05-reservoir", Encoding.UTF8.GetString(File.ReadAllBytes(Kept)), StringComparison.Ordinal);
        Assert.Equal([ProgressFile.Name], _folder.EnumerateFiles().Select(f => f.Name));
    }

    private sealed class Refusing : DiskFiles
    {
        public override void Write(string path, byte[] bytes) => throw new IOException("no room");
    }

    private sealed class Unfinished : DiskFiles
    {
        public override void Rename(string from, string to) => throw new IOException("stopped");
    }
}
