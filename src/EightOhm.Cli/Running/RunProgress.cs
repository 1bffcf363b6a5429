using System.Diagnostics;
using System.Globalization;
using EightOhm.Cli.Notebooks;
using Spectre.Console;

namespace EightOhm.Cli.Running;

/// <summary>Tells how the run goes: one line a notebook, alive on a terminal and plain anywhere else.</summary>
internal abstract class RunProgress
{
    private readonly Stopwatch watch = new();

    /// <summary>Runs <paramref name="run"/> with a progress that suits the console.</summary>
    public static Task ShowAsync(IAnsiConsole console, Func<RunProgress, Task> run) =>
        console.Profile.Capabilities.Interactive
            ? console.Progress()
                .Columns(new SpinnerColumn(), new TaskDescriptionColumn { Alignment = Justify.Left }, new ProgressBarColumn())
                .StartAsync(live => run(new Live(live)))
            : run(new Plain(console));

    public void Begin(NotebookFile notebook)
    {
        watch.Restart();
        Begin(notebook.Label, notebook.Cells.Count);
    }

    public void Cell(NotebookFile notebook, NotebookCell cell) => Show(Line(notebook, cell.Number), cell.Number - 1);

    public void End(NotebookFile notebook) => End(Line(notebook, notebook.Cells.Count), notebook.Cells.Count);

    /// <summary>Takes word from inside a long cell.</summary>
    public abstract IProgress<WorkDone>? Inside { get; }

    protected abstract void Begin(string name, int cells);

    protected abstract void Show(string text, double cellsDone);

    protected abstract void End(string text, double cellsDone);

    private string Line(NotebookFile notebook, int cell) =>
        string.Create(CultureInfo.InvariantCulture, $"{notebook.Label}  cell {cell}/{notebook.Cells.Count}  {watch.Elapsed.TotalSeconds:0.0} s");

    private sealed class Live(ProgressContext context) : RunProgress, IProgress<WorkDone>
    {
        private ProgressTask? line;
        private double whole;

        public override IProgress<WorkDone>? Inside => this;

        public void Report(WorkDone value) => line?.Value = whole + value.Fraction;

        protected override void Begin(string name, int cells) => line = context.AddTask(Markup.Escape(name), maxValue: Math.Max(1, cells));

        protected override void Show(string text, double cellsDone)
        {
            line?.Description = Markup.Escape(text);
            line?.Value = whole = cellsDone;
        }

        protected override void End(string text, double cellsDone)
        {
            Show(text, cellsDone);
            line?.StopTask();
        }
    }

    private sealed class Plain(IAnsiConsole console) : RunProgress
    {
        public override IProgress<WorkDone>? Inside => null;

        protected override void Begin(string name, int cells)
        {
        }

        protected override void Show(string text, double cellsDone)
        {
        }

        protected override void End(string text, double cellsDone) => console.WriteLine(text);
    }
}
