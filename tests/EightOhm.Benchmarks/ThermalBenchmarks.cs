using BenchmarkDotNet.Attributes;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>The periodic junction, a network over ten minutes, the idle current over ten minutes, a plate-fin sink.</summary>
[MemoryDiagnoser]
public class ThermalBenchmarks
{
    private readonly FosterImpedance _device = new((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms), (0.33.K_per_W, 70.ms), (0.25.K_per_W, 500.ms));
    private readonly PeriodicHeat _sine = new StageDissipation(46.V, 3, 0.Ohm).OverPeriod(29.28.V, 4.Ohm, 0.deg, 20.Hz);
    private readonly PlateFinSink _sink = new PlateFinSink { Width = 300.mm, Height = 100.mm, FinLength = 40.mm, Thickness = 2.mm, Fins = 24, Emissivity = 0.85 };
    private readonly ThermalNetwork _net = new(35.degC);
    private readonly BiasTracking _tracking;
    private readonly HeatProfile[] _music;

    public ThermalBenchmarks()
    {
        var sink = _net.Node("sink", 1250.J_per_K);
        var sensor = _net.Node("sensor", 3.J_per_K);
        _net.Link(sink, _net.Ambient, 0.40.K_per_W);
        _net.Link(sensor, sink, 2.K_per_W);
        var junctions = Enumerable.Range(1, 6).Select(i =>
        {
            HeatNode junction = _net.Node($"junction {i}", 0.05.J_per_K), housing = _net.Node($"case {i}", 6.J_per_K);
            _net.Link(junction, housing, 0.83.K_per_W);
            _net.Link(housing, sink, 0.35.K_per_W);
            return junction;
        }).ToArray();
        _tracking = new BiasTracking(_net, junctions, new BiasSensor(sensor, 2.1.mV_per_K), 46.V, 103.8.mA, 0.2725.Ohm, 2.1.mV_per_K);
        _music = [.. junctions.Select(j => HeatProfile.Burst(j, 18.W, 60.s, 180.s, rest: 5.W))];
    }

    [Benchmark]
    public JunctionRise Junction_under_a_sine_of_2000_samples() => _device.Under(_sine);

    [Benchmark]
    public ThermalTransient Network_of_14_nodes_at_400_instants() => _net.Transient(600.s, _music);

    [Benchmark]
    public BiasOverTime Idle_current_of_six_transistors_over_ten_minutes() => _tracking.Follow(600.s, _music);

    [Benchmark]
    public CauerLadder Ladder_of_four_terms() => _device.ToLadder();

    [Benchmark]
    public SinkAtHeat Plate_fin_sink() => _sink.At(80.W, 35.degC);
}
