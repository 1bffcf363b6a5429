using EightOhm.Record;

namespace EightOhm.Design.Tests.Running;

/// <summary>A copy of the demo's folder in which nothing is lost, with its chapters compiled once for all copies.</summary>
internal sealed class DesignFolder : IDisposable
{
    private const string RecordFile = "tern-100.json";

    public static IReadOnlyList<ChapterText> Texts { get; } = ChapterText.OfFolder(Source);

    private static readonly Lazy<IReadOnlyList<CompiledChapter>> Compiled = new(() =>
        [.. Texts.Select(CompiledChapter.Of)]);

    private DesignFolder(string path) => Path = path;

    public static IReadOnlyList<CompiledChapter> Chapters => Compiled.Value;

    public string Path { get; }

    public IReadOnlyList<string> CardFiles => [.. Directory.GetFiles(System.IO.Path.Combine(Path, "cards"), "*.json").Order(StringComparer.Ordinal)];

    private static string Source => System.IO.Path.Combine(Root(), "notebooks");

    /// <summary>A fresh copy with the record as it is kept beside the chapters.</summary>
    public static DesignFolder Copy() => CopyOf(Source);

    /// <summary>A copy of another folder as it stands.</summary>
    public static DesignFolder CopyOf(DesignFolder other) => CopyOf(other.Path);

    private static DesignFolder CopyOf(string source)
    {
        var path = Directory.CreateTempSubdirectory("eightohm-design-").FullName;
        Directory.CreateDirectory(System.IO.Path.Combine(path, "cards"));
        foreach (var card in Directory.GetFiles(System.IO.Path.Combine(source, "cards")))
            File.Copy(card, System.IO.Path.Combine(path, "cards", System.IO.Path.GetFileName(card)));
        if (File.Exists(System.IO.Path.Combine(source, RecordFile)))
            File.Copy(System.IO.Path.Combine(source, RecordFile), System.IO.Path.Combine(path, RecordFile));
        return new(path);
    }

    /// <summary>The record as it stands in the folder now, read anew.</summary>
    public DesignRecord Record()
    {
        using (RecordFolder.Use(Path))
            return DesignRecord.Load(RecordFile);
    }

    /// <summary>Runs every cell of every chapter, in order, on the record of the folder. A cell that has no answer does not end the run.</summary>
    /// <returns>What failed, in words.</returns>
    public async Task<IReadOnlyList<string>> RunAsync()
    {
        var failures = new List<string>();
        var home = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Path;
        try
        {
            using (RecordFolder.Use(Path))
            {
                foreach (var chapter in Chapters)
                {
                    await chapter.RunAsync(
                        Enumerable.Range(0, chapter.Text.Cells.Count).ToHashSet(),
                        (_, e) => failures.Add($"{chapter.Name}: {e.Message}"));
                }
            }
        }
        finally
        {
            Environment.CurrentDirectory = home;
        }

        return failures;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private static string Root()
    {
        for (var folder = AppContext.BaseDirectory; folder is not null; folder = System.IO.Path.GetDirectoryName(folder))
        {
            if (File.Exists(System.IO.Path.Combine(folder, "EightOhm.slnx")))
                return folder;
        }

        throw new InvalidOperationException("The tests run from inside the repository.");
    }
}
