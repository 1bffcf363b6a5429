namespace EightOhm.Display.Schematics;

/// <summary>What a drawing says besides names and values: currents and voltages of an operating point, or the share that each element has in a sum.</summary>
/// <remarks>Keys are names of elements or nodes; an element's words stand beside it, a node's voltage beside its wire.</remarks>
public sealed record Annotations
{
    /// <summary>Nothing besides names and values.</summary>
    public static Annotations None { get; } = new();

    /// <summary>Words beside an element or a node, such as "2.00 mA".</summary>
    public IReadOnlyDictionary<string, string> Words { get; init; } = new Dictionary<string, string>();

    /// <summary>The share of an element, 0 to 1, drawn as a bar beneath its name and said in percent.</summary>
    public IReadOnlyDictionary<string, double> Shares { get; init; } = new Dictionary<string, double>();
}
