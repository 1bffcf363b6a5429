using Microsoft.CodeAnalysis;

namespace EightOhm.Notebook.Sources;

/// <summary>What cells are compiled against.</summary>
/// <param name="References">The assemblies.</param>
/// <param name="Usings">The namespaces that a cell sees without a using; in a static one its members too ("static X").</param>
/// <param name="Resolver">Finds the assemblies that a cell names itself; null when no cell may.</param>
public sealed record CellReferences(IReadOnlyList<MetadataReference> References, IReadOnlyList<string> Usings, MetadataReferenceResolver? Resolver = null)
{
    // What the kernel itself brings in.
    private static readonly string[] KernelUsings =
        ["System", "System.IO", "System.Text", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Threading.Tasks", "Microsoft.DotNet.Interactive", "Microsoft.DotNet.Interactive.Formatting"];

    /// <summary>All assemblies of this process's platform and application, and what a kernel brings in: for a host that holds EightOhm and the kernel.</summary>
    /// <remarks>The assemblies that the process was started with, not those loaded: a reference assembly's types must be found where they lie.</remarks>
    public static CellReferences OfThisProcess() =>
        new([.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(File.Exists).Select(path => MetadataReference.CreateFromFile(path))], KernelUsings);

    /// <summary>What <see cref="OfThisProcess"/> gives, and whatever else is loaded: for a kernel that was told to load EightOhm as a package.</summary>
    public static CellReferences OfWhatIsLoaded()
    {
        var own = OfThisProcess();
        var known = own.References.Select(r => Path.GetFileName(r.Display)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var loaded = AppDomain.CurrentDomain.GetAssemblies()
            .Where(a => !a.IsDynamic && a.Location.Length > 0 && known.Add(Path.GetFileName(a.Location)))
            .Select(a => (MetadataReference)MetadataReference.CreateFromFile(a.Location));
        return own with { References = [.. own.References, .. loaded] };
    }
}
