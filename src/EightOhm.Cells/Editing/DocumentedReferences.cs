using EightOhm.Cells.Sources;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Editing;

/// <summary>Gives the assemblies that cells are compiled against their documentation, where it lies on this machine.</summary>
internal static class DocumentedReferences
{
    // The core of the platform holds types that its reference assemblies, and so their documentation, keep in several.
    private static readonly string[] Core = ["System.Runtime", "System.Collections", "System.Threading", "System.Runtime.Extensions", "System.Memory", "System.Console"];

    /// <summary>The same assemblies with their documentation: from the file beside an assembly, for the platform's own from its reference pack.</summary>
    public static IReadOnlyList<MetadataReference> Of(CellReferences references) => [.. references.References.Select(Documented)];

    private static MetadataReference Documented(MetadataReference reference)
    {
        if (reference is not PortableExecutableReference { FilePath: { } path } file || file.GetMetadata() is not AssemblyMetadata assembly)
            return reference;
        var docs = Files(path);
        return docs.Count == 0 ? reference : assembly.GetReference(new DocsFiles(docs), file.Properties.Aliases, file.Properties.EmbedInteropTypes, path, file.Display);
    }

    private static List<string> Files(string assembly)
    {
        var name = Path.GetFileNameWithoutExtension(assembly);
        if (Path.ChangeExtension(assembly, ".xml") is var beside && File.Exists(beside))
            return [beside];
        if (Pack(Path.GetDirectoryName(assembly)!) is not { } pack)
            return [];
        string[] names = name == "System.Private.CoreLib" ? Core : [name];
        return [.. names.Select(n => Path.Combine(pack, n + ".xml")).Where(File.Exists)];
    }

    // shared/Microsoft.NETCore.App/10.0.1 has its documentation in packs/Microsoft.NETCore.App.Ref/10.0.1/ref/net10.0, if an SDK is there; any patch of the same version will do.
    private static string? Pack(string runtime)
    {
        var (version, framework) = (Path.GetFileName(runtime), Path.GetDirectoryName(runtime));
        if (framework is null || Path.GetDirectoryName(framework) is not { } shared || Path.GetFileName(shared) != "shared" || !Version.TryParse(version.Split('-')[0], out var number))
            return null;
        var packs = Path.Combine(Path.GetDirectoryName(shared)!, "packs", Path.GetFileName(framework) + ".Ref");
        return !Directory.Exists(packs) ? null : Directory.GetDirectories(packs, $"{number.Major}.{number.Minor}.*")
            .Select(p => Path.Combine(p, "ref", $"net{number.Major}.{number.Minor}")).Where(Directory.Exists).Order(StringComparer.Ordinal).LastOrDefault();
    }
}
