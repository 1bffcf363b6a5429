using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Sources;

/// <summary>Compiles the cells of a notebook one after the other, each seeing those before it, and runs none.</summary>
internal sealed partial class CellChain(CellReferences references)
{
    private CSharpCompilationOptions? _options;
    private int _number;

    /// <summary>The last cell that compiled.</summary>
    public CSharpCompilation? Last { get; set; }

    /// <summary>The text of a cell as the compiler takes it: lines for the kernel alone are blank, all others keep their numbers.</summary>
    public static SyntaxTree Parse(string code) =>
        CSharpSyntaxTree.ParseText(SourceText.From(Blanked(LiteralLift.Rewrite(code))), CellText.Script);

    /// <summary>The text of a cell without the lines for the kernel alone: blanks stand for them, all else keeps its place.</summary>
    public static string Blanked(string code) => KernelLine().Replace(code, line => new string(' ', line.Length));

    /// <summary>Whether a cell has lines for another kernel, or brings code that is not in it.</summary>
    public static bool IsForeign(string code) => OtherKernel().IsMatch(code);

    /// <summary>The next cell, compiled as far as it is asked; the chain stays as it is until <see cref="Last"/> is set, which must be one without errors.</summary>
    public CSharpCompilation Compile(SyntaxTree tree)
    {
        // Private fields too: they say whether a type can change.
        _options ??= new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, concurrentBuild: false, allowUnsafe: false, usings: references.Usings, metadataReferenceResolver: references.Resolver)
            .WithMetadataImportOptions(MetadataImportOptions.All);
        return CellScript.Of($"cell{(++_number).ToString(CultureInfo.InvariantCulture)}", tree, references.References, _options, Last);
    }

    [GeneratedRegex("^[ \\t]*(#r[ \\t]+\"nuget:.*|#i[ \\t].*|#!csharp[ \\t]*|#!time[ \\t]*)\\r?$", RegexOptions.Multiline)]
    private static partial Regex KernelLine();

    [GeneratedRegex("^[ \\t]*(#!(?!csharp[ \\t]*\\r?$|time[ \\t]*\\r?$)|#load[ \\t])", RegexOptions.Multiline)]
    private static partial Regex OtherKernel();
}
