using EightOhm.Circuits;
using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>Where a circuit stands, and where it only seems to.</summary>
public class OperatingPointTests
{
    [Fact]
    public void A_whole_amplifier_settles_and_its_currents_add_up()
    {
        var c = Networks.Amplifier();
        var point = c.OperatingPoint();
        Assert.True(point.IsStable);
        Assert.Empty(point.Off);
        Assert.Empty(point.Saturated);
        Assert.InRange(point.Voltage("out").Millivolts, -100, 100);
        // What flows through the tail's two resistors is the tail.
        Assert.Equal(4, point.Current("Re1").Milliamperes + point.Current("Re2").Milliamperes, 1e-8);
        // At every node the currents of resistors, sources and devices meet: at the first stage's output.
        double Base(string q) => point.Devices.Single(d => d.Name == q).BaseCurrent!.Value.Milliamperes;
        Assert.Equal(point.Current("Q4").Milliamperes + Base("Q5"), point.Current("Q1").Milliamperes, 1e-8);
        Assert.Contains("Newton", point.Method, StringComparison.Ordinal);
    }

    [Fact]
    public void Small_signals_come_from_the_point()
    {
        var c = Networks.Amplifier();
        var point = c.OperatingPoint();
        Assert.Equal(point.Circuit.Response("Vin", "out").MagnitudeAt(1.kHz).Ratio, c.Response("Vin", "out").MagnitudeAt(1.kHz).Ratio, 1e-12);
        // The slope of the dc transfer is the gain of a circuit without capacitors.
        Circuit Stage(double volts)
        {
            var s = new Circuit();
            s.Rail("V+", 15.V);
            s.VoltageSource("V1", "b", "0", ElectricPotential.FromVolts(volts));
            s.Npn("Q1", "out", "b", "e", new BipolarModel { EarlyVoltage = 60.V, BaseResistance = 100.Ohm });
            s.Resistor("RE", "e", "0", 1.kOhm);
            s.Resistor("RC", "V+", "out", 4.7.kOhm);
            return s;
        }

        var slope = (Stage(2.001).OperatingPoint().Voltage("out") - Stage(1.999).OperatingPoint().Voltage("out")).Volts / 0.002;
        Assert.Equal(slope, Stage(2).Response("b", "out").Values[0].Real, 1e-6);
    }

    [Fact]
    public void Reversed_feedback_settles_silently_and_is_told()
    {
        var point = Networks.Amplifier(reversed: true).OperatingPoint();
        Assert.False(point.IsStable);
        Assert.NotEmpty(point.Growing);
        Assert.Contains("does NOT stay there", point.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_saturated_and_an_off_transistor_are_named()
    {
        Circuit Switch(double volts)
        {
            var c = new Circuit();
            c.Rail("V+", 10.V);
            c.VoltageSource("V1", "in", "0", ElectricPotential.FromVolts(volts));
            c.Resistor("RB", "in", "b", 10.kOhm);
            c.Npn("Q1", "out", "b", "0", new BipolarModel { CurrentGain = 100 });
            c.Resistor("RC", "V+", "out", 1.kOhm);
            return c;
        }

        var on = Switch(5).OperatingPoint();
        Assert.Equal(["Q1"], on.Saturated);
        Assert.InRange(on.Voltage("out").Volts, 0.02, 0.2);
        var off = Switch(0).OperatingPoint();
        Assert.Equal(["Q1"], off.Off);
        Assert.Equal(10, off.Voltage("out").Volts, 1e-6);
    }

    [Fact]
    public void A_flip_flop_in_the_middle_does_not_stay()
    {
        var c = new Circuit();
        c.Rail("V+", 5.V);
        foreach (var (q, mine, other) in new[] { ("Q1", "a", "b"), ("Q2", "b", "a") })
        {
            c.Npn(q, mine, $"{q}b", "0", new BipolarModel());
            c.Resistor($"R{q}", "V+", mine, 1.kOhm);
            c.Resistor($"X{q}", other, $"{q}b", 10.kOhm);
        }

        var point = c.OperatingPoint();
        if (Math.Abs((point.Voltage("a") - point.Voltage("b")).Volts) < 1e-3)
            Assert.False(point.IsStable);
        else
            Assert.True(point.IsStable);
        Assert.NotNull(point.IsStable);
    }

    [Fact]
    public void An_op_amp_follows_and_saturates()
    {
        Circuit Follower(double volts)
        {
            var c = new Circuit();
            c.VoltageSource("V1", "in", "0", ElectricPotential.FromVolts(volts));
            c.OpAmp("U1", "in", "fb", "out", new OpAmpModel(100.dB, 8.MHz) { HighestOutput = 12.V, LowestOutput = -12.V });
            c.Resistor("Rf", "out", "fb", 9.kOhm);
            c.Resistor("Rg", "fb", "0", 1.kOhm);
            return c;
        }

        var inside = Follower(1).OperatingPoint();
        Assert.Equal(10 / (1 + (10 / 1e5)), inside.Voltage("out").Volts, 1e-2);
        Assert.Empty(inside.Saturated);
        var beyond = Follower(3).OperatingPoint();
        Assert.Equal(12, beyond.Voltage("out").Volts, 1e-3);
        Assert.Equal(["U1"], beyond.Saturated);
    }

    [Fact]
    public void A_diode_drops_what_its_law_says()
    {
        var c = new Circuit();
        c.Rail("V+", 5.V);
        c.Resistor("R1", "V+", "a", 1.kOhm);
        c.Diode("D1", "a", "0", new DiodeModel { SaturationCurrent = ElectricCurrent.FromAmperes(1e-12), EmissionCoefficient = 1.8 });
        var point = c.OperatingPoint();
        var v = point.Voltage("a").Volts;
        var thermal = 1.8 * 1.380649e-23 * 298.15 / 1.602176634e-19;
        Assert.Equal((5 - v) / 1e3, 1e-12 * (Math.Exp(v / thermal) - 1), 1e-13);
        Assert.Equal(thermal / point.Current("D1").Amperes, point.Circuit.Impedance("a").Values[0].Real * 1e3 / (1e3 - point.Circuit.Impedance("a").Values[0].Real), 1e-3);
    }

    [Fact]
    public void A_card_s_current_gain_is_that_at_its_current()
    {
        var card = Transistor.Load(Cards.Output);
        var c = new Circuit();
        c.Rail("V+", 20.V);
        c.Npn("Q1", "V+", "b", "e", card);
        c.Resistor("RE", "e", "0", 10.Ohm);
        c.VoltageSource("V1", "b", "0", 10.V);
        var q = c.OperatingPoint().Devices[0];
        Assert.Equal(card.GainAt(q.Current), q.Current / q.BaseCurrent!.Value, 1e-6);
    }

    [Fact]
    public void An_input_behind_a_capacitor_is_named_and_nothing_is_put_in_silently()
    {
        var c = Networks.LowPass();
        c.Capacitor("C2", "out", "in2", 1.uF);
        var refused = Assert.Throws<InvalidOperationException>(() => c.OperatingPoint());
        Assert.Contains("Node \"in2\" has no dc path to ground (only C2 is on it, and a capacitor carries no dc)", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_circuit_without_an_operating_point_is_refused_in_words()
    {
        // A current that nothing can carry.
        var c = new Circuit();
        c.CurrentSource("I1", "0", "a", 1.mA);
        c.Diode("D1", "0", "a");
        var refused = Assert.Throws<InvalidOperationException>(() => c.OperatingPoint());
        Assert.Contains("No operating point was found", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Held_nodes_are_let_go()
    {
        var free = Networks.Amplifier().OperatingPoint();
        var equations = new DcEquations(Networks.Amplifier());
        equations.Start();
        equations.Hold = ([equations.Nodes["out"]], 1);
        Assert.NotNull(equations.Solve(100));
        var held = equations.X[equations.Nodes["out"]];
        Assert.InRange(Math.Abs(held), 0, 0.1);
        equations.Hold = ([], 0);
        Assert.NotNull(equations.Solve(100));
        Assert.Equal(free.Voltage("out").Volts, equations.X[equations.Nodes["out"]], 1e-7);
    }
}
