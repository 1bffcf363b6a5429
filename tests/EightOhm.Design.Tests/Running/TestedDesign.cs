using System.Text.RegularExpressions;

namespace EightOhm.Design.Tests.Running;

/// <summary>A folder of notebooks with the record that they keep: its chapters are compiled and read once for all runs.</summary>
internal sealed partial class TestedDesign
{
    private readonly Lazy<IReadOnlyList<CompiledChapter>> _chapters;

    private TestedDesign(string folder)
    {
        Folder = folder;
        Texts = ChapterText.OfFolder(folder);
        RecordFile = Texts.SelectMany(t => t.Cells).Select(c => Opened().Match(c)).FirstOrDefault(m => m.Success)?.Groups[1].Value;
        _chapters = new(() => [.. Texts.Select(CompiledChapter.Of)]);
    }

    /// <summary>Every design of the repository: the folders of notebooks whose cells open a record.</summary>
    public static IReadOnlyList<TestedDesign> All { get; } =
        [.. Directory.GetDirectories(Notebooks()).Prepend(Notebooks()).Order(StringComparer.Ordinal).Select(f => new TestedDesign(f)).Where(d => d.RecordFile is not null)];

    public static TheoryData<string> Names => [.. All.Select(d => d.Name)];

    public string Folder { get; }

    public string Name => Path.GetFileName(Folder);

    /// <summary>The record's file, as its cells open it.</summary>
    public string? RecordFile { get; }

    public IReadOnlyList<ChapterText> Texts { get; }

    public IReadOnlyList<CompiledChapter> Chapters => _chapters.Value;

    public static TestedDesign Of(string name) => All.Single(d => d.Name == name);

    /// <summary>The folder of all notebooks.</summary>
    public static string Notebooks()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "EightOhm.slnx")))
                return Path.Combine(folder, "notebooks");
        }

        throw new InvalidOperationException("The tests run from inside the repository.");
    }

    [GeneratedRegex("""DesignRecord\.Open\("([^"]+)"\)""")]
    private static partial Regex Opened();
}
