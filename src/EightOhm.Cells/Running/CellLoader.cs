using System.Reflection;
using System.Runtime.Loader;
using EightOhm.Cells.Compiling;

namespace EightOhm.Cells.Running;

/// <summary>Loads the compiled cells of one notebook, each once.</summary>
internal sealed class CellLoader
{
    private readonly Dictionary<string, Func<object?[], Task<object?>>> entries = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Assembly> assemblies = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> files = new(StringComparer.OrdinalIgnoreCase);
    private readonly AssemblyLoadContext context = new("cells", isCollectible: true);

    public CellLoader() => context.Resolving += (own, name) => name.Name is not { } asked ? null
        : assemblies.TryGetValue(asked, out var cell) ? cell
        : files.TryGetValue(asked, out var file) ? own.LoadFromAssemblyPath(file) : null;

    /// <summary>What runs a cell: it takes the variables of the cells before, by their slots, and puts its own beside them.</summary>
    /// <param name="cell">A cell that compiled and has code.</param>
    public Func<object?[], Task<object?>> Entry(CompiledCell cell)
    {
        if (entries.TryGetValue(cell.Key, out var known))
            return known;
        foreach (var file in cell.Files)
            files[Path.GetFileNameWithoutExtension(file)] = file;
        using var image = new MemoryStream(cell.Image);
        using var symbols = new MemoryStream(cell.Symbols);
        var assembly = assemblies[cell.AssemblyName] = context.LoadFromStream(image, symbols);
        var factory = assembly.GetType(CompiledCell.ClassName(cell.Slot), throwOnError: true)!
            .GetMethod("<Factory>", BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!;
        return entries[cell.Key] = factory.CreateDelegate<Func<object?[], Task<object?>>>();
    }
}
