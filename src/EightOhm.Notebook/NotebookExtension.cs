using System.Runtime.CompilerServices;
using System.Runtime.Loader;
using EightOhm.Cells;
using EightOhm.Cells.Sources;
using EightOhm.Record;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Notebook;

/// <summary>Brings EightOhm into a notebook kernel.</summary>
public static class NotebookExtension
{
    /// <summary>The lines that a kernel runs to load the extension: what a cell then sees without a using, and the call of <see cref="Load"/>.</summary>
    /// <remarks>A using must stand in a submission of its own kernel to reach later cells, so it cannot be done from inside Load.
    /// The same text is the package's extension.dib (a test compares).</remarks>
    public static string Script { get; } =
        $"""
        {CellUsings.Script}
        EightOhm.Notebook.NotebookExtension.Load(Microsoft.DotNet.Interactive.KernelInvocationContext.Current.HandlingKernel.RootKernel);
        """;

    private static bool resolving;

    /// <summary>Registers how everything of ours is shown, lets literals stand in shown expressions and quantities in texts, and greets in one line.</summary>
    /// <param name="kernel">The root kernel of the notebook.</param>
    public static void Load(Kernel kernel)
    {
        ArgumentNullException.ThrowIfNull(kernel);
        AnswerForFSharpCore();
        Formatters.Register();
        kernel.VisitSubkernelsAndSelf(Attend);
        if (KernelInvocationContext.Current is not { } context)
            return;
        HostNoise.Hush(context);
        PlotlyInPage.Bring(context);
        context.DisplayAs($"EightOhm {BuildVersion.Text} is at hand: quantities, formulas, the record, charts.", "text/plain");
    }

    private static void Attend(Kernel kernel)
    {
        if (kernel is not CSharpKernel csharp)
            return;
        var live = new LiveSources();
        kernel.AddMiddleware(async (command, context, next) =>
        {
            var page = PlotlyInPage.HasLivePage(context);
            using var told = command is SubmitCode or RequestCompletions ? new Retelling(context, happened => PageWords.Of(happened, page)) : null;
            if (command is not SubmitCode submit)
            {
                await next(command, context);
                return;
            }

            var reading = live.Read(submit.Code);
            var (steps, missing) = csharp.ScriptState?.Script is { } before
                ? CellFormulas.Of(submit.Code, text => before.ContinueWith(text, before.Options).GetCompilation())
                : ([], []);
            foreach (var sentence in missing)
                context.DisplayAs(sentence, "text/plain");
            // The command must stay itself: what another command shows would not be told as this cell's.
            if (TextLift.Rewrite(CellText.With(submit.Code, [.. LiteralLift.Changes(submit.Code), .. steps])) is var code && !ReferenceEquals(code, submit.Code))
                SetCode(submit, code);
            CellSources.Current = SourcesOfCell.Of(reading);
            var failed = new Failure();
            using (page ? Interrupts.Begin(context.CancellationToken) : null)
            using (context.KernelEvents.Subscribe(failed))
            using (RecordBatch.Open())
                await next(command, context);
            if (failed.Seen)
                live.Failed();
        });
    }

    private sealed class Failure : IObserver<KernelEvent>
    {
        public bool Seen { get; private set; }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error) => Seen = true;

        public void OnNext(KernelEvent value) => Seen |= value is CommandFailed;
    }

    // The host (archived, so this stays as it is) lets only its own code set a submission's text.
    [UnsafeAccessor(UnsafeAccessorKind.Method, Name = "set_Code")]
    private static extern void SetCode(SubmitCode submit, string code);

    // The host's process holds an older FSharp.Core than Plotly.NET was built with; the one that is loaded serves.
    private static void AnswerForFSharpCore()
    {
        if (resolving)
            return;
        resolving = true;
        AssemblyLoadContext.Default.Resolving += (_, name) => name.Name == "FSharp.Core"
            ? AppDomain.CurrentDomain.GetAssemblies().FirstOrDefault(a => a.GetName().Name == "FSharp.Core")
            : null;
    }
}
