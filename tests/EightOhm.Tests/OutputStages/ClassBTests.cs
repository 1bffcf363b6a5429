using CsCheck;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputStages;

/// <summary>Three pairs on ±46 V into 4 Ω, and what the usual mistakes would say.</summary>
public class ClassBTests
{
    private readonly ElectricPotential V = 46.V;
    private readonly ElectricResistance R = 4.Ohm;
    private readonly ElectricResistance R_E = 0.22.Ohm;

    [Fact]
    public void Emitter_resistors_take_their_share()
    {
        Assert.Equal(105.268, W(ClassB.Worst(V, R, 0.deg, R_E, 3)), 0.0005);
        Assert.Equal(17.545, W(ClassB.WorstOfOne(V, R, 0.deg, R_E, 3)), 0.0005);
        Assert.Equal(28.757, ClassB.WorstLevel(V, R, 0.deg, R_E, 3).Volts, 0.0005);
        Assert.Equal(107.20, W(ClassB.Worst(V, R, 0.deg)), 0.005); // the resistors forgotten: 53.6 a side, not per device
    }

    [Fact]
    public void The_rail_of_the_level_decides_and_not_the_sagging_one() =>
        Assert.Equal(1.147, (double)(ClassB.Worst(48.2.V, 8.Ohm, 0.deg, R_E, 3) / ClassB.Worst(45.V, 8.Ohm, 0.deg, R_E, 3)), 0.0005);

    [Fact]
    public void The_worst_level_gives_the_worst_heat_whatever_the_load() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 32], Gen.Double[-90, 90], Gen.Double[0, 1], Gen.Int[1, 6]).Sample((v, z, a, r, n) =>
        {
            var (Z, phi, rail, resistor) = (z.Ohm, a.deg, v.V, r.Ohm);
            var level = ClassB.WorstLevel(rail, Z, phi, resistor, n);
            var worst = W(ClassB.Worst(rail, Z, phi, resistor, n));
            Assert.Equal(worst, W(ClassB.Heat(rail, level, Z, phi, resistor, n)), 1e-9 * worst);
            var full = ClassB.FullSwing(rail, Z, phi, resistor, n);
            for (var i = 0; i <= 200; i++)
                Assert.True(W(ClassB.Heat(rail, full * (i / 200.0), Z, phi, resistor, n)) <= worst * (1 + 1e-9));
        }, iter: 200);

    [Fact]
    public void The_worst_over_phases_is_that_of_the_largest()
    {
        var worst = W(ClassB.Worst(V, R, 60.deg, R_E, 3));
        for (var a = -60; a <= 60; a++)
            Assert.True(W(ClassB.Worst(V, R, a.deg, R_E, 3)) <= worst * (1 + 1e-12));
        Assert.Equal(0.38662, W(ClassB.Worst(1.V, 1.Ohm, 60.deg)), 0.000005); // 0.40528 if 2/π²cos φ is used past 50.46°
        Assert.Equal(W(ClassB.Worst(V, R, -45.deg)), W(ClassB.Worst(V, R, 45.deg)), 1e-12);
    }

    [Fact]
    public void The_average_as_the_LM3886_sheet_writes_it_meets_its_maximum_at_the_supply_over_two_pi()
    {
        // V_cc is the whole supply there: (V_p/R)·(V_cc/π − V_p/2), equal to V_cc²/(2π²R) at V_p = V_cc/π.
        var (whole, peak) = (70.0, 70 / Math.PI);
        Assert.Equal(peak / 8 * ((whole / Math.PI) - (peak / 2)), W(ClassB.Heat(35.V, peak.V, 8.Ohm, 0.deg, 0.Ohm, 1)), 1e-9);
        Assert.Equal(whole * whole / (2 * Math.PI * Math.PI * 8), W(ClassB.Worst(35.V, 8.Ohm, 0.deg)), 1e-9);
    }

    [Fact]
    public void One_side_is_stressed_most_at_zero_volts_into_45_degrees()
    {
        Assert.Equal(0.3536, 0.25 / W(ClassB.PeakOfSide(1.V, 1.Ohm, 45.deg)), 0.00005); // 0.707 is the average's
        Assert.Equal(0.2781, 0.25 / W(ClassB.PeakOfSide(1.V, 1.Ohm, -60.deg)), 0.00005);
        Assert.Equal(0, ClassB.OutputAtPeak(V, 45.deg).Volts, 1e-12);
        Assert.Equal(23, ClassB.OutputAtPeak(V, 0.deg).Volts, 1e-12);
        Assert.True(ClassB.OutputAtPeak(V, 60.deg).Volts < 0);
    }

    [Fact]
    public void Impossible_inputs_are_refused_with_what_is_allowed()
    {
        Refused("cannot swing past the rail", () => ClassB.Heat(V, 47.V, R, 0.deg, R_E, 3));
        Refused("to 45.17 V", () => ClassB.Heat(V, 45.5.V, R, 0.deg, R_E, 3));
        Refused("within ±90°", () => ClassB.Worst(V, R, 91.deg));
        Refused("within ±90°", () => ClassB.PeakOfSide(V, R, -100.deg));
        Refused("greater than 0 Ω", () => ClassB.Worst(V, 0.Ohm, 0.deg));
        Refused("phase", () => LoadWithEmitterResistor.Phase(R, 120.deg, R_E, 3));
    }

    private static void Refused(string says, Func<object> call) =>
        Assert.Contains(says, Assert.Throws<RefusedValueException>(call).Message, StringComparison.Ordinal);

    private static double W(Power p) => (double)p.Watts;
}
