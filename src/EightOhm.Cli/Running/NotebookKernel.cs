using System.Reflection;
using System.Text.Json.Nodes;
using EightOhm.Cli.Ends;
using EightOhm.Notebook;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Cli.Running;

/// <summary>A fresh C# kernel inside this process, in which one notebook runs.</summary>
internal sealed class NotebookKernel : IDisposable
{
    // What `#r "nuget: EightOhm.Notebook"` brings into a notebook elsewhere: our assemblies and what they stand on.
    private static readonly string[] Assemblies =
        ["EightOhm", "EightOhm.Display", "EightOhm.Cells", "EightOhm.Notebook", "UnitsNet", "MathNet.Numerics", "Plotly.NET", "FSharp.Core", "DynamicObj", "Giraffe.ViewEngine"];

    private readonly CompositeKernel root;
    private readonly CSharpKernel csharp;
    private readonly CellOutputs outputs = new();
    private bool loaded;

    private NotebookKernel(CompositeKernel root, CSharpKernel csharp)
    {
        this.root = root;
        this.csharp = csharp;
    }

    /// <summary>Starts a kernel and has it compile once: the compiler's own start is most of the wait for a first cell.</summary>
    public static async Task<NotebookKernel> StartAsync()
    {
        var csharp = new CSharpKernel().UseKernelHelpers().UseWho().UseValueSharing();
        TellLines(csharp);
        var kernel = new NotebookKernel(new CompositeKernel { csharp }, csharp);
        await kernel.SendAsync(";", CancellationToken.None);
        return kernel;
    }

    /// <summary>Runs a cell to its end. The caller watches the time: a running cell can be asked to stop, and no more.</summary>
    public async Task<CellOutcome> RunAsync(string source, int executionCount, CancellationToken cancellation, IProgress<WorkDone>? progress)
    {
        // The cell's own threads inherit this flow, and so its loops see the work.
        using var work = Work.Begin(cancellation, progress);
        var events = new List<KernelEvent>();
        if (PackageDirectives.AsksForEightOhm(source) && !loaded)
        {
            loaded = true;
            csharp.AddAssemblyReferences(Assemblies.Select(name => Path.Combine(AppContext.BaseDirectory, name + ".dll")));
            events.AddRange(await SendAsync(NotebookExtension.Script, cancellation));
        }

        if (CellFailures.Find(events) is not { } failure)
        {
            events.AddRange(await SendAsync(PackageDirectives.Remove(source), cancellation));
            failure = CellFailures.Find(events);
        }

        return new CellOutcome(outputs.Collect(events, executionCount), failure);
    }

    public void Dispose() => root.Dispose();

    private async Task<IReadOnlyList<KernelEvent>> SendAsync(string code, CancellationToken cancellation) =>
        [.. (await root.SendAsync(new SubmitCode(code), cancellation)).Events];

    /// <summary>Has cells compiled with line numbers, which the kernel leaves out and gives no public way to ask for.</summary>
    private static void TellLines(CSharpKernel csharp)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.NonPublic | BindingFlags.Instance);
        if (field?.GetValue(csharp) is ScriptOptions options)
            field.SetValue(csharp, options.WithEmitDebugInformation(true));
    }
}
