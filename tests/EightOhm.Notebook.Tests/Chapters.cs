using System.Text.Json;
using System.Text.RegularExpressions;
using EightOhm.Record;

namespace EightOhm.Notebook.Tests;

/// <summary>The repository's notebooks, each run once in a kernel of its own, on a copy of the record.</summary>
public sealed partial class Chapters : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("eightohm-");
    private readonly Dictionary<string, Cells> _run = new(StringComparer.Ordinal);
    private readonly string _before = Environment.CurrentDirectory;
    private IDisposable? _records;

    /// <summary>The notebooks' names, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Directory.GetFiles(Home(), "*.ipynb").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    /// <summary>The code cells of a notebook, without its package line.</summary>
    public static IReadOnlyList<string> Code(string notebook)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Home(), notebook + ".ipynb")));
        return [.. file.RootElement.GetProperty("cells").EnumerateArray()
            .Where(cell => cell.GetProperty("cell_type").GetString() == "code")
            .Select(cell => Package().Replace(string.Concat(cell.GetProperty("source").EnumerateArray().Select(line => line.GetString())), ""))];
    }

    /// <summary>A kernel in which every cell of a notebook has run.</summary>
    public async Task<Cells> After(string notebook)
    {
        if (_run.TryGetValue(notebook, out var done))
            return done;
        var cells = new Cells();
        await cells.InitializeAsync();
        foreach (var cell in Code(notebook))
            await cells.Done(cell);
        return _run[notebook] = cells;
    }

    public Task InitializeAsync()
    {
        foreach (var record in Directory.GetFiles(Home(), "*.json"))
            File.Copy(record, Path.Combine(_folder.FullName, Path.GetFileName(record)));
        _records = RecordFolder.Use(_folder.FullName, Home());
        // A cell's "cards/…json" is beside its notebook.
        Environment.CurrentDirectory = Home();
        return Task.CompletedTask;
    }

    public Task DisposeAsync()
    {
        foreach (var cells in _run.Values)
            cells.Dispose();
        _records?.Dispose();
        Environment.CurrentDirectory = _before;
        _folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    internal static string Home()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "EightOhm.slnx")))
                return Path.Combine(folder.FullName, "notebooks");
        }

        throw new DirectoryNotFoundException("The tests must run inside the repository: no folder above them holds EightOhm.slnx.");
    }

    [GeneratedRegex("^#r .*$", RegexOptions.Multiline)]
    private static partial Regex Package();
}
