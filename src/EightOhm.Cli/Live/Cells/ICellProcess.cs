using System.Text.Json.Nodes;
using EightOhm.Cells.Running;
using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The cells of one folder, which share its records: compiled once, run in a process of their own.</summary>
/// <remarks>One thing at a time: the caller waits for each before the next. Only <see cref="RunAsync"/> can be stopped.</remarks>
internal interface ICellProcess : IAsyncDisposable
{
    /// <summary>Counts the processes that there were: when it has changed, every variable of every cell is gone.</summary>
    int Life { get; }

    /// <summary>Compiles the first cells of a chapter, as far as they are not compiled already.</summary>
    /// <param name="chapter">The chapter's notebook.</param>
    /// <param name="texts">The code of its cells, in order.</param>
    /// <param name="last">The place of the last that is needed.</param>
    /// <returns>A key for each up to that one: the same key means the same code after the same code.</returns>
    IReadOnlyList<string> Prepare(NotebookFile chapter, IReadOnlyList<string> texts, int last);

    /// <summary>Runs a cell as it was prepared.</summary>
    /// <param name="chapter">The chapter's notebook.</param>
    /// <param name="cell">Its place among the texts.</param>
    /// <param name="count">Its number for its outputs, from 1.</param>
    /// <param name="told">Told what it prints and how far it is.</param>
    /// <param name="stop">Stops it: by asking, and after a second by ending the process.</param>
    /// <returns>What it gave; null where the process was gone before the cell began, and with it every variable: ask again.</returns>
    Task<CellRun?> RunAsync(NotebookFile chapter, int cell, int count, Action<CellTold> told, CancellationToken stop);

    /// <summary>Moves an input of a record that the cells use.</summary>
    /// <param name="record">The record's file, without folder.</param>
    /// <param name="name">The input.</param>
    /// <param name="text">The value; null for what the chapter says.</param>
    Task SetAsync(string record, string name, string? text);

    /// <summary>Keeps of what a cell was to write that it has no answer.</summary>
    Task LoseAsync(LostNames lost, string reason);
}

/// <summary>What a run of a cell gave.</summary>
/// <param name="Outcome">What it showed, and why it did not come to its end.</param>
/// <param name="Took">How long it took.</param>
internal sealed record CellRun(CellOutcome Outcome, TimeSpan Took);

/// <summary>Word from inside a running cell.</summary>
/// <param name="SoFar">What it has shown so far; null for word of how far it is.</param>
/// <param name="Fraction">How far it is, 0 to 1; null where it does not say.</param>
internal readonly record struct CellTold(JsonArray? SoFar, double? Fraction);
