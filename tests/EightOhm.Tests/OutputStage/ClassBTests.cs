using EightOhm.OutputStage;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputStage;

/// <summary>Three pairs on ±46 V into 4 Ω, and what the usual mistakes would say.</summary>
public class ClassBTests
{
    private readonly ElectricPotential V = 46.V;
    private readonly ElectricResistance R = 4.Ohm;
    private readonly ElectricResistance R_E = 0.22.Ohm;

    [Fact]
    public void Emitter_resistors_take_their_share()
    {
        Assert.Equal(105.268, (double)ClassBDevices.Worst(V, R, R_E, 3).Watts, 0.0005);
        Assert.Equal(17.545, (double)ClassBDevices.WorstOfOne(V, R, R_E, 3).Watts, 0.0005);
        Assert.Equal(28.757, ClassBDevices.WorstLevel(V, R, R_E, 3).Volts, 0.0005);
        Assert.Equal(107.20, (double)ClassBDevices.Worst(V, R, 0.Ohm, 3).Watts, 0.005); // the resistors forgotten
    }

    [Fact]
    public void The_rail_of_the_level_decides_and_not_the_sagging_one() =>
        Assert.Equal(1.147, (double)(ClassBDevices.Worst(48.2.V, 8.Ohm, R_E, 3) / ClassBDevices.Worst(45.V, 8.Ohm, R_E, 3)), 0.0005);

    [Fact]
    public void Without_emitter_resistors_the_worst_level_gives_the_worst_heat()
    {
        var V_p = ClassBDevices.WorstLevel(V, R, 0.Ohm, 1);
        Assert.Equal((double)ClassBDissipation.Worst(V, R, 1).Watts, (double)ClassBAtLevel.PairHeat(V, V_p, R).Watts, 1e-9);
        Assert.Equal((double)ClassBDissipation.Worst(V, R, 1).Watts, (double)ClassBDevices.Worst(V, R, 0.Ohm, 1).Watts, 1e-9);
    }

    [Fact]
    public void An_output_past_its_rail_is_refused() =>
        Assert.Contains("cannot swing past its rail", Assert.Throws<RefusedValueException>(() => ClassBAtLevel.PairHeat(V, 47.V, R)).Message, StringComparison.Ordinal);
}
