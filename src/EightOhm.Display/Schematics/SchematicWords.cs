using EightOhm.Circuits;

namespace EightOhm.Display.Schematics;

/// <summary>A drawing in words: its parts, and which nodes they join.</summary>
internal static class SchematicWords
{
    /// <summary>A line for each element.</summary>
    public static IEnumerable<string> Lines(Circuit circuit, Annotations notes) => circuit.Elements.Select(e => Line(e, notes))
        .Concat(circuit.Nodes.Where(n => notes.At(n) is not null && !circuit.Rails.Contains(n)).Select(n => $"node {n}, {notes.At(n)}"));

    /// <summary>All of it as one text.</summary>
    public static string Describe(Circuit circuit, string title, Annotations notes) =>
        $"{(title.Length > 0 ? title + ". " : "")}Schematic: {string.Join("; ", Lines(circuit, notes))}.";

    private static string Line(Element element, Annotations notes)
    {
        var what = $"{Kind(element)} {element.Name}{(Value(element, notes) is { Length: > 0 } value ? $" ({value})" : "")}";
        var where = element.Kind switch
        {
            ElementKind.Coupling => $" between {string.Join(" and ", element.Refers)}",
            ElementKind.Rail => "",
            _ when element.Terminals.Count == 1 => $" at {Node(element.Terminals[0].Node)}",
            ElementKind.Block or ElementKind.Amplifier or ElementKind.Delay => $" from {Node(element.Terminals[0].Node)} to {Node(element.Terminals[1].Node)}",
            _ when element.Terminals.Count == 2 => $" from {Node(element.Terminals[0].Node)} to {Node(element.Terminals[1].Node)}",
            _ => $": {string.Join(", ", element.Terminals.Select(t => $"{Pole(element.Kind, t.Name)} at {Node(t.Node)}"))}",
        };
        var rail = element.Kind == ElementKind.Rail && notes.At(element.Name) is { } voltage ? [voltage] : Array.Empty<string>();
        return what + where + string.Concat(notes.Beside(element.Name).Concat(rail).Where(n => n != Value(element, notes)).Select(n => $", {n}"));
    }

    /// <summary>The value to be said; a current that was found takes the place of the one at which a device was said to stand.</summary>
    /// <param name="element">The element.</param>
    /// <param name="notes">What is said besides.</param>
    public static string Value(Element element, Annotations notes) =>
        (element.Bias is not null && notes.Currents.ContainsKey(element.Name)) || (!notes.Values && element.Text.Length == 0) ? "" : DrawnText.Value(element);

    private static string Node(string node) => node == Circuit.Ground ? "ground" : node;

    private static string Kind(Element element) => element.Kind switch
    {
        ElementKind.Npn => "npn transistor",
        ElementKind.Pnp => "pnp transistor",
        ElementKind.Nmos => "n-channel MOSFET",
        ElementKind.Pmos => "p-channel MOSFET",
        ElementKind.Njfet => "n-channel JFET",
        ElementKind.Pjfet => "p-channel JFET",
        ElementKind.OpAmp => "op-amp",
        ElementKind.Zener => "Zener diode",
        ElementKind.ThermalPath => "thermal resistance",
        _ => Spoken(element.Kind),
    };

    // BridgeRectifier: bridge rectifier.
    private static string Spoken(ElementKind kind) =>
        string.Concat(kind.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));

    private static string Pole(ElementKind kind, string terminal) => (kind, terminal) switch
    {
        (ElementKind.Npn or ElementKind.Pnp, "c") => "collector",
        (ElementKind.Npn or ElementKind.Pnp, "b") => "base",
        (ElementKind.Npn or ElementKind.Pnp, "e") => "emitter",
        (_, "d") => "drain",
        (_, "g") => "gate",
        (_, "s") => "source",
        (_, "out") => "output",
        _ => terminal,
    };
}
