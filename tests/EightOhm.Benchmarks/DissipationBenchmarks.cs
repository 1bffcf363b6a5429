using BenchmarkDotNet.Attributes;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>One search for the worst case of an output stage.</summary>
[MemoryDiagnoser]
public class DissipationBenchmarks
{
    private readonly StageDissipation _classB = new(46.V, 3, 0.22.Ohm);
    private readonly StageDissipation _sagging = new StageDissipation(46.V, 3, 0.22.Ohm).WithRail(level => 50.V - (level * 0.07));
    private readonly StageDissipation _biased = new StageDissipation(46.V, 3, 0.22.Ohm) { Idle = 103.8.mA }.WithRail(level => 50.V - (level * 0.07));
    private readonly ElectricResistance _Z = 4.Ohm;
    private readonly Angle _phi = 45.deg;

    [Benchmark]
    public StagePowers Class_B_closed_form() => _classB.Worst(_Z, _phi);

    [Benchmark]
    public StagePowers Class_B_on_a_sagging_rail() => _sagging.Worst(_Z, _phi);

    [Benchmark]
    public StagePowers Class_AB_on_a_sagging_rail() => _biased.Worst(_Z, _phi);

    [Benchmark]
    public StagePowers Class_AB_at_one_level() => _biased.At(30.V, _Z, _phi);

    [Benchmark]
    public PeakDissipation Peak_of_a_side_in_class_AB() => _biased.Peak(_Z, _phi);

    [Benchmark]
    public NoisePowers Noise_in_class_AB() => _biased.Noise(22.5.W, _Z, _phi);
}
