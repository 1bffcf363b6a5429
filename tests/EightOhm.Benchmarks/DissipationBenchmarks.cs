using BenchmarkDotNet.Attributes;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>One search for the sine of maximum dissipation of an output stage.</summary>
[MemoryDiagnoser]
public class DissipationBenchmarks
{
    private static readonly RailLine Line = new DualRailSupply(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF) { DiodeResistance = 20.mOhm }.Line().OfOne(2, 50.mA);
    private readonly StageDissipation _classB = new(46.V, 3, 0.22.Ohm);
    private readonly StageDissipation _sagging = new(Line, 3, 0.22.Ohm);
    private readonly StageDissipation _biased = new(Line, 3, 0.22.Ohm) { IdleCurrent = 103.8.mA };
    private readonly ElectricResistance _Z = 4.Ohm;
    private readonly Angle _phi = 45.deg;

    [Benchmark]
    public StagePowers Class_B_on_a_stiff_rail() => _classB.Maximum(_Z, _phi);

    [Benchmark]
    public StagePowers Class_B_on_a_sagging_rail() => _sagging.Maximum(_Z, _phi);

    [Benchmark]
    public StagePowers Class_AB_on_a_sagging_rail() => _biased.Maximum(_Z, _phi);

    [Benchmark]
    public StagePowers Class_AB_at_one_level() => _biased.At(30.V, _Z, _phi);

    [Benchmark]
    public PeakDissipation Peak_of_a_side_in_class_AB() => _biased.Peak(_Z, _phi);

    [Benchmark]
    public NoisePowers Noise_in_class_AB() => _biased.Noise(22.5.W, _Z, _phi);
}
