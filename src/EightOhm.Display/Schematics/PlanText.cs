using EightOhm.Circuits;
using EightOhm.Record;

namespace EightOhm.Display.Schematics;

/// <summary>Reads the plan of a drawing: a grid of names, columns between blanks, rows between line ends.</summary>
/// <remarks>A part's name is its place; a node's name a terminal, a rail's its height, <c>0</c> a ground; <c>q*</c> leads the wire of node q through its place; <c>.</c> is nothing.
/// After a name <c>-</c> says lying, <c>|</c> standing, <c>&lt;</c> or <c>&gt;</c> the way in which a transistor or amplifier points (its base or its inputs are on the other side).</remarks>
internal static class PlanText
{
    private const string Hints = "-|<>";

    /// <summary>What stands where.</summary>
    /// <param name="circuit">The circuit, with a plan or with places given to its elements.</param>
    /// <exception cref="ArgumentException">The plan does not fit the circuit.</exception>
    public static IReadOnlyList<PlanCell> Read(Circuit circuit)
    {
        var cells = new List<PlanCell>();
        var rows = (circuit.PlanText ?? "").Replace("\r", "", StringComparison.Ordinal).Split('\n').Where(r => r.Trim().Length > 0).ToArray();
        for (var row = 0; row < rows.Length; row++)
        {
            var names = rows[row].Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            for (var column = 0; column < names.Length; column++)
                if (names[column] != ".")
                    cells.Add(Cell(circuit, names[column], column, row));
        }

        foreach (var element in circuit.Elements)
            if (element.Place is var (column, row))
                cells.Add(new(PlanKind.Part, element.Name, column, row, default));
        Check(circuit, cells);
        return cells;
    }

    private static PlanCell Cell(Circuit circuit, string token, int column, int row)
    {
        if (Kind(circuit, token) is { } whole)
            return new(whole, Name(token), column, row, default);
        if (token[^1] == '*' && Kind(circuit, token[..^1]) is PlanKind.Node or PlanKind.Rail or PlanKind.Ground)
            return new(PlanKind.Bend, Name(token[..^1]), column, row, default);
        if (Hints.Contains(token[^1]) && Kind(circuit, token[..^1]) is { } hinted)
            return new(hinted, Name(token[..^1]), column, row, token[^1]);
        var bare = token.TrimEnd('-', '|', '<', '>', '*');
        var names = circuit.Elements.Select(e => e.Name).Concat(circuit.Nodes).ToArray();
        var near = NearestName.Of(bare, names) is { } name ? $" Did you mean \"{name}\"?" : "";
        throw new ArgumentException($"The plan has \"{token}\" in row {row + 1}, column {column + 1}; the circuit has no element and no node \"{bare}\".{near}", nameof(circuit));
    }

    private static string Name(string token) => token is "ground" ? Circuit.Ground : token;

    private static PlanKind? Kind(Circuit circuit, string name) =>
        name is Circuit.Ground or "ground" ? PlanKind.Ground
        : circuit.Elements.FirstOrDefault(e => e.Name == name) is { } element ? element.Kind == ElementKind.Rail ? PlanKind.Rail : PlanKind.Part
        : circuit.Nodes.Contains(name) ? PlanKind.Node : null;

    private static void Check(Circuit circuit, List<PlanCell> cells)
    {
        foreach (var place in cells.GroupBy(c => (c.Column, c.Row)).Where(g => g.Count() > 1))
            throw new ArgumentException($"{string.Join(" and ", place.Select(c => c.Name))} are wished at one place, column {place.Key.Column}, row {place.Key.Row} (from 0). Give each a place of its own.", nameof(circuit));
        foreach (var twice in cells.Where(c => c.Kind == PlanKind.Part).GroupBy(c => c.Name).Where(g => g.Count() > 1))
            throw new ArgumentException($"{twice.Key} stands {twice.Count()} times in the plan; a part has one place. Delete all but one.", nameof(circuit));
        var drawn = cells.Where(c => c.Kind == PlanKind.Part).Select(c => c.Name).ToHashSet();
        var missing = circuit.Elements.Where(e => SymbolTable.Of(e) is not null && !drawn.Contains(e.Name)).Select(e => e.Name).ToArray();
        if (cells.Count == 0)
            throw new ArgumentException("The circuit has no plan, so nothing says where its parts stand. Write one: c.Plan(\"\"\" … \"\"\"), a grid of its parts' names.", nameof(circuit));
        if (missing.Length > 0)
            throw new ArgumentException($"The plan leaves out {string.Join(", ", missing)}. Every part of the circuit needs a place in it; write the name where the part shall stand.", nameof(circuit));
    }
}
