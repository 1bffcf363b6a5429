using BenchmarkDotNet.Attributes;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Benchmarks;

/// <summary>The search for the worst over conditions on a figure that costs next to nothing: what the search itself takes.</summary>
[MemoryDiagnoser]
public class WorstBenchmarks
{
    private readonly Conditions _five = new Conditions().Range("x_mains", (-10).percent, 10.percent, "mains").Cases("Z_L", 8.Ohm, 4.Ohm)
        .Range("phi", 0.deg, 45.deg).Range("T_a", 10.degC, 35.degC).Range("m", 0.percent, 100.percent);

    private readonly Conditions _eight = new Conditions().Range("x_mains", (-10).percent, 10.percent, "mains").Cases("Z_L", 8.Ohm, 4.Ohm)
        .Range("phi", 0.deg, 45.deg).Range("T_a", 10.degC, 35.degC).Range("m", 0.percent, 100.percent)
        .Spread("R_E", 5.percent).Spread("theta", 10.percent).Spread("V_BE", 3.percent);

    [Benchmark]
    public WorstCase One_range() => _five.Highest((Ratio m) => m.DecimalFractions * (1.3 - m.DecimalFractions));

    [Benchmark]
    public WorstCase Five_conditions_by_every_combination() =>
        _five.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m) => Figure(x_mains, Z_L, phi, T_a, m));

    [Benchmark]
    public WorstCase Eight_conditions_by_search() =>
        _eight.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m, double R_E, double theta, double V_BE) => Figure(x_mains, Z_L, phi, T_a, m) * theta / (R_E * V_BE));

    private static double Figure(Ratio x, ElectricResistance Z, Angle phi, Temperature T, Ratio m)
    {
        var v = 1 + x.DecimalFractions;
        var level = m.DecimalFractions;
        return T.DegreesCelsius + (400 * v * v / Z.Ohms * level * (1.3 - (level * Math.Cos(phi.Radians))));
    }
}
