using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace EightOhm.Cli.Notebooks;

/// <summary>A cell's code as the compiler reads it.</summary>
internal static class CellCode
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Preview, kind: SourceCodeKind.Script);

    public static CompilationUnitSyntax Parse(string source) => CSharpSyntaxTree.ParseText(source, Script).GetCompilationUnitRoot();
}
