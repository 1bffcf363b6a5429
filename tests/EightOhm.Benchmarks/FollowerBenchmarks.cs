using BenchmarkDotNet.Attributes;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>Harmonics of a class-AB pair over 200 bias voltages, 4096 samples of a sine of 10 V peak into 8 Ω: the library's own sweep, nothing made for this case.</summary>
/// <remarks>
/// The same work in numpy 1.24 (Newton on arrays, started from the last bias, one thread): 35.7 ms; as one array of 200 by 4096: 131 ms. Here, on the same
/// two-core machine with AVX2: 5.6 ms, 6.3 times faster (the least of many runs each; while others kept that machine busy, 21 ms against 128 ms by the
/// mean). The first call of a process takes 37 ms of processor time, most of it compiling. Both agree to all twelve digits of the checksum 379.710061910 (the sum of the 200 distortions times 1000), least at bias 122,
/// 204.152978883 ppm. Where the time is saved: vectors of four with the runtime's own exponential; a start along the slopes of the last two biases; each
/// vector iterates only as long as it needs; and the second half of each period is the first one backwards, so only half is solved.
/// </remarks>
public class FollowerBenchmarks
{
    private static readonly ElectricPotential Peak = 10.V;

    private readonly EmitterFollowerStage one = new(8.Ohm, 1, 0.22.Ohm)
    {
        Device = new() { SaturationCurrent = 100.pA, Junction = Temperature.FromKelvins(299.979) },
        Complement = new() { SaturationCurrent = 130.pA, Junction = Temperature.FromKelvins(299.979) },
    };

    private readonly EmitterFollowerStage three = new(8.Ohm, 3, 0.22.Ohm)
    {
        Device = new() { CurrentGain = 100, KneeCurrent = 5.A, InternalResistance = 52.5.mOhm, Junction = 55.degC },
        Drivers = new(47.Ohm) { Device = new() { CurrentGain = 100, KneeCurrent = 1.A } },
        PreDrivers = new(150.Ohm) { Device = new() { CurrentGain = 150 } },
        Source = 1.kOhm,
    };

    private readonly ElectricPotential[] biases = [.. Enumerable.Range(0, 200).Select(k => ElectricPotential.FromVolts(0.90 + (0.35 * k / 199)))];

    private readonly ElectricCurrent[] idle = [.. Enumerable.Range(0, 200).Select(k => ElectricCurrent.FromAmperes(0.01 * Math.Pow(50, k / 199.0)))];

    [Benchmark(Baseline = true)]
    public DistortionOverBias Pairs_over_200_bias_voltages() => one.DistortionDriven(biases, Peak);

    [Benchmark]
    public DistortionOverBias Three_stages_with_droop_over_200_idle_currents() => three.DistortionAt(idle, Peak);

    [Benchmark]
    public BiasChoice Least_distortion() => three.LeastDistortionBias(Peak);

    [Benchmark]
    public IReadOnlyList<GainCurve> Gain_family_of_nine() => three.GainFamily([.. idle.Where((_, k) => k % 25 == 0)], Peak);
}
