using EightOhm.Record;

namespace EightOhm.Design.Tests.Running;

/// <summary>A folder of notebooks with the record that they keep: its chapters are compiled and read once for all runs.</summary>
internal sealed class Design
{
    private readonly Lazy<IReadOnlyList<CompiledChapter>> _chapters;

    private Design(string folder)
    {
        Folder = folder;
        Texts = ChapterText.OfFolder(folder);
        _chapters = new(() => [.. Texts.Select(CompiledChapter.Of)]);
    }

    /// <summary>Every design of the repository: the folders below the notebooks that hold chapters and a record.</summary>
    public static IReadOnlyList<Design> All { get; } =
        [.. Directory.GetDirectories(Notebooks()).Prepend(Notebooks()).Order(StringComparer.Ordinal).Where(f => RecordOf(f) is not null && Directory.GetFiles(f, "*.ipynb").Length > 0).Select(f => new Design(f))];

    public static TheoryData<string> Names => [.. All.Select(d => d.Name)];

    public string Folder { get; }

    public string Name => Path.GetFileName(Folder);

    /// <summary>The record's file name.</summary>
    public string RecordFile => RecordOf(Folder)!;

    public IReadOnlyList<ChapterText> Texts { get; }

    public IReadOnlyList<CompiledChapter> Chapters => _chapters.Value;

    public static Design Of(string name) => All.Single(d => d.Name == name);

    // A record says its version; other files beside the chapters do not.
    private static string? RecordOf(string folder) =>
        Directory.GetFiles(folder, "*.json").Where(f => File.ReadLines(f).Take(5).Any(l => l.Contains("\"version\"", StringComparison.Ordinal))).Select(Path.GetFileName).SingleOrDefault();

    private static string Notebooks()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "EightOhm.slnx")))
                return Path.Combine(folder, "notebooks");
        }

        throw new InvalidOperationException("The tests run from inside the repository.");
    }
}
