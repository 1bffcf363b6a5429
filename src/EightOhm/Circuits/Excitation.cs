namespace EightOhm.Circuits;

/// <summary>Where a signal comes in: the circuit with its source, and what stands on the right of the equations for a signal of one volt, or one ampere.</summary>
internal sealed record Excitation(Circuit Circuit, LinearSystem System, IReadOnlyList<(int Row, double G, double C)> Drive, bool IsCurrent)
{
    /// <summary>A signal at a source or at a node, where an ideal voltage source is put when none is there.</summary>
    /// <exception cref="ArgumentException">There is no such source or node.</exception>
    public static Excitation At(Circuit circuit, string from, double kelvin, string parameter = "from")
    {
        ArgumentNullException.ThrowIfNull(from, parameter);
        var ready = circuit.Ready();
        var source = ready.HasElement(from) && IsSource(ready[from]) ? ready[from] : SourceAt(ready, ready.Node(from, parameter));
        if (source is null)
        {
            var node = ready.Node(from, parameter);
            if (node == Circuit.Ground)
                throw new ArgumentException("Ground is no place for a signal: name another node or a source.", parameter);
            (ready, source) = ready.WithSource(node);
        }

        Connections.Refuse(ready, dc: false);
        var system = SmallSignalSystem.Of(ready, kelvin);
        if (source.Kind == ElementKind.CurrentSource)
            return new(ready, system, [.. new[] { (system.Nodes[source.Terminals[0].Node], -1.0, 0.0), (system.Nodes[source.Terminals[1].Node], 1.0, 0.0) }.Where(d => d.Item1 >= 0)], true);
        // A source that stands on its head drives its node the other way.
        var sign = source.Terminals[1].Node == from && source.Name != from ? -1 : 1;
        return new(ready, system, [(system.Branches[source.Name], sign, 0)], false);
    }

    /// <summary>The voltage source from a node to ground; null where there is none.</summary>
    public static Element? SourceAt(Circuit circuit, string node) => circuit.Elements.FirstOrDefault(e =>
        e.Kind is ElementKind.VoltageSource or ElementKind.Rail && e.Terminals.Any(t => t.Node == node) && e.Terminals.Any(t => t.Node == Circuit.Ground) && node != Circuit.Ground);

    /// <summary>An output: the voltage of a node against another.</summary>
    /// <exception cref="ArgumentException">There is no such node, or both are the same.</exception>
    public IReadOnlyList<(int Col, double Sign)> Watch(string to, string minus)
    {
        string plus = Circuit.Node(to, nameof(to)), other = Circuit.Node(minus, nameof(minus));
        if (plus == other)
            throw new ArgumentException($"The voltage of \"{plus}\" against itself is always zero: name two nodes.", nameof(to));
        return [.. new[] { (System.Nodes[plus], 1.0), (System.Nodes[other], -1.0) }.Where(c => c.Item1 >= 0)];
    }

    private static bool IsSource(Element e) => e.Kind is ElementKind.VoltageSource or ElementKind.CurrentSource or ElementKind.Rail;
}
