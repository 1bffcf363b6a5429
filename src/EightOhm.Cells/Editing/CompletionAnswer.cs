namespace EightOhm.Cells.Editing;

/// <summary>What may stand at the caret.</summary>
/// <param name="Items">The names, the likeliest first; at most 200.</param>
/// <param name="From">Where what is replaced begins, in letters from the start of the cell.</param>
/// <param name="To">Where it ends.</param>
public sealed record CompletionAnswer(IReadOnlyList<CompletionEntry> Items, int From, int To);

/// <summary>One name that may stand at the caret.</summary>
/// <param name="Label">The name as it is shown.</param>
/// <param name="Insert">The text that is put in for it.</param>
/// <param name="Kind">What it is: argument, class, constant, enum, function, interface, keyword, method, namespace, property, type or variable.</param>
/// <param name="Detail">In short what it gives: a type, or what is asked for and given; empty where there is nothing to say.</param>
/// <param name="Documentation">Its documentation as HTML; null for a name far down the list, which <see cref="CellAssistant.DescribeAsync"/> tells of.</param>
public sealed record CompletionEntry(string Label, string Insert, string Kind, string Detail, string? Documentation);
