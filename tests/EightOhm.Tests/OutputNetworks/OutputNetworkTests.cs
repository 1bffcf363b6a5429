using EightOhm.Feedback;
using EightOhm.Loads;
using EightOhm.OutputNetworks;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.OutputNetworks;

public class OutputNetworkTests
{
    private static readonly OutputNetwork Ideal = new() { Inductance = 1.uH, DampingResistor = 10.Ohm };

    [Fact]
    public void The_coil_stands_at_a_right_angle_to_the_load()
    {
        var level = DampedCoil.Level(20.kHz, 4.Ohm, 1.uH, 10.Ohm);
        Assert.Equal(-0.00771, level.Decibels, 5e-6);
        // Magnitudes added as if they were resistances.
        Assert.Equal(-0.269, 20 * Math.Log10(4 / (4 + (8 / DampedCoil.DampingFactor(20.kHz, 8.Ohm, 1.uH, 10.Ohm)))), 5e-4);
        Assert.Equal(63.7, DampedCoil.DampingFactor(20.kHz, 8.Ohm, 1.uH, 10.Ohm), 0.05);
    }

    [Fact]
    public void A_peak_is_over_what_the_wire_of_the_coil_leaves_at_low_frequencies()
    {
        // Without the resistor across it, the coil with its wire before a load and a capacitor is of the second order:
        // 1/(1 + R_c/R + s·(L/R + R_c·C) + s²·L·C), whose peak over its own value at 0 Hz is 1/(2ζ√(1 − ζ²)).
        double wire = 2, load = 8, l = 2e-6, c = 100e-9;
        var bare = new OutputNetwork { Inductance = 2.uH, CoilResistance = 2.Ohm, DampingResistor = 1e9.Ohm };
        var zeta = ((l / load) + (wire * c)) / (2 * Math.Sqrt((1 + (wire / load)) * l * c));
        var peak = bare.WithCapacitors(load.Ohm, [100.nF]).Loads[0].Peak!.Value;
        Assert.Equal(1 / (2 * zeta * Math.Sqrt(1 - (zeta * zeta))), peak.Ratio, 1e-6);
    }

    [Fact]
    public void The_worst_capacitor_is_named()
    {
        ElectricCapacitance[] sizes = [1.nF, 100.nF, 220.nF, 1.uF, 2.2.uF];
        var loads = Ideal.WithCapacitors(8.Ohm, sizes);
        Assert.Equal(2.2e-6, loads.Highest!.Capacitance.Farads, 1e-12);
        Assert.Equal(16.4, loads.Highest.Peak!.Value.Decibels, 0.05);
        Assert.Equal(107e3, loads.Highest.PeakFrequency!.Value.Hertz, 500.0);
        // Without the coil's help (a hundredth of it, no resistor to speak of) the followers' resistance and a capacitor upset the loop.
        var bare = new OutputNetwork { Inductance = 10.nH, DampingResistor = 100.Ohm, OpenLoopResistance = 3.Ohm, Loop = TransferFunction.Integrator(3.MHz) * TransferFunction.Pole(4.MHz) * TransferFunction.Pole(4.MHz) };
        var upset = bare.WithCapacitors(null, sizes);
        Assert.False(upset.IsStable);
        Assert.False(upset.Worst.IsStable);
        Assert.Null(upset.Worst.PhaseMargin);
        Assert.True((bare with { Inductance = 2.uH, DampingResistor = 10.Ohm }).WithCapacitors(null, sizes).IsStable);
    }

    [Fact]
    public void Parts_of_the_output_impedance_and_the_cable()
    {
        var network = Ideal with { OpenLoopResistance = 0.15.Ohm, Loop = TransferFunction.Integrator(1.1.MHz) * TransferFunction.Pole(8.MHz), Cable = Cable.Awg(5.m, 14) };
        var low = network.ImpedanceAt(100.Hz, 8.Ohm);
        Assert.True(low.Loop < low.Coil && low.Coil < low.Cable);
        Assert.Equal(network.Cable.LoopResistance.Ohms, low.Cable.Ohms, 1e-4);
        Assert.True(low.DampingAtTerminals > 10 * low.DampingAtLoudspeaker);
        Assert.True(network.Level(20.kHz, 8.Ohm) < Ideal.Level(20.kHz, 8.Ohm));
        var unstable = network with { Loop = 1e6 * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz) * TransferFunction.Pole(1.kHz) };
        Assert.Contains("oscillator", Assert.Throws<InvalidOperationException>(() => unstable.ImpedanceAt(1.kHz, 8.Ohm)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_least_winding_is_just_as_long_as_the_formula_wants_it()
    {
        // Wheeler's formula holds from 0.4 of the mean diameter on; here the pitch is 1.05 mm, the mean diameter the former and that.
        for (var former = 4.0; former < 60; former += 0.1)
        {
            var turns = CoilWinding.For(1.nH, former.mm, 1.mm).Turns;
            Assert.True(turns * 1.05 >= 0.4 * (former + 1.05) * (1 - 1e-9), $"{turns} turns on {former} mm");
            Assert.True((turns - 1) * 1.05 < 0.4 * (former + 1.05) * (1 + 1e-9), $"{turns} turns on {former} mm");
        }
    }

    [Fact]
    public void A_winding_has_the_fewest_turns_that_do()
    {
        var coil = CoilWinding.For(1.uH, 10.mm, 1.25.mm);
        Assert.True(coil.Inductance >= 1.uH);
        Assert.True(new CoilWinding(coil.Turns - 1, 10.mm, 1.25.mm).Inductance < 1.uH);
        Assert.Contains("too flat", Assert.Throws<RefusedValueException>(() => new CoilWinding(2, 20.mm, 1.25.mm)).Message, StringComparison.Ordinal);
        Assert.Contains("Not even", Assert.Throws<InvalidOperationException>(() => CoilWinding.For(1.mH, 10.mm, 1.25.mm)).Message, StringComparison.Ordinal);
        Assert.Contains("overlap", Assert.Throws<RefusedValueException>(() => new CoilWinding(14, 10.mm, 1.25.mm, 1.mm)).Message, StringComparison.Ordinal);
    }
}
