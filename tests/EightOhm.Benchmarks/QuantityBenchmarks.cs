using BenchmarkDotNet.Attributes;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Benchmarks;

/// <summary>What units cost: a typed operation beside the same on raw doubles.</summary>
[MemoryDiagnoser]
public class QuantityBenchmarks
{
    private readonly Power _P = 100.W;
    private readonly ElectricResistance _R = 8.Ohm;
    private readonly ElectricPotential _V = 28.28.V;
    private readonly ElectricCurrent _I = 3.54.A;
    private readonly VoltageNoiseDensity _e = 3.3.nV_rtHz;
    private readonly Frequency _B = 20.kHz;
    private readonly double _p = 100, _r = 8, _v = 28.28, _i = 3.54, _d = 3.3e-9, _b = 20e3;

    [Benchmark]
    public ElectricPotential Sqrt_of_P_R() => Sqrt(_P * _R);

    [Benchmark]
    public double Sqrt_of_P_R_raw() => Math.Sqrt(_p * _r);

    [Benchmark]
    public Power V_times_I() => _V * _I;

    [Benchmark]
    public double V_times_I_raw() => _v * _i;

    [Benchmark]
    public ElectricPotential Density_times_root_bandwidth() => _e * Sqrt(_B);

    [Benchmark]
    public double Density_times_root_bandwidth_raw() => _d * Math.Sqrt(_b);

    [Benchmark]
    public string Face_of_a_voltage() => QuantityFormat.Short(_V);
}
