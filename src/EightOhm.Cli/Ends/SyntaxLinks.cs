using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.Ends;

/// <summary>Links between cells as their syntax tells them: within a notebook by the names of variables, between notebooks by the names of entries.</summary>
internal sealed class SyntaxLinks : ICellLinks
{
    private readonly Dictionary<CellPlace, CellNames> names = [];

    public CellNeed? Need(CellPlace place, IReadOnlyList<CellEnd> lost)
    {
        var cell = Names(place);
        foreach (var end in lost)
        {
            var gave = Names(end.Place);
            var name = (end.Place.Notebook == place.Notebook ? cell.Uses.FirstOrDefault(gave.Gives.Contains) : null)
                ?? cell.Reads.FirstOrDefault(end.Lost.Contains);
            if (name is not null)
                return new CellNeed(name, end);
        }

        return null;
    }

    public IReadOnlyCollection<string> Lost(CellPlace place, int? line) => Names(place).NotWritten(line);

    private CellNames Names(CellPlace place)
    {
        if (!names.TryGetValue(place, out var known))
            names[place] = known = CellNames.Of(place.Cell.Source);
        return known;
    }
}
