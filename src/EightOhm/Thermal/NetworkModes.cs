using EightOhm.Quantities;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>The modes of a network: each decays by itself, with its own time constant.</summary>
/// <remarks>With G the conductances and C the capacities, C^(−½)·G·C^(−½) is symmetric and positive. It is taken apart as M·Mᵀ, M having a
/// column for each link; the singular values of M are the roots of the decay rates, so a rate a million times slower than the
/// fastest keeps its digits, which it would not in the product.</remarks>
internal sealed class NetworkModes
{
    private NetworkModes(double[] rates, double[][] shapes) => (Rates, Shapes) = (rates, shapes);

    /// <summary>Decay rates, 1/s.</summary>
    public double[] Rates { get; }

    /// <summary>Of each node, its share in each mode, over the root of its capacity.</summary>
    public double[][] Shapes { get; }

    public static NetworkModes Of(ThermalNetwork network)
    {
        var n = network.Nodes.Count;
        if (n == 0)
            return new NetworkModes([], []);
        var roots = network.Nodes.Select(x => Math.Sqrt(x.Capacity.Si)).ToArray();
        var links = Matrix<double>.Build.Dense(n, network.Links.Count);
        for (var k = 0; k < network.Links.Count; k++)
        {
            var (a, b, r) = network.Links[k];
            if (a >= 0)
                links[a, k] = 1 / (Math.Sqrt(r) * roots[a]);
            if (b >= 0)
                links[b, k] = -1 / (Math.Sqrt(r) * roots[b]);
        }

        var taken = links.Svd();
        var rates = taken.S.Select(s => s * s).ToArray();
        var shapes = Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Select(m => taken.U[i, m] / roots[i]).ToArray()).ToArray();
        return new NetworkModes(rates, shapes);
    }

    public FosterImpedance Impedance(int node)
    {
        var shape = Shapes[node];
        var r = Rates.Select((rate, m) => shape[m] * shape[m] / rate).ToArray();
        // A mode that does not reach the node leaves only rounding there.
        var least = r.Sum() * 1e-14;
        return new FosterImpedance([.. Rates.Select((rate, m) => new FosterTerm(ThermalResistance.FromSi(r[m]), Duration.FromSeconds(1 / rate))).Where(t => t.R.Si > least).OrderBy(t => t.Tau.Seconds)]);
    }
}
