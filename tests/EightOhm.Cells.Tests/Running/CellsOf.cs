using EightOhm.Cells.Compiling;
using EightOhm.Cells.Running;
using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Tests.Running;

/// <summary>Cells as a test writes them, compiled and run.</summary>
internal static class CellsOf
{
    /// <summary>What a chapter begins with.</summary>
    public const string Package = "#r \"nuget: EightOhm.Notebook\"";

    private static readonly Lazy<CellReferences> AllReferences = new(CellReferences.OfThisProcess);

    public static CellReferences References => AllReferences.Value;

    public static NotebookCompiler Compiler(IKeptImages? kept = null, string? folder = null) => new(References, folder ?? AppContext.BaseDirectory, kept);

    public static IReadOnlyList<CompiledCell> Compile(params string[] cells) => Compile(null, cells);

    public static IReadOnlyList<CompiledCell> Compile(IKeptImages? kept, params string[] cells)
    {
        var compiler = Compiler(kept);
        return [.. cells.Select(compiler.Next)];
    }

    /// <summary>Runs a cell and gives the text that it shows, or the words of its failure.</summary>
    public static async Task<string> TextAsync(this CellSession session, CompiledCell cell, CancellationToken cancellation = default)
    {
        var outcome = await session.RunAsync(cell, 1, cancellation);
        var shown = outcome.Outputs.Select(o => NbFormat.Text(o!["text"] ?? o["data"]!["text/plain"]));
        return string.Concat(shown) + (outcome.Failure is { } failure ? $"[{failure.Kind}, line {failure.Line}: {failure.Message}]" : "");
    }
}
