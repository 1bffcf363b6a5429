using EightOhm.Cells;
using EightOhm.Cells.Sources;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Running;
using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>Finds the cells that hang on what was set, and those that these need.</summary>
internal sealed class RerunPlanner(RecordCopies copies, NotebookGraphs graphs)
{
    /// <param name="set">What was set for this run.</param>
    /// <param name="full">Whether every cell is to run whatever hangs on what.</param>
    public RunPlan Make(IReadOnlyList<SetValue> set, bool full)
    {
        if (set.Count == 0)
            return RunPlan.All("");
        if (full)
            return RunPlan.All("--full was given");

        var faults = copies.All.Select(KeptOutputs.Fault).ToList();
        if (faults.All(f => f is not null))
            return RunPlan.All(faults[0]!);
        var moved = set.Where(s => s.Before != s.Now).Select(s => (s.Record, s.Name)).ToList();
        try
        {
            var cells = copies.All.SelectMany((copy, i) => faults[i] is null ? Cells(copy, moved) : Every(copy));
            var all = faults.OfType<string>().FirstOrDefault() is { } fault ? $"; all of a folder, since {fault}" : "";
            return new RunPlan(
                cells.ToHashSet(),
                $"those that hang on {string.Join(", ", set.Select(s => s.Name).Distinct())}, with the cells that these need{all}");
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The reading of cells is help, not a condition: without it everything runs.
            return RunPlan.All($"the cells could not be read for what hangs on what ({e.GetType().Name})");
        }
    }

    // A later notebook may move what an earlier one shows: round the folder until nothing new has moved.
    private HashSet<(string Notebook, int Cell)> Cells(RecordCopy copy, IReadOnlyList<(string Record, string Name)> moved)
    {
        var entries = copy.Records.SelectMany(record => After(record, moved.Where(m => m.Record == record.Path).Select(m => m.Name))).ToHashSet();
        var cells = new HashSet<(string, int)>();
        var notebooks = copy.Home.Notebooks.Where(NotebookGraphs.SpeaksOfARecord).ToList();
        graphs.Begin(notebooks);
        for (var known = -1; known != entries.Count;)
        {
            known = entries.Count;
            cells.Clear();
            foreach (var notebook in notebooks)
            {
                var graph = graphs.Of(notebook);
                var rerun = graph.Graph.CellsToRun(entries);
                // The package's line is the kernel's matter, which the graph leaves out; nothing compiles without it.
                var package = rerun.Moved.Count == 0 ? [] : Enumerable.Range(0, rerun.Moved[^1]).Where(i => PackageLines.AskIn(graph.Cells[i].Source));
                cells.UnionWith(rerun.InAFreshKernel.Concat(package).Select(i => (notebook.Label, graph.Cells[i].Number)));
                entries.UnionWith(rerun.MovedEntries);
            }
        }

        return cells;
    }

    private static IEnumerable<(string Notebook, int Cell)> Every(RecordCopy copy) =>
        copy.Home.Notebooks.SelectMany(notebook => notebook.Cells.Select(cell => (notebook.Label, cell.Number)));

    /// <summary>The entries and requirements that hang on some, as the record knows it: also through notebooks that are not part of the run.</summary>
    /// <param name="record">The record.</param>
    /// <param name="moved">The names that moved.</param>
    public static IEnumerable<EntryName> After(DesignRecord record, IEnumerable<string> moved)
    {
        var names = moved.ToHashSet(StringComparer.Ordinal);
        for (var known = -1; known != names.Count;)
        {
            known = names.Count;
            names.UnionWith(record.Entries.Where(e => e.From.Any(names.Contains)).Select(e => e.Name).ToList());
        }

        var requirements = record.Compliance().Where(r => (r.Entry is { } entry && names.Contains(entry)) || r.Limits.Any(names.Contains))
            .SelectMany(NamesOf).Distinct(StringComparer.Ordinal);
        return [.. names.Select(n => new EntryName("", n)), .. requirements.Select(r => new EntryName("", r, IsRequirement: true))];
    }

    /// <summary>How cells may name a requirement: by its label, or by the entry that it is about.</summary>
    /// <param name="requirement">The requirement.</param>
    public static IEnumerable<string> NamesOf(Requirement requirement) => new[] { requirement.Key, requirement.Entry }.OfType<string>().Distinct(StringComparer.Ordinal);
}
