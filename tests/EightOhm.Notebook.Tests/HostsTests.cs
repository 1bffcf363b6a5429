using System.Text.Json;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;
using EightOhm.Record;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.CSharp;

namespace EightOhm.Notebook.Tests;

/// <summary>The two hosts of cells show the same: our own, which the tool has, and the kernel of .NET Interactive. Jupyter's real kernel is held against every stored chapter in the browser's tests.</summary>
[Collection(Cells.Kernels)]
public sealed class HostsTests : IDisposable
{
    private static readonly string[] Assemblies = ["EightOhm", "EightOhm.Display", "EightOhm.Cells", "EightOhm.Notebook", "UnitsNet", "MathNet.Numerics", "Plotly.NET", "FSharp.Core", "DynamicObj", "Giraffe.ViewEngine"];

    private readonly string folder = Directory.CreateTempSubdirectory("eightohm-hosts-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("course", "03-noise-first-look")]
    [InlineData("course", "06a-dissipation")]
    [InlineData("tern-100", "01-specification")]
    [InlineData("tern-100", "10-input-stage")]
    public async Task A_chapter_shows_the_same_in_both(string design, string chapter)
    {
        var home = Path.Combine(Chapters.Home(), design);
        var cells = Code(Path.Combine(home, chapter + ".ipynb"));
        Assert.NotEmpty(cells);
        var csharp = new CSharpKernel().UseKernelHelpers();
        using var kernel = new KernelCellHost(new CompositeKernel { csharp }, csharp, [.. Assemblies.Select(name => Path.Combine(AppContext.BaseDirectory, name + ".dll"))]);
        using var own = new CellHost(CellReferences.OfThisProcess(), home);

        var there = await RunAsync(kernel, home, "kernel", cells);
        var here = await RunAsync(own, home, "own", cells);

        Assert.Equal(there.Count, here.Count);
        Assert.All(there.Zip(here), pair => Assert.Equal(pair.First, pair.Second));
        Assert.Contains(here, o => o.Contains("text/html", StringComparison.Ordinal));
    }

    private async Task<List<string>> RunAsync(EightOhm.Cells.ICellHost host, string home, string name, IEnumerable<string> cells)
    {
        var records = Directory.CreateDirectory(Path.Combine(folder, name)).FullName;
        foreach (var record in Directory.GetFiles(home, "*.json"))
            File.Copy(record, Path.Combine(records, Path.GetFileName(record)), overwrite: true);
        using var entered = RecordFolder.Use(records, home);
        var before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = home;
        try
        {
            var shown = new List<string>();
            foreach (var cell in cells)
            {
                var outcome = await host.RunAsync(cell, shown.Count + 1, CancellationToken.None);
                Assert.True(outcome.Failure is null, $"{name}: {outcome.Failure?.Message}\n\n{cell}");
                shown.Add(outcome.Outputs.ToJsonString());
            }

            return shown;
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    private static List<string> Code(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(path));
        return [.. file.RootElement.GetProperty("cells").EnumerateArray()
            .Where(cell => cell.GetProperty("cell_type").GetString() == "code")
            .Select(cell => string.Concat(cell.GetProperty("source").EnumerateArray().Select(line => line.GetString())))
            .Where(code => !string.IsNullOrWhiteSpace(code))];
    }
}
