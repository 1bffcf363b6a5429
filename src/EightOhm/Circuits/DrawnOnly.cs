namespace EightOhm.Circuits;

/// <summary>Refuses to solve what is only drawn.</summary>
internal static class DrawnOnly
{
    /// <exception cref="InvalidOperationException">The circuit is empty or holds something that is only drawn.</exception>
    public static void Refuse(Circuit circuit)
    {
        if (circuit.Elements.Count == 0)
            throw new InvalidOperationException("The circuit is empty: put in elements first, for example c.Resistor(\"R1\", \"in\", \"out\", 1.kOhm).");
        var drawn = circuit.Elements.Where(e => !e.IsSolved && e.Kind is not (ElementKind.Jack or ElementKind.Terminal)).Select(e => e.Name).ToList();
        if (drawn.Count > 0)
            throw new InvalidOperationException($"{Lists.And(drawn)} {(drawn.Count == 1 ? "is" : "are")} drawn and not solved. Put in resistors, sources and devices that do the same for small signals, or leave {(drawn.Count == 1 ? "it" : "them")} out.");
    }
}
