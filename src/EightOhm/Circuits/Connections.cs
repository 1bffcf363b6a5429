namespace EightOhm.Circuits;

/// <summary>What hangs in the air and what goes round in a ring: found from how the elements are connected, before any number is computed.</summary>
internal static class Connections
{
    /// <summary>Refuses a circuit whose equations have no one solution because of how it is connected.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="dc">Whether capacitors are open and inductors are wires.</param>
    /// <exception cref="InvalidOperationException">It is empty or holds what is only drawn; a ring of voltage sources, or nodes without a path to ground; they are named.</exception>
    public static void Refuse(Circuit circuit, bool dc)
    {
        DrawnOnly.Refuse(circuit);
        Rings(circuit, dc);
        Floating(circuit, dc);
    }

    private static void Rings(Circuit circuit, bool dc)
    {
        Dictionary<string, List<(string To, string By)>> edges = new(StringComparer.Ordinal);
        foreach (var e in circuit.Elements)
        {
            if (Held(e, dc) is not var (a, b))
                continue;
            if (Way(edges, a, b) is { } way)
                throw new InvalidOperationException($"{Lists.And([.. way, e.Name])} hold voltages in a ring{(dc ? " (for dc an inductor is a wire)" : "")}: their currents have no one answer. Put a resistor into the ring, or leave one of them out.");
            (edges.TryGetValue(a, out var from) ? from : edges[a] = []).Add((b, e.Name));
            (edges.TryGetValue(b, out var to) ? to : edges[b] = []).Add((a, e.Name));
        }
    }

    private static (string A, string B)? Held(Element e, bool dc) => e.Kind switch
    {
        ElementKind.VoltageSource or ElementKind.Rail or ElementKind.VoltageControlledVoltage or ElementKind.CurrentControlledVoltage => (e.Terminals[0].Node, e.Terminals[1].Node),
        ElementKind.Inductor when dc => (e.Terminals[0].Node, e.Terminals[1].Node),
        ElementKind.OpAmp when ((OpAmpModel)e.Model!).OutputResistance.Ohms == 0 => (e["out"], Circuit.Ground),
        ElementKind.Delay => (e["out"], Circuit.Ground),
        _ => null,
    };

    // The names on the way from one node to another; null where there is none.
    private static List<string>? Way(Dictionary<string, List<(string To, string By)>> edges, string from, string to)
    {
        var came = new Dictionary<string, (string From, string By)>(StringComparer.Ordinal) { [from] = ("", "") };
        var queue = new Queue<string>([from]);
        while (queue.TryDequeue(out var node))
        {
            if (node == to)
            {
                List<string> way = [];
                for (var at = to; at != from; at = came[at].From)
                    way.Add(came[at].By);
                way.Reverse();
                return way;
            }

            foreach (var (next, by) in edges.GetValueOrDefault(node) ?? [])
                if (came.TryAdd(next, (node, by)))
                    queue.Enqueue(next);
        }

        return null;
    }

    private static void Floating(Circuit circuit, bool dc)
    {
        var groups = new Groups();
        foreach (var e in circuit.Elements)
            foreach (var (a, b) in Paths(e, dc))
                groups.Join(a, b);
        var floating = circuit.Nodes.Where(n => !groups.Together(n, Circuit.Ground)).ToList();
        if (floating.Count == 0)
            return;
        // A controlled current from elsewhere can set a node's voltage through the rest of the circuit: then the numbers decide.
        foreach (var island in floating.GroupBy(groups.Of))
        {
            if (Driven(circuit, island.ToHashSet(StringComparer.Ordinal)))
                continue;
            var nodes = island.Select(n => $"\"{n}\"").ToList();
            throw new InvalidOperationException(nodes.Count == 1
                ? $"Node {nodes[0]} has no {(dc ? "dc " : "")}path to ground{Only(circuit, island.First(), dc)}: its voltage has no one answer. {Remedy(dc)}"
                : $"Nodes {Lists.And(nodes)} hang together, but have no {(dc ? "dc " : "")}path to ground: their voltages have no one answer. {Remedy(dc)}");
        }
    }

    private static string Only(Circuit circuit, string node, bool dc)
    {
        var on = circuit.Elements.Where(e => e.Terminals.Any(t => t.Node == node)).Select(e => e.Name).ToList();
        return on.Count == 0 ? "" : $" (only {Lists.And(on)} {(on.Count == 1 ? "is" : "are")} on it{(dc && on.Any(n => circuit[n].Kind == ElementKind.Capacitor) ? ", and a capacitor carries no dc" : "")})";
    }

    private static string Remedy(bool dc) => dc ? "Put a resistor or a source from there to ground." : "Connect it to the rest, or put a resistor from there to ground.";

    private static bool Driven(Circuit circuit, HashSet<string> island)
    {
        bool Crosses(Element e, int a, int b) => island.Contains(e.Terminals[a].Node) != island.Contains(e.Terminals[b].Node);
        return circuit.Elements.Any(e => e.Kind switch
        {
            ElementKind.VoltageControlledCurrent or ElementKind.CurrentControlledCurrent => Crosses(e, 0, 1),
            ElementKind.Npn or ElementKind.Pnp or ElementKind.Nmos or ElementKind.Pmos or ElementKind.Njfet or ElementKind.Pjfet => Crosses(e, 0, 2),
            _ => false,
        });
    }

    /// <summary>The nodes between which an element lets current pass by itself.</summary>
    private static IEnumerable<(string A, string B)> Paths(Element e, bool dc)
    {
        switch (e.Kind)
        {
            case ElementKind.Resistor or ElementKind.Inductor or ElementKind.VoltageSource or ElementKind.Rail or ElementKind.Diode
                or ElementKind.VoltageControlledVoltage or ElementKind.CurrentControlledVoltage:
            case ElementKind.Capacitor when !dc:
                yield return (e.Terminals[0].Node, e.Terminals[1].Node);
                break;
            case ElementKind.OpAmp:
                yield return (e["out"], Circuit.Ground);
                if (((OpAmpModel)e.Model!).InputResistance is not null)
                    yield return (e["plus"], e["minus"]);
                break;
            case ElementKind.Delay:
                yield return (e["out"], Circuit.Ground);
                break;
            case ElementKind.Npn or ElementKind.Pnp:
                var model = (BipolarModel)e.Model!;
                yield return (e["b"], e["e"]);
                if (dc || model.EarlyVoltage is not null)
                    yield return (e["c"], e["e"]);
                if (!dc && model.CollectorCapacitance.Farads > 0)
                    yield return (e["c"], e["b"]);
                break;
            case ElementKind.Nmos or ElementKind.Pmos or ElementKind.Njfet or ElementKind.Pjfet:
                var fet = (FetModel)e.Model!;
                if (fet.OutputResistance is not null)
                    yield return (e["d"], e["s"]);
                if (!dc && fet.GateSourceCapacitance.Farads > 0)
                    yield return (e["g"], e["s"]);
                if (!dc && fet.GateDrainCapacitance.Farads > 0)
                    yield return (e["g"], e["d"]);
                break;
        }
    }

    private sealed class Groups
    {
        private readonly Dictionary<string, string> above = new(StringComparer.Ordinal);

        public string Of(string node)
        {
            while (above.TryGetValue(node, out var up))
                node = up;
            return node;
        }

        public void Join(string a, string b)
        {
            string x = Of(a), y = Of(b);
            if (x != y)
                above[x] = y;
        }

        public bool Together(string a, string b) => Of(a) == Of(b);
    }
}
