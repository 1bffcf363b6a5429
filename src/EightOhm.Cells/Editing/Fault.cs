namespace EightOhm.Cells.Editing;

/// <summary>What the compiler has against a cell.</summary>
/// <param name="From">Where it begins, in letters from the start of the cell as it is written.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Line">The line that it begins in, from 1.</param>
/// <param name="Words">What it is.</param>
/// <param name="IsError">Whether the cell cannot run with it; else it is a warning.</param>
public sealed record Fault(int From, int To, int Line, string Words, bool IsError);
