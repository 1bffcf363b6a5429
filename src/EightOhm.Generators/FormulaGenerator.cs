using System.Collections.Immutable;
using System.Linq;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Generators;

/// <summary>Writes, beside each <c>[Formula]</c> method or property, its steps: the same expressions as expression trees.</summary>
[Generator(LanguageNames.CSharp)]
internal sealed class FormulaGenerator : IIncrementalGenerator
{
    private const string Attribute = "EightOhm.Explaining.FormulaAttribute";

    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var written = context.SyntaxProvider.ForAttributeWithMetadataName(
            Attribute,
            static (node, _) => node is MethodDeclarationSyntax or PropertyDeclarationSyntax,
            static (found, _) => StepsWriter.Write(found));
        context.RegisterSourceOutput(written, static (output, steps) =>
        {
            foreach (var problem in steps.Problems)
                output.ReportDiagnostic(problem);
            if (steps.Code is not null)
                output.AddSource(steps.FileName, SourceText.From(steps.Code, Encoding.UTF8));
        });
    }
}

/// <summary>The code of one formula's steps, or what stands in its way.</summary>
internal sealed class StepsCode(string fileName, string? code, ImmutableArray<Diagnostic> problems)
{
    public string FileName { get; } = fileName;

    public string? Code { get; } = code;

    public ImmutableArray<Diagnostic> Problems { get; } = problems;
}
