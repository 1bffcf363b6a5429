using System.Collections.Immutable;
using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace EightOhm.Cells.Compiling;

/// <summary>The assemblies that cells name by their files: <c>#r "folder/name.dll"</c>, from the notebook's folder.</summary>
internal sealed class FileReferences(string folder) : MetadataReferenceResolver
{
    /// <summary>The files that a cell names and that are there.</summary>
    public static IReadOnlyList<string> In(string code, string folder)
    {
        if (!code.Contains("#r", StringComparison.Ordinal))
            return [];
        return [.. CellText.Parse(CellChain.Blanked(code)).GetReferenceDirectives()
            .Select(d => Path.GetFullPath(d.File.ValueText, folder)).Where(File.Exists).Distinct(StringComparer.Ordinal)];
    }

    public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties)
    {
        var path = Path.GetFullPath(reference, folder);
        return File.Exists(path) ? [MetadataReference.CreateFromFile(path, properties)] : [];
    }

    public override bool Equals(object? other) => other is FileReferences { } same && same.Folder == Folder;

    public override int GetHashCode() => Folder.GetHashCode(StringComparison.Ordinal);

    private string Folder => folder;
}
