namespace EightOhm.Cli.Live;

/// <summary>What was done to a chapter's cells, to be undone and done again.</summary>
internal sealed class ChapterHistory
{
    private readonly Stack<ChapterStep> done = new(), undone = new();

    /// <summary>Does a step and remembers it.</summary>
    public void Do(ChapterStep step)
    {
        step.Forth();
        done.Push(step);
        undone.Clear();
    }

    /// <summary>Takes the last step back.</summary>
    /// <returns>What it was, in words.</returns>
    /// <exception cref="LiveRefusal">There is none.</exception>
    public string Undo() => Move(done, undone, "There is no step to undo: cells were not added, moved, deleted or split.", s => s.Back());

    /// <summary>Does the step again that was taken back last.</summary>
    /// <returns>What it was, in words.</returns>
    /// <exception cref="LiveRefusal">There is none.</exception>
    public string Redo() => Move(undone, done, "There is no step to do again.", s => s.Forth());

    private static string Move(Stack<ChapterStep> from, Stack<ChapterStep> to, string none, Action<ChapterStep> act)
    {
        if (!from.TryPop(out var step))
            throw new LiveRefusal(none);
        act(step);
        to.Push(step);
        return step.Words;
    }
}

/// <summary>A change of a chapter's cells.</summary>
/// <param name="Words">What it is, in words.</param>
/// <param name="Forth">Does it.</param>
/// <param name="Back">Takes it back.</param>
internal sealed record ChapterStep(string Words, Action Forth, Action Back);
