using EightOhm.Numerics;

namespace EightOhm.Thermal;

/// <summary>A network's modes stepped through time: exact for heat that is constant between the instants of its steps.</summary>
internal static class NetworkSteps
{
    public static ThermalTransient Run(ThermalNetwork network, NetworkModes modes, double[] times, IReadOnlyList<HeatProfile> heats, NodeTemperatures? start)
    {
        foreach (var heat in heats)
            if (network.Place(heat.Node) < 0)
                throw new ArgumentException("Heat into the ambient warms nothing: give it to a node.", nameof(heats));
        if (start is not null && (start.Network != network || start.Rises.Length != network.Nodes.Count))
            throw new ArgumentException("The temperatures at the start must be of this network, with all its nodes.", nameof(start));
        var rises = new double[network.Nodes.Count][];
        for (var i = 0; i < rises.Length; i++)
            rises[i] = new double[times.Length];
        var state = Start(network, modes, start);
        var breaks = heats.SelectMany(h => h.Times).Distinct().Order().ToArray();
        double now = 0;
        var next = 0;
        for (var k = 0; k < times.Length; k++)
        {
            Work.Checkpoint();
            while (next < breaks.Length && breaks[next] < times[k])
            {
                Advance(modes, state, heats, now, breaks[next]);
                now = Math.Max(now, breaks[next++]);
            }

            Advance(modes, state, heats, now, times[k]);
            now = times[k];
            for (var i = 0; i < rises.Length; i++)
                rises[i][k] = At(modes, state, i);
        }

        return new ThermalTransient(network, times, rises);
    }

    /// <summary>The modes' amplitudes for given temperatures.</summary>
    public static double[] Start(ThermalNetwork network, NetworkModes modes, NodeTemperatures? start)
    {
        var state = new double[modes.Rates.Length];
        if (start is null)
            return state;
        for (var m = 0; m < state.Length; m++)
            for (var i = 0; i < state.Length; i++)
                state[m] += modes.Shapes[i][m] * network.Nodes[i].Capacity.Si * start.Rises[i];
        return state;
    }

    public static double At(NetworkModes modes, double[] state, int node)
    {
        var shape = modes.Shapes[node];
        var rise = 0.0;
        for (var m = 0; m < state.Length; m++)
            rise += shape[m] * state[m];
        return rise;
    }

    private static void Advance(NetworkModes modes, double[] state, IReadOnlyList<HeatProfile> heats, double from, double to)
    {
        var h = to - from;
        if (!(h > 0))
            return;
        for (var m = 0; m < state.Length; m++)
        {
            var drive = 0.0;
            for (var i = 0; i < heats.Count; i++)
                drive += modes.Shapes[heats[i].Node.Index][m] * heats[i].At(from);
            var gone = Decay.Gone(modes.Rates[m] * h);
            state[m] += gone * ((drive / modes.Rates[m]) - state[m]);
        }
    }
}
