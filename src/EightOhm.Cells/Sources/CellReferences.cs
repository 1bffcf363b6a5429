using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Reflection.PortableExecutable;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>What cells are compiled against.</summary>
/// <param name="References">The assemblies.</param>
/// <param name="Usings">The namespaces that a cell sees without a using; in a static one its members too ("static X").</param>
/// <param name="Rarely">Assemblies that cells seldom name: each one costs every cell time, so they are left out until a cell does not compile without them (<see cref="WithAll"/>).</param>
/// <param name="Resolver">Finds the assemblies that a cell names itself; null when no cell may.</param>
public sealed record CellReferences(IReadOnlyList<MetadataReference> References, IReadOnlyList<string> Usings, IReadOnlyList<MetadataReference>? Rarely = null, MetadataReferenceResolver? Resolver = null)
{
    private const string Kernel = "Microsoft.DotNet.Interactive";

    // What the kernel itself brings in.
    private static readonly string[] KernelUsings =
        ["System", "System.IO", "System.Text", "System.Collections", "System.Collections.Generic", "System.Linq", "System.Threading.Tasks", Kernel, Kernel + ".Formatting"];

    private static readonly string[] OurOwn = ["EightOhm", "UnitsNet", "Microsoft.DotNet.Interactive", "Plotly"];

    private static readonly FrozenSet<string> Often = FrozenSet.Create(StringComparer.Ordinal,
        "System.Private.CoreLib", "System.Runtime", "System.Collections", "System.Collections.Immutable", "System.Console", "System.Linq", "System.Linq.Expressions", "System.Memory", "System.Private.Uri",
        "System.Runtime.Numerics", "System.Text.RegularExpressions", "System.Threading", "System.Threading.Tasks", "MathNet.Numerics", "Microsoft.AspNetCore.Html.Abstractions", "netstandard");

    // The assemblies that the process was started with.
    private static readonly Lazy<string[]> Platform = new(() => [.. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator).Where(File.Exists)]);

    private static readonly Lazy<CellReferences> Shared = new(() => Of(Platform.Value));

    // What the compiler has read of them serves all who ask.
    private static readonly ConcurrentDictionary<string, MetadataReference> Known = new(StringComparer.Ordinal);

    /// <summary>The same with what cells seldom name among the references; itself when there is nothing of that.</summary>
    public CellReferences WithAll() => Rarely is { Count: > 0 } ? this with { References = [.. References, .. Rarely], Rarely = [] } : this;

    /// <summary>The same for the cells of a notebook that may name assemblies by their files.</summary>
    /// <param name="folder">The notebook's folder, from which they are named.</param>
    public CellReferences In(string folder) => this with { Resolver = new Compiling.FileReferences(folder) };

    /// <summary>All assemblies of this process's platform and application, and what a kernel brings in: for a host that holds EightOhm and the kernel.</summary>
    /// <remarks>The assemblies that the process was started with, not those loaded: a reference assembly's types must be found where they lie.</remarks>
    public static CellReferences OfThisProcess() => Shared.Value;

    /// <summary>What <see cref="OfThisProcess"/> gives, and whatever else is loaded: for a kernel that was told to load EightOhm as a package.</summary>
    public static CellReferences OfWhatIsLoaded()
    {
        var known = Platform.Value.Select(file => Path.GetFileName(file)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return Of([.. Platform.Value, .. AppDomain.CurrentDomain.GetAssemblies().Where(a => !a.IsDynamic && a.Location.Length > 0 && known.Add(Path.GetFileName(a.Location))).Select(a => a.Location)]);
    }

    private static CellReferences Of(IReadOnlyList<string> files)
    {
        var often = files.ToLookup(file => IsOften(Path.GetFileNameWithoutExtension(file)));
        // A host without the notebook kernel has none of its namespaces, and shows values by a class of ours.
        var isKernel = often[true].Any(file => Path.GetFileNameWithoutExtension(file) == Kernel);
        var usings = isKernel ? KernelUsings : KernelUsings.Where(u => !u.StartsWith(Kernel, StringComparison.Ordinal)).Append(typeof(Running.CellHelpers).FullName!);
        return new([.. often[true].Select(Read)], [.. usings], new Later([.. often[false]]));
    }

    // The compiler's own way takes in the whole file. Of one that holds native code nearly all is that, and no cell needs it.
    private static MetadataReference Read(string path) => Known.GetOrAdd(path, static path =>
    {
        using var file = File.OpenRead(path);
        return AssemblyMetadata.Create(ModuleMetadata.CreateFromStream(file, PEStreamOptions.PrefetchMetadata)).GetReference(filePath: path, display: path);
    });

    private static bool IsOften(string name) => Often.Contains(name) || OurOwn.Any(o => name.StartsWith(o, StringComparison.Ordinal));

    // Most notebooks never ask for one of these hundreds of files: they are not read before.
    private sealed class Later(IReadOnlyList<string> files) : IReadOnlyList<MetadataReference>
    {
        private readonly Lazy<MetadataReference[]> _read = new(() => [.. files.Select(Read)]);

        public int Count => files.Count;

        public MetadataReference this[int index] => _read.Value[index];

        public IEnumerator<MetadataReference> GetEnumerator() => _read.Value.AsEnumerable().GetEnumerator();

        IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
