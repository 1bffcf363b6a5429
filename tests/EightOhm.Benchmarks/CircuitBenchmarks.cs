using BenchmarkDotNet.Attributes;
using EightOhm.Circuits;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>Small-signal answers of circuits of N unknowns at 1000 frequencies, from the circuit to the answer: writing the equations and finding the order of elimination are in it.</summary>
/// <remarks>
/// The hard case is a resistor and a capacitor from each node to each other: a full matrix. Circuits that are built have a handful of entries in a row. The same work in numpy
/// (tests/references/circuit_speed.py: batched solutions of full matrices, which knows no zeros, the matrices given) is in docs/speed.md.
/// </remarks>
public class CircuitBenchmarks
{
    private static readonly Frequency[] Frequencies = [.. Enumerable.Range(0, 1000).Select(k => Frequency.FromHertz(Math.Pow(10, 8.0 * k / 999)))];

    private Circuit full = new(), ladder = new();

    /// <summary>How many unknowns.</summary>
    [Params(7, 24, 25, 40)]
    public int N { get; set; }

    [GlobalSetup]
    public void Build()
    {
        full = new Circuit();
        full.VoltageSource("V1", "n1");
        ladder = new Circuit();
        ladder.VoltageSource("V1", "n1");
        for (var i = 1; i < N; i++)
        {
            for (var j = 0; j < i; j++)
            {
                full.Resistor($"R{i},{j}", $"n{i}", Node(j), ElectricResistance.FromOhms(1e3 + (7 * i) + j));
                full.Capacitor($"C{i},{j}", $"n{i}", Node(j), ElectricCapacitance.FromPicofarads(10 + i + (3 * j)));
            }

            ladder.Capacitor($"C{i}", $"n{i}", "0", 100.pF);
            if (i > 1)
                ladder.Resistor($"R{i}", $"n{i - 1}", $"n{i}", 1.kOhm);
        }
    }

    [Benchmark]
    public Response<Gain> Full_matrix() => full.Response("n1", $"n{N - 1}", Frequencies);

    [Benchmark]
    public CircuitNoise Full_matrix_noise() => full.Noise($"n{N - 1}", "n1", Frequencies);

    [Benchmark]
    public Response<Gain> Ladder() => ladder.Response("n1", $"n{N - 1}", Frequencies);

    [Benchmark]
    public CircuitNoise Ladder_noise() => ladder.Noise($"n{N - 1}", "n1", Frequencies);

    private static string Node(int i) => i == 0 ? Circuit.Ground : $"n{i}";
}
