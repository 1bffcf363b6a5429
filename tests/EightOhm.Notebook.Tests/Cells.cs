using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Notebook.Tests;

/// <summary>A kernel with the extension loaded, to run cells in. Formatters are one for the process, so all tests of it share one.</summary>
public sealed class Cells : IAsyncLifetime, IDisposable
{
    /// <summary>The tests that load the extension, one class after the other: formatters and the folder of records are one for the process.</summary>
    public const string Kernels = "kernels";

    private static readonly string[] Assemblies = ["EightOhm", "EightOhm.Display", "EightOhm.Cells", "EightOhm.Notebook", "UnitsNet", "MathNet.Numerics"];

    private readonly CSharpKernel _csharp = new();
    private readonly CompositeKernel _root;

    public Cells() => _root = new CompositeKernel { _csharp };

    public IReadOnlyList<KernelEvent> Loaded { get; private set; } = [];

    public async Task InitializeAsync()
    {
        _csharp.AddAssemblyReferences(Assemblies.Select(name => Path.Combine(AppContext.BaseDirectory, name + ".dll")));
        Loaded = await Run(NotebookExtension.Script);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => _root.Dispose();

    /// <summary>What a cell shows, by MIME type.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Shown(string cell)
    {
        var events = await Run(cell);
        Assert.DoesNotContain(events, e => e is CommandFailed or ErrorProduced);
        var shown = events.OfType<DisplayEvent>().Last(e => e is ReturnValueProduced or DisplayedValueProduced);
        return shown.FormattedValues.ToDictionary(f => f.MimeType, f => f.Value);
    }

    /// <summary>Runs a cell that may show nothing.</summary>
    public async Task Done(string cell)
    {
        var events = await Run(cell);
        Assert.True(events.OfType<CommandFailed>().FirstOrDefault() is null, $"{cell}\n\n{events.OfType<CommandFailed>().FirstOrDefault()?.Message}");
    }

    /// <summary>What a failing cell says.</summary>
    public async Task<string> Complaint(string cell) => (await Run(cell)).OfType<CommandFailed>().Single().Message;

    private async Task<IReadOnlyList<KernelEvent>> Run(string cell) => [.. (await _root.SendAsync(new SubmitCode(cell))).Events];
}
