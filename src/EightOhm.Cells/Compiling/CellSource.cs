namespace EightOhm.Cells.Compiling;

/// <summary>A cell on its way to the compiler.</summary>
/// <param name="Code">Its code as written.</param>
/// <param name="Files">Assemblies that it names by their files.</param>
/// <param name="BringsEightOhm">Whether it is the first to ask for the package: from it on EightOhm's names are seen.</param>
internal sealed record CellSource(string Code, IReadOnlyList<string> Files, bool BringsEightOhm);
