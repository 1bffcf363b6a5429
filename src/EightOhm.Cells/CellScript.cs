using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cells;

/// <summary>A cell as the compiler takes it: a script that sees the cells before it.</summary>
internal static class CellScript
{
    /// <summary>The cell behind another, for which the compiler has found no error: it is not asked again.</summary>
    /// <remarks>The compiler's own call searches the whole cell before for errors each time, which costs as much as compiling it.</remarks>
    /// <param name="name">The name of the assembly.</param>
    /// <param name="tree">The cell.</param>
    /// <param name="references">What it is compiled against.</param>
    /// <param name="options">How.</param>
    /// <param name="previous">The cell before; null for the first.</param>
    public static CSharpCompilation Of(string name, SyntaxTree tree, IEnumerable<MetadataReference> references, CSharpCompilationOptions options, CSharpCompilation? previous)
    {
        var first = CSharpCompilation.CreateScriptCompilation(name, tree, references, options, previousScriptCompilation: null, typeof(object));
        return first.WithScriptCompilationInfo(first.ScriptCompilationInfo!.WithPreviousScriptCompilation(previous));
    }
}
