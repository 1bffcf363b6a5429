namespace EightOhm.Cells.Editing;

/// <summary>What there is to know of the name under the pointer.</summary>
/// <param name="Html">How it is declared, what it is, its unit and range, what it gives and refuses, where it stands.</param>
/// <param name="From">Where the name begins, in letters from the start of the cell.</param>
/// <param name="To">Where it ends.</param>
public sealed record HoverAnswer(string Html, int From, int To);
