using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>The junction of a class-B stage over mains, load, phase, level and ambient: the search against every point of a fine grid.</summary>
public class JunctionWorstTests
{
    private static readonly Conditions Use = new Conditions().Range("x_mains", (-10).percent, 10.percent, "mains").Cases("Z_L", 8.Ohm, 4.Ohm)
        .Range("phi", 0.deg, 45.deg).Range("T_a", 10.degC, 35.degC, "ambient").Range("m", 5.percent, 100.percent, "level");

    private static Power Heat(Ratio x_mains, ElectricResistance Z_L, Angle phi, Ratio m)
    {
        var rail = 46.V * (1 + x_mains.DecimalFractions);
        return ClassB.Heat(rail, ClassB.FullSwing(rail, Z_L, phi, 0.22.Ohm, 3) * m.DecimalFractions, Z_L, phi, 0.22.Ohm, 3);
    }

    private static Temperature Junction(Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m)
    {
        var P = Heat(x_mains, Z_L, phi, m);
        return HeatPath.Junction(HeatPath.Junction(T_a, P, [0.40.K_per_W]), P / 6, [0.35.K_per_W, 0.83.K_per_W]);
    }

    [Fact]
    public void The_search_finds_what_every_point_of_a_fine_grid_finds()
    {
        var worst = Use.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m) => Junction(x_mains, Z_L, phi, T_a, m));
        // Heat rises with the ambient alone: the grid leaves it at its end.
        var most = 0.0;
        for (var x = -10.0; x <= 10; x += 2)
        {
            foreach (var Z in new[] { 4.Ohm, 8.Ohm })
            {
                for (var phi = 0.0; phi <= 45; phi += 1)
                {
                    for (var m = 5.0; m <= 100; m += 0.5)
                        most = Math.Max(most, Junction(x.percent, Z, phi.deg, 35.degC, m.percent).DegreesCelsius);
                }
            }
        }

        var found = (worst.Value!.Value).DegreesCelsius;
        Assert.True(found >= most - 1e-9, $"{found} < {most}");
        Assert.Equal(most, found, 0.01);
        Assert.Equal(WorstMethod.EveryCombination, worst.Method); // 3·2·3·3·3 = 162
        Assert.StartsWith("mains +10 %, 4 Ω ∠45°, ambient 35 °C, level ", worst.At, StringComparison.Ordinal);
    }

    // The naive worst, at 0° and nominal mains, is 2·V²/π² over the load and its resistor.
    [Fact]
    public void At_a_resistor_and_nominal_mains_it_is_the_textbooks()
    {
        var resistor = new Conditions().Range("m", 0.percent, 100.percent).Highest((Ratio m) => Heat(0.percent, 4.Ohm, 0.deg, m));
        Assert.Equal(2 * 46 * 46 / (Math.PI * Math.PI) / (4 + (0.22 / 3)), (double)(resistor.Value!.Value).Watts, 1e-4);
        var level = (Ratio)resistor.Where[0].Value!;
        Assert.Equal(2 / Math.PI, level.DecimalFractions, 1e-3);
    }

    [Fact]
    public void Too_many_for_every_combination_it_is_searched_and_finds_the_same()
    {
        static Temperature At(Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m, double theta, double R) =>
            T_a + TemperatureDelta.FromKelvins((Junction(x_mains, Z_L, phi, 0.degC, m).DegreesCelsius) * theta / R);
        var spread = Use.Spread("theta", 10.percent).Spread("R", 5.percent);
        var searched = spread.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m, double theta, double R) => At(x_mains, Z_L, phi, T_a, m, theta, R));
        var corner = Use.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m) => At(x_mains, Z_L, phi, T_a, m, 1.1, 0.95));
        Assert.Equal(WorstMethod.Search, searched.Method);
        Assert.Equal((corner.Value!.Value).DegreesCelsius, (searched.Value!.Value).DegreesCelsius, 1e-4);
        Assert.EndsWith("theta +10 %, R −5 %", searched.At, StringComparison.Ordinal);
        Assert.InRange(searched.Evaluations, 49, 400); // every combination: 648 before a range is followed
    }

    [Fact]
    public void The_remedies_are_told_along_each_condition()
    {
        var worst = Use.Highest((Ratio x_mains, ElectricResistance Z_L, Angle phi, Temperature T_a, Ratio m) => Junction(x_mains, Z_L, phi, T_a, m));
        Assert.Equal(["x_mains", "Z_L", "phi", "T_a", "m"], worst.Relief.Select(r => r.Kindest.Name));
        Assert.All(worst.Relief, r => Assert.True((Temperature)r.Value < worst.Value!.Value));
        Assert.StartsWith("4 → 8 Ω: ", worst.Relief[1].ToString(), StringComparison.Ordinal);
        var eight = Use.Highest((Ratio x_mains, Angle phi, Temperature T_a, Ratio m) => Junction(x_mains, 8.Ohm, phi, T_a, m));
        Assert.True((Temperature)worst.Relief[1].Value <= eight.Value!.Value); // the others at 4 Ω's worst, not at 8 Ω's
        Assert.Equal((worst.Value!.Value).DegreesCelsius - 25, ((Temperature)worst.Relief[3].Value).DegreesCelsius, 1e-9);
    }
}
