using System.Globalization;
using System.Reflection;
using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Host.Mef;
using Microsoft.CodeAnalysis.Text;

namespace EightOhm.Cells.Editing;

/// <summary>Keeps the cells before the one in hand as the compiler knows them, each a project that stands on the one before it; only what changed is read anew.</summary>
/// <remarks>For use from several threads: each gets a state of its own that no other changes.</remarks>
internal sealed class CellDesk : IDisposable
{
    // The parts of the compiler's services that serve C#; its default host would look for Visual Basic too.
    private static readonly string[] Services = ["Microsoft.CodeAnalysis.Workspaces", "Microsoft.CodeAnalysis.CSharp.Workspaces", "Microsoft.CodeAnalysis.Features", "Microsoft.CodeAnalysis.CSharp.Features"];

    private readonly Lock _lock = new();
    private readonly AdhocWorkspace _workspace;
    private readonly IReadOnlyList<MetadataReference> _references;
    private readonly CSharpCompilationOptions _options;
    private readonly List<(string Text, ProjectId Project, DocumentId Document)> _chain = [];
    private Solution _solution;
    private (string Text, ProjectId Before, Solution Laid, Document Document)? _hand;

    /// <summary>A desk without cells.</summary>
    /// <param name="references">What cells are compiled against.</param>
    public CellDesk(CellReferences references)
    {
        _references = DocumentedReferences.Of(references);
        _options = new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, usings: references.Usings, metadataReferenceResolver: references.Resolver);
        _workspace = new(MefHostServices.Create(Services.Select(Assembly.Load)));
        _solution = _workspace.CurrentSolution;
        // What every cell sees without a using.
        _solution = With(_solution, 0, CellUsings.Script, null, out var project, out var document);
        _chain.Add((CellUsings.Script, project, document));
    }

    /// <summary>The cell in hand as a document that stands on the cells before it.</summary>
    /// <param name="before">The texts of those, in order.</param>
    /// <param name="text">The text of the cell in hand; lines for a kernel alone are taken as blanks, all other letters keep their places.</param>
    /// <param name="ct">Stops it.</param>
    public async Task<Document> DocumentAsync(IReadOnlyList<string> before, string text, CancellationToken ct)
    {
        Solution laid;
        ProjectId last;
        lock (_lock)
        {
            Lay(before);
            (laid, last) = (_solution, _chain[before.Count].Project);
            if (_hand is { } hand && hand.Text == text && hand.Before == last && hand.Laid == laid)
                return hand.Document;
        }

        // Here, not in the state with the cell in hand, which is another one with every letter: what is compiled now is kept for all that follow.
        await laid.GetProject(last)!.GetCompilationAsync(ct).ConfigureAwait(false);
        var document = With(laid, before.Count + 1, CellChain.Blanked(text), last, out _, out var id).GetDocument(id)!;
        lock (_lock)
            _hand = (text, last, laid, document);
        return document;
    }

    /// <inheritdoc/>
    public void Dispose() => _workspace.Dispose();

    // As it is compiled: a cell with errors costs every later one time.
    private static string Earlier(string text) => CellChain.IsForeign(text) ? "" : CellChain.Blanked(LiteralLift.Rewrite(text));

    // Cells after these stay as they are: who goes back to a later cell finds it read.
    private void Lay(IReadOnlyList<string> before)
    {
        for (var i = 0; i < before.Count; i++)
        {
            if (i + 1 < _chain.Count)
            {
                var (known, project, document) = _chain[i + 1];
                if (known == before[i])
                    continue;
                _solution = _solution.WithDocumentText(document, SourceText.From(Earlier(before[i])));
                _chain[i + 1] = (before[i], project, document);
            }
            else
            {
                _solution = With(_solution, i + 1, Earlier(before[i]), _chain[i].Project, out var project, out var document);
                _chain.Add((before[i], project, document));
            }
        }
    }

    private Solution With(Solution solution, int position, string text, ProjectId? before, out ProjectId project, out DocumentId document)
    {
        project = ProjectId.CreateNewId();
        document = DocumentId.CreateNewId(project);
        var name = string.Create(CultureInfo.InvariantCulture, $"cell{position}");
        return solution
            .AddProject(ProjectInfo.Create(project, VersionStamp.Default, name, name, LanguageNames.CSharp, compilationOptions: _options, parseOptions: CellText.Script,
                projectReferences: before is null ? [] : [new ProjectReference(before)], metadataReferences: _references, isSubmission: true))
            .AddDocument(DocumentInfo.Create(document, name, sourceCodeKind: SourceCodeKind.Script, loader: TextLoader.From(TextAndVersion.Create(SourceText.From(text), VersionStamp.Default))));
    }
}
