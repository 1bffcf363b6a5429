using BenchmarkDotNet.Attributes;
using EightOhm.Explaining;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Benchmarks;

/// <summary>What it costs that a formula can be shown: a call beside the same body without the attribute, and a showing.</summary>
[MemoryDiagnoser]
public class FormulaBenchmarks
{
    private readonly ElectricResistance _r = 1.kOhm;
    private readonly Temperature _t = 25.degC;

    [Benchmark(Baseline = true)]
    public VoltageNoiseDensity Plain_method() => Plain(_r, _t);

    [Benchmark]
    public VoltageNoiseDensity Formula() => ThermalNoise.VoltageDensity(_r, _t);

    [Benchmark]
    public Explanation Explain()
    {
        ElectricResistance R = _r;
        Temperature T = _t;
        return Workings.Explain(() => ThermalNoise.VoltageDensity(R, T));
    }

    private static VoltageNoiseDensity Plain(ElectricResistance R, Temperature T)
    {
        Guard.NotNegative(R);
        Guard.Positive(T);
        var e_squared = 4 * k * T * R;
        return Sqrt(e_squared);
    }
}
