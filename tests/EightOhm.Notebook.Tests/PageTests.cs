using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Notebook.Tests;

/// <summary>What a notebook page is told: a kernel with a second one beside it, as a notebook server has.</summary>
[Collection(Cells.Kernels)]
public sealed class PageTests : IAsyncLifetime, IDisposable
{
    private static readonly string[] Assemblies = ["EightOhm", "EightOhm.Display", "EightOhm.Notebook", "UnitsNet", "MathNet.Numerics"];

    private readonly CompositeKernel _root;

    public PageTests()
    {
        var csharp = new CSharpKernel();
        csharp.AddAssemblyReferences(Assemblies.Select(name => Path.Combine(AppContext.BaseDirectory, name + ".dll")));
        _root = new CompositeKernel { csharp, new CSharpKernel("second") };
        _root.DefaultKernelName = csharp.Name;
    }

    public async Task InitializeAsync() => await Run(NotebookExtension.Script);

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => _root.Dispose();

    [Fact]
    public async Task A_refusal_is_one_box_with_the_trace_folded_and_the_cell_still_fails()
    {
        var events = await Run("new OutputRating(-100.W, 8.Ohm)");
        var box = Assert.Single(events.OfType<DisplayedValueProduced>()).FormattedValues.ToDictionary(f => f.MimeType, f => f.Value);
        Assert.StartsWith("No answer: power must be greater than 0 W (was −100 W).", box["text/plain"], StringComparison.Ordinal);
        Assert.DoesNotContain(" at ", box["text/plain"], StringComparison.Ordinal);
        Assert.Contains("<details><summary>where in the code</summary>", box["text/html"], StringComparison.Ordinal);
        Assert.Contains("OutputRating", box["text/html"][box["text/html"].IndexOf("<details>", StringComparison.Ordinal)..], StringComparison.Ordinal);
        var failed = Assert.Single(events.OfType<CommandFailed>());
        Assert.Null(failed.Exception);
        Assert.Equal("No answer: see the box above.", failed.Message);
    }

    [Fact]
    public async Task Code_that_is_wrong_is_told_apart() =>
        Assert.StartsWith("This cell failed: NullReferenceException",
            (await Run("string s = null; s.Length")).OfType<DisplayedValueProduced>().Single().FormattedValues.Single(f => f.MimeType == "text/plain").Value, StringComparison.Ordinal);

    [Theory]
    [InlineData("Explai", "Explain")]
    [InlineData("var x = Gain.FromD", "FromDecibels")]
    [InlineData("1.V;\nMath.Atan", "Atan2")]
    public async Task A_completion_begins_as_what_was_typed_and_can_be_typed_itself(string code, string among)
    {
        var lines = code.Split('\n');
        var events = (await _root.SendAsync(new RequestCompletions(code, new LinePosition(lines.Length - 1, lines[^1].Length)))).Events;
        var completions = Assert.Single(events.OfType<CompletionsProduced>()).Completions.Select(c => c.InsertText ?? c.DisplayText).ToList();
        Assert.Contains(among, completions);
        Assert.DoesNotContain(completions, c => c.Contains('$', StringComparison.Ordinal));
        var typed = code[(code.LastIndexOfAny([' ', '.', '\n']) + 1)..];
        Assert.All(completions, c => Assert.StartsWith(typed, c, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("1.V == 1000.mV")]
    [InlineData("new Dictionary<string, double> { [\"x\"] = 1.5 }")]
    public async Task The_host_leaves_no_styles_and_no_names_of_its_own(string cell)
    {
        var shown = Assert.Single((await Run(cell)).OfType<ReturnValueProduced>());
        Assert.All(shown.FormattedValues, f =>
        {
            Assert.DoesNotContain("<style", f.Value, StringComparison.Ordinal);
            Assert.DoesNotContain("dni-", f.Value, StringComparison.Ordinal);
        });
    }

    // The signal by which Jupyter interrupts, sent to this very process; the host's own listener is in the real kernel alone.
    [Fact]
    public async Task An_interrupt_stops_the_cell_and_the_next_one_runs()
    {
        if (OperatingSystem.IsWindows())
            return;
        var running = Run("while (true) EightOhm.Work.Checkpoint();");
        using (var sent = System.Diagnostics.Process.Start("sh", $"-c \"sleep 1; kill -INT {Environment.ProcessId}\""))
            await sent!.WaitForExitAsync();
        var failed = Assert.Single((await running.WaitAsync(TimeSpan.FromMinutes(1))).OfType<CommandFailed>());
        Assert.Equal("Interrupted.", failed.Message);
        Assert.DoesNotContain(await Run("2.V"), e => e is CommandFailed);
    }

    private async Task<IReadOnlyList<KernelEvent>> Run(string cell) => [.. (await _root.SendAsync(new SubmitCode(cell))).Events];
}
