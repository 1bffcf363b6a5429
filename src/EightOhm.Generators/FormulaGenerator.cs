using System.Collections.Immutable;
using System.Linq;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Generators;

/// <summary>Writes, beside each <c>[Formula]</c> method or property, its board: the same expressions as expression trees.</summary>
[Generator(LanguageNames.CSharp)]
public sealed class FormulaGenerator : IIncrementalGenerator
{
    private const string Attribute = "EightOhm.Explaining.FormulaAttribute";

    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var boards = context.SyntaxProvider.ForAttributeWithMetadataName(
            Attribute,
            static (node, _) => node is MethodDeclarationSyntax or PropertyDeclarationSyntax,
            static (found, _) => BoardWriter.Write(found));
        context.RegisterSourceOutput(boards, static (output, board) =>
        {
            foreach (var problem in board.Problems)
                output.ReportDiagnostic(problem);
            if (board.Code is not null)
                output.AddSource(board.FileName, SourceText.From(board.Code, Encoding.UTF8));
        });
    }
}

/// <summary>The code of one board, or what stands in its way.</summary>
internal sealed class BoardCode(string fileName, string? code, ImmutableArray<Diagnostic> problems)
{
    public string FileName { get; } = fileName;

    public string? Code { get; } = code;

    public ImmutableArray<Diagnostic> Problems { get; } = problems;
}
