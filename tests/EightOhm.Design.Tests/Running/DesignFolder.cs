using EightOhm.Record;

namespace EightOhm.Design.Tests.Running;

/// <summary>A copy of a design's folder in which nothing is lost.</summary>
internal sealed class DesignFolder : IDisposable
{
    private static readonly Dictionary<TestedDesign, Task<(DesignFolder Folder, IReadOnlyList<string> Failures)>> Once = [];

    private readonly TestedDesign _design;

    private DesignFolder(TestedDesign design, string source)
    {
        _design = design;
        Path = Directory.CreateTempSubdirectory("eightohm-design-").FullName;
        Directory.CreateDirectory(System.IO.Path.Combine(Path, "cards"));
        foreach (var card in Directory.GetFiles(System.IO.Path.Combine(source, "cards")))
            File.Copy(card, System.IO.Path.Combine(Path, "cards", System.IO.Path.GetFileName(card)));
        if (File.Exists(System.IO.Path.Combine(source, design.RecordFile!)))
            File.Copy(System.IO.Path.Combine(source, design.RecordFile!), System.IO.Path.Combine(Path, design.RecordFile!));
    }

    public string Path { get; }

    public IReadOnlyList<string> CardFiles => [.. Directory.GetFiles(System.IO.Path.Combine(Path, "cards"), "*.json").Order(StringComparer.Ordinal)];

    /// <summary>A fresh copy, with the record as it is kept beside the chapters.</summary>
    public static DesignFolder Copy(TestedDesign design) => new(design, design.Folder);

    /// <summary>A copy whose chapters were all run once, for every test that begins there; nobody moves anything in it.</summary>
    /// <returns>The copy, and what failed in words.</returns>
    public static Task<(DesignFolder Folder, IReadOnlyList<string> Failures)> Settled(TestedDesign design)
    {
        lock (Once)
        {
            if (!Once.TryGetValue(design, out var settled))
                Once.Add(design, settled = SettleAsync(design));
            return settled;
        }
    }

    /// <summary>A copy of another copy as it stands.</summary>
    public static DesignFolder CopyOf(DesignFolder other) => new(other._design, other.Path);

    /// <summary>The record as it stands in the folder now, read anew.</summary>
    public DesignRecord Record()
    {
        using (RecordFolder.Use(Path))
            return DesignRecord.Load(_design.RecordFile!);
    }

    /// <summary>Runs every cell of every chapter, in order, on the record of the folder, as a kernel does: what each cell computes is kept with the sources that are read from its text. A cell that has no answer does not end the run.</summary>
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
                foreach (var chapter in _design.Chapters)
                    await chapter.RunAsync((cell, e) => failures.Add($"{chapter.Name}, code cell {cell + 1}: {e.Message}"));
            }
        }
        finally
        {
            Environment.CurrentDirectory = home;
        }

        return failures;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private static async Task<(DesignFolder Folder, IReadOnlyList<string> Failures)> SettleAsync(TestedDesign design)
    {
        var folder = Copy(design);
        return (folder, await folder.RunAsync());
    }
}
