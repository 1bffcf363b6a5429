using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cells.Compiling;

/// <summary>Compiles the cells of one notebook in order, each seeing those before it, and runs none. What was compiled before is taken from what is kept.</summary>
/// <remarks>Not for use from several threads at once. A cell that does not compile is as if it were not there for those after it.</remarks>
public sealed class NotebookCompiler
{
    private const int KeyDigits = 32;

    /// <summary>Names the EightOhm and the compiler at work.</summary>
    internal static string Build { get; } = Fingerprint.Of(
        [BuildVersion.Text, .. new[] { typeof(Quantities.Literals), typeof(Display.Show), typeof(NotebookCompiler), typeof(UnitsNet.IQuantity), typeof(object), typeof(CSharpCompilation) }.Select(t => t.Module.ModuleVersionId.ToString())],
        KeyDigits);

    private readonly CellReferences references;
    private readonly string folder;
    private readonly IKeptImages? kept;
    private readonly List<CellSource> sources = [];
    private string key = Build;
    // The first place is the host's.
    private int slots = 1;
    private int asked;
    private CompilerChain? chain;

    /// <param name="references">What cells are compiled against: all that is at hand.</param>
    /// <param name="folder">The notebook's folder, from which cells name files.</param>
    /// <param name="kept">What was compiled before; null to compile all anew.</param>
    public NotebookCompiler(CellReferences references, string folder, IKeptImages? kept = null) => (this.references, this.folder, this.kept) = (references.In(folder), folder, kept);

    /// <summary>Compiles the next cell.</summary>
    /// <param name="code">The cell's code as written.</param>
    /// <returns>The cell, compiled or with its faults.</returns>
    public CompiledCell Next(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        asked++;
        var files = FileReferences.In(code, folder);
        var next = Fingerprint.Of([key, code, .. files.Select(Fingerprint.OfFile)], KeyDigits);
        var source = new CellSource(code, next, slots, files, PackageLines.AskIn(code) && !sources.Any(s => s.BringsEightOhm));
        var cell = kept?.Find(next);
        if (cell?.Slot == slots)
        {
            // Should a later cell be new, this one is gone through for it.
            chain?.Follow(source);
        }
        else
        {
            chain ??= new CompilerChain(references, sources);
            cell = chain.Next(source);
            if (cell.Compiled)
                kept?.Add(cell);
        }

        if (!cell.Compiled)
            return cell;
        sources.Add(source);
        key = next;
        slots += cell.Image.Length > 0 ? 1 : 0;
        return cell;
    }

    /// <summary>What hangs on what among the cells so far, which were read on the way.</summary>
    /// <returns>The graph; null where one was not read (it did not compile, all were kept, or none names a record) or names an assembly by its file, which may change without the text.</returns>
    public CellGraph? Graph() => sources.All(s => s.Files.Count == 0) ? chain?.Graph(asked) : null;
}
