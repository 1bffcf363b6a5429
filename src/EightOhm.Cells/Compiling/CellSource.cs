namespace EightOhm.Cells.Compiling;

/// <summary>A cell on its way to the compiler.</summary>
/// <param name="Code">Its code as written.</param>
/// <param name="Key">Names it by its text, by those before it and by the EightOhm it is compiled with.</param>
/// <param name="Slot">The place of its variables, if it has any code.</param>
/// <param name="Files">Assemblies that it names by their files.</param>
/// <param name="BringsEightOhm">Whether it is the first to ask for the package: from it on EightOhm's names are seen.</param>
internal sealed record CellSource(string Code, string Key, int Slot, IReadOnlyList<string> Files, bool BringsEightOhm);
