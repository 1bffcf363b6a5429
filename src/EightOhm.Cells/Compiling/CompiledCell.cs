using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Compiling;

/// <summary>A cell as the compiler left it: what a process without a compiler needs to run it, or why it did not compile.</summary>
/// <param name="Key">Names the cell by its text, by those before it and by the EightOhm it was compiled with.</param>
/// <param name="Slot">Its place among the cells that compiled; its variables live there.</param>
/// <param name="Image">The assembly; empty where there is nothing to run.</param>
/// <param name="Symbols">Which line an instruction comes from.</param>
/// <param name="HasValue">Whether it ends in a value that is shown.</param>
/// <param name="BringsEightOhm">Whether it asks for the package.</param>
/// <param name="Notes">What is said above its outputs: formulas whose steps cannot be shown.</param>
/// <param name="Files">Assemblies that it names by their files.</param>
/// <param name="Writes">What it writes into a record and where that comes from; null where it could not be followed, or where no cell has named a record yet.</param>
/// <param name="Faults">Why it did not compile; empty when it did.</param>
public sealed record CompiledCell(
    string Key,
    int Slot,
    byte[] Image,
    byte[] Symbols,
    bool HasValue,
    bool BringsEightOhm,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Files,
    IReadOnlyList<EntryWrite>? Writes,
    IReadOnlyList<CellFault> Faults)
{
    /// <summary>Whether it can run.</summary>
    public bool Compiled => Faults.Count == 0;

    // Stack traces are read by it.
    internal static string ClassName(int slot) => FormattableString.Invariant($"Submission#{slot}");

    internal string AssemblyName => $"cell-{Key}";
}

/// <summary>Why a cell does not compile.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Words">The compiler's words, with its number.</param>
public sealed record CellFault(int Line, string Words);
