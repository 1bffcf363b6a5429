using EightOhm.Circuits;
using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.Circuits;

/// <summary>A circuit is what was put into it, and refuses in words what cannot be.</summary>
public class CircuitTests
{
    [Fact]
    public void An_element_keeps_its_kind_nodes_and_value()
    {
        var c = Networks.LowPass();
        var r = c["R1"];
        Assert.Equal(ElementKind.Resistor, r.Kind);
        Assert.Equal("in", r["a"]);
        Assert.Equal("out", r["b"]);
        Assert.Equal(1.kOhm, r.Value);
        Assert.Equal(["in", "out"], c.Nodes);
        Assert.Equal("R1, 1 kΩ, from in to out", r.ToString());
        Assert.Equal((3, 2), r.At(3, 2).Place);
        Assert.Equal("a b", c.Plan("a b").PlanText);
        Assert.Equal("circuit of 3 elements on 2 nodes and ground", c.ToString());
    }

    [Fact]
    public void Ground_has_two_names()
    {
        var c = new Circuit();
        c.Resistor("R1", "a", "ground", 1.kOhm);
        c.Resistor("R2", "a", "0", 1.kOhm);
        Assert.Equal(500, c.Impedance("a").MagnitudeAt(1.kHz).Ohms, 1e-9);
    }

    [Fact]
    public void Another_value_leaves_the_first_circuit_as_it_was()
    {
        var c = Networks.LowPass();
        var other = c.With("R1", 2.kOhm);
        Assert.Equal(1.kOhm, c["R1"].Value);
        Assert.Equal(15915.494, c.Response("in", "out").UpperCorner(1.Hz).Hertz, 0.01);
        Assert.Equal(7957.747, other.Response("in", "out").UpperCorner(1.Hz).Hertz, 0.01);
        Assert.Contains("not of the kind", Assert.Throws<ArgumentException>(() => c.With("R1", 1.V)).Message, StringComparison.Ordinal);
        Assert.Contains("R1", Assert.Throws<RefusedValueException>(() => c.With("R1", 0.Ohm)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_put_in_is_refused_in_words()
    {
        var c = Networks.LowPass();
        void Refused(string words, Action put) => Assert.Contains(words, Assert.ThrowsAny<ArgumentException>(put).Message, StringComparison.Ordinal);
        Refused("already", () => c.Resistor("R1", "a", "b", 1.Ohm));
        Refused("Both ends of R2", () => c.Resistor("R2", "a", "a", 1.Ohm));
        Refused("one word", () => c.Resistor("R 2", "a", "b", 1.Ohm));
        Refused("join the nodes", () => c.Resistor("R2", "a", "b", 0.Ohm));
        Refused("Did you mean \"R1\"", () => _ = c["R11"]);
        Refused("transconductance", () => c.Npn("Q1", "out", "in", "0", 0.mA, new BipolarModel()));
        Refused("All terminals", () => c.Npn("Q1", "out", "out", "out", new BipolarModel()));
        Refused("use c.Pnp", () => c.Npn("Q1", "out", "in", "0", 1.mA, Transistor.Load(Cards.OutputPnp)));
        Refused("Only inductors", () => c.Coupling("K1", "R1", "C1", 0.9));
        Refused("Put a voltage source of 0 V", () => c.CurrentControlledCurrent("F1", "a", "b", "C1", 2));
        Assert.Equal(3, c.Elements.Count);
        Assert.Equal(2, c.Nodes.Count);
    }

    [Fact]
    public void Coupled_coils_are_coupled_once()
    {
        var c = new Circuit();
        c.Inductor("L1", "a", "0", 0.2.H_());
        c.Inductor("L2", "b", "0", 0.1.H_());
        c.Coupling("K1", "L1", "L2", 0.5);
        Assert.Contains("coupled already, by K1", Assert.Throws<ArgumentException>(() => c.Coupling("K2", "L2", "L1", 0.5)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => c.Coupling("K3", "L1", "L1", 0.5));
        Assert.Throws<RefusedValueException>(() => new Circuit().With2Coils().Coupling("K", "L1", "L2", 1));
    }

    [Fact]
    public void What_is_only_drawn_is_not_solved()
    {
        var c = Networks.LowPass();
        c.Fuse("F1", "out", "x", 1.A);
        c.Loudspeaker("LS", "x", "0", 8.Ohm);
        Assert.Contains("F1 and LS are drawn and not solved", Assert.Throws<InvalidOperationException>(() => c.Response("in", "out")).Message, StringComparison.Ordinal);
        var marked = Networks.LowPass();
        marked.Jack("J1", "in");
        marked.Terminal("T1", "out");
        Assert.Equal(15915.494, marked.Response("in", "out").UpperCorner(1.Hz).Hertz, 0.01);
    }

    [Fact]
    public void A_card_becomes_a_model()
    {
        var card = Transistor.Load(Cards.Output);
        BipolarModel model = card;
        Assert.Equal(card.SaturationCurrentAt(25.degC), model.SaturationCurrent);
        Assert.Equal(card.GainTable.Max(p => p.Gain), model.CurrentGain);
        Assert.Equal(card.OutputCapacitance, model.CollectorCapacitance);
    }
}

internal static class CoilTests
{
    public static ElectricInductance H_(this double henries) => ElectricInductance.FromHenries(henries);

    public static Circuit With2Coils(this Circuit c)
    {
        c.Inductor("L1", "a", "0", 0.2.H_());
        c.Inductor("L2", "b", "0", 0.1.H_());
        return c;
    }
}
