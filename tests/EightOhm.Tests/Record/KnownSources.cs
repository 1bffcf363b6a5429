using EightOhm.Record;

namespace EightOhm.Tests.Record;

/// <summary>Stands for the reader of cells: says of every value that it hangs on the entries named.</summary>
internal sealed class KnownSources : ICellSources, IDisposable
{
    private readonly string[] _names;

    private KnownSources(string[] names) => _names = names;

    public static KnownSources Are(params string[] names)
    {
        var known = new KnownSources(names);
        CellSources.Current = known;
        return known;
    }

    public IReadOnlyCollection<string>? Of(string recordPath, string entryOrLabel, int line) => _names;

    public void Dispose() => CellSources.Current = null;
}
