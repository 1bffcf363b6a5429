using EightOhm.Cli.Notebooks;
using EightOhm.Display;

namespace EightOhm.Cli.Ends;

/// <summary>How the cells of a run ended: what had no answer, what failed, and what was not calculated because it needs one of them.</summary>
internal sealed class RunLog
{
    private readonly List<CellEnd> ends = [];

    /// <summary>The cells that gave nothing, in the order of the run.</summary>
    public IReadOnlyList<CellEnd> Ends => ends;

    /// <summary>How many cells ran.</summary>
    public int Ran { get; private set; }

    /// <summary>How many code cells the notebooks hold.</summary>
    public int All { get; private set; }

    public bool HasFailures => ends.Any(e => e.Kind == NoticeKind.Failed);

    public void Count(bool ran)
    {
        All++;
        Ran += ran ? 1 : 0;
    }

    public void Add(CellEnd end) => ends.Add(end);

    /// <summary>The cells where something began, each with how many were not calculated because of it.</summary>
    public IEnumerable<(CellEnd First, int After)> Causes(NoticeKind kind) =>
        ends.Where(e => e.Kind == kind).Select(e => (e, ends.Count(other => other.First == e)));
}
