using System.Diagnostics;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Circuits;

/// <summary>A circuit by the names of its elements and nodes: one description that is drawn and solved.</summary>
/// <remarks>Node "0" is ground; "ground" is the same node. Names tell upper and lower case apart. The order in which elements are put in decides nothing but lists.</remarks>
/// <example><code>var c = new Circuit();
/// c.VoltageSource("V1", "in", "0");  c.Resistor("R1", "in", "out", 1.kOhm);  c.Capacitor("C1", "out", "0", 10.nF);
/// c.Response("in", "out")</code></example>
[DebuggerDisplay("{ToString(),nq}")]
public sealed partial class Circuit
{
    /// <summary>The name of the ground node.</summary>
    public const string Ground = "0";

    private readonly List<Element> elements = [];
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly List<string> nodes = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal) { Ground };

    /// <summary>The elements, in the order in which they were put in.</summary>
    public IReadOnlyList<Element> Elements => elements;

    /// <summary>The nodes other than ground, in the order in which they were first named.</summary>
    public IReadOnlyList<string> Nodes => nodes;

    /// <summary>The nodes that are supply rails.</summary>
    public IReadOnlyList<string> Rails => [.. elements.Where(e => e.Kind == ElementKind.Rail).Select(e => e.Name)];

    /// <summary>The plan of the drawing as it was written; null where there is none.</summary>
    public string? PlanText { get; private set; }

    /// <summary>An element by its name.</summary>
    /// <param name="name">The name.</param>
    /// <exception cref="ArgumentException">There is none; the nearest name is offered.</exception>
    public Element this[string name] => elements[Place(name)];

    /// <summary>Keeps the plan of the drawing: a grid of names in columns, separated by blanks.</summary>
    /// <remarks>It is read when the circuit is drawn.</remarks>
    /// <param name="text">The grid.</param>
    /// <returns>The circuit.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public Circuit Plan(string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        PlanText = text;
        return this;
    }

    /// <summary>The circuit with another value of one element; this one stays as it is.</summary>
    /// <param name="name">The element.</param>
    /// <param name="value">Its new value, of the kind of the old one.</param>
    /// <returns>A new circuit.</returns>
    /// <exception cref="ArgumentException">There is no such element, or its value is of another kind.</exception>
    /// <example><code>c.With("R1", 2.2.kOhm)</code></example>
    public Circuit With(string name, object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var old = this[name];
        if (old.Value is null || value.GetType() != old.Value.GetType())
            throw new ArgumentException(old.Value is null ? $"{name} has no value to change." : $"The value of {name} is like {QuantityFormat.Short(old.Value)}, not of the kind of {QuantityFormat.Short(value)}.", nameof(value));
        ElementValues.Check(old.Kind, name, value);
        return Changed(place => place == places[name] ? elements[place].With(value) : elements[place]);
    }

    /// <summary>"circuit of 12 elements on 7 nodes".</summary>
    public override string ToString() => $"circuit of {elements.Count} element{(elements.Count == 1 ? "" : "s")} on {nodes.Count} node{(nodes.Count == 1 ? "" : "s")} and ground";

    /// <summary>A circuit of the same nodes with some elements changed.</summary>
    internal Circuit Changed(Func<int, Element> element)
    {
        var copy = new Circuit { PlanText = PlanText };
        for (var i = 0; i < elements.Count; i++)
            copy.Put(element(i));
        return copy;
    }

    /// <summary>The place of an element in <see cref="Elements"/>.</summary>
    internal int Place(string name, string parameter = "name")
    {
        ArgumentNullException.ThrowIfNull(name);
        return places.TryGetValue(name, out var place)
            ? place
            : throw new ArgumentException($"The circuit has no element \"{name}\".{Near(name, places.Keys)}", parameter);
    }

    /// <summary>A node by its name, ground by either of its names.</summary>
    internal string Node(string name, string parameter)
    {
        ArgumentNullException.ThrowIfNull(name);
        var node = Canonical(name);
        return known.Contains(node)
            ? node
            : throw new ArgumentException($"The circuit has no node \"{name}\".{Near(name, nodes)}", parameter);
    }

    internal bool HasElement(string name) => places.ContainsKey(name);

    internal bool HasNode(string name) => known.Contains(Canonical(name));

    private static string Near(string name, IEnumerable<string> names) => NearestName.Of(name, names) is { } near ? $" Did you mean \"{near}\"?" : "";

    private static string Canonical(string node) => node == "ground" ? Ground : node;

    private Element Add(ElementKind kind, string name, object? value, params ReadOnlySpan<Terminal> terminals) => Add(new Element(kind, name, Checked(name, terminals), value));

    private Element Add(Element element)
    {
        if (element.Value is { } value)
            ElementValues.Check(element.Kind, element.Name, value);
        return Put(element);
    }

    private Element Put(Element element)
    {
        ready = null;
        places.Add(element.Name, elements.Count);
        elements.Add(element);
        foreach (var terminal in element.Terminals)
            if (known.Add(terminal.Node))
                nodes.Add(terminal.Node);
        return element;
    }

    private Terminal[] Checked(string name, params ReadOnlySpan<Terminal> terminals)
    {
        Word(name, "element", nameof(name));
        if (places.TryGetValue(name, out var taken))
            throw new ArgumentException($"The circuit has a \"{name}\" already, {elements[taken]}. Give each element a name of its own.", nameof(name));
        var made = new Terminal[terminals.Length];
        for (var i = 0; i < made.Length; i++)
        {
            Word(terminals[i].Node, $"node of {name}", terminals[i].Name);
            made[i] = terminals[i] with { Node = Canonical(terminals[i].Node) };
        }

        if (made.Length == 2 && made[0].Node == made[1].Node)
            throw new ArgumentException($"Both ends of {name} are on node \"{made[0].Node}\": it would do nothing. Give it two nodes, or leave it out.", made[1].Name);
        return made;
    }

    // A plan is a grid of names between blanks, with "." where nothing stands.
    private static void Word(string name, string what, string parameter)
    {
        ArgumentNullException.ThrowIfNull(name, parameter);
        if (name.Length == 0 || name == "." || name.Any(char.IsWhiteSpace))
            throw new ArgumentException($"The name of the {what} must be one word (was \"{name}\"), for example R1 or out.", parameter);
    }
}
