using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <content>What is drawn and not solved.</content>
public sealed partial class Circuit
{
    /// <summary>Puts in a box with a text.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="input">The node at its input.</param>
    /// <param name="output">The node at its output.</param>
    /// <param name="text">What stands in it.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both are on one node.</exception>
    public Element Block(string name, string input, string output, string text) => Drawn(ElementKind.Block, name, null, text, new("in", input), new("out", output));

    /// <summary>Puts in an amplifier as a triangle.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="input">The node at its input.</param>
    /// <param name="output">The node at its output.</param>
    /// <param name="text">What stands in it.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both are on one node.</exception>
    public Element Amplifier(string name, string input, string output, string text = "") => Drawn(ElementKind.Amplifier, name, null, text, new("in", input), new("out", output));

    /// <summary>Puts in a point where one signal is taken from another.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">The node that is added.</param>
    /// <param name="minus">The node that is subtracted.</param>
    /// <param name="output">The node of the difference.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element SummingPoint(string name, string plus, string minus, string output) => Drawn(ElementKind.SummingPoint, name, null, "", new(nameof(plus), plus), new(nameof(minus), minus), new("out", output));

    /// <summary>Puts in a transformer.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="primaryA">A node of the primary.</param>
    /// <param name="primaryB">The other node of the primary.</param>
    /// <param name="secondaryA">A node of the secondary.</param>
    /// <param name="secondaryB">The other node of the secondary.</param>
    /// <param name="tap">The node of the secondary's centre tap; none when not given.</param>
    /// <param name="text">What stands beside it.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element Transformer(string name, string primaryA, string primaryB, string secondaryA, string secondaryB, string? tap = null, string text = "")
    {
        Terminal[] ends = [new("primary a", primaryA), new("primary b", primaryB), new("secondary a", secondaryA), new("secondary b", secondaryB)];
        return Drawn(ElementKind.Transformer, name, null, text, tap is null ? ends : [.. ends, new(nameof(tap), tap)]);
    }

    /// <summary>Puts in a bridge rectifier.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="acA">A node of the alternating side.</param>
    /// <param name="acB">The other node of the alternating side.</param>
    /// <param name="plus">Its positive node.</param>
    /// <param name="minus">Its negative node.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element BridgeRectifier(string name, string acA, string acB, string plus, string minus) =>
        Drawn(ElementKind.BridgeRectifier, name, null, "", new("ac a", acA), new("ac b", acB), new(nameof(plus), plus), new(nameof(minus), minus));

    /// <summary>Puts in a Zener diode or a clamp.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="anode">A node.</param>
    /// <param name="cathode">Another node.</param>
    /// <param name="V_Z">Its voltage; greater than 0 V.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    public Element Zener(string name, string anode, string cathode, ElectricPotential V_Z) => Drawn(ElementKind.Zener, name, V_Z, "", new(nameof(anode), anode), new(nameof(cathode), cathode));

    /// <summary>Puts in the coil of a relay.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element RelayCoil(string name, string a, string b) => Pair(ElementKind.RelayCoil, name, a, b);

    /// <summary>Puts in a contact of a relay.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element RelayContact(string name, string a, string b) => Pair(ElementKind.RelayContact, name, a, b);

    /// <summary>Puts in a fuse.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="I">Its rating; greater than 0 A.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rating is not positive.</exception>
    public Element Fuse(string name, string a, string b, ElectricCurrent I) => Pair(ElementKind.Fuse, name, a, b, I);

    /// <summary>Puts in a lamp.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="text">What stands beside it.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element Lamp(string name, string a, string b, string text = "") => Pair(ElementKind.Lamp, name, a, b, null, text);

    /// <summary>Puts in a loudspeaker as a symbol. For solving put in its resistors, coils and capacitors.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Its positive node.</param>
    /// <param name="minus">Its other node.</param>
    /// <param name="Z">Its nominal impedance; greater than 0 Ω.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The impedance is not positive.</exception>
    public Element Loudspeaker(string name, string plus, string minus, ElectricResistance Z) => Drawn(ElementKind.Loudspeaker, name, Z, "", new(nameof(plus), plus), new(nameof(minus), minus));

    /// <summary>Puts in a switch.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element Switch(string name, string a, string b) => Pair(ElementKind.Switch, name, a, b);

    /// <summary>Puts in a thermistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="R">Its resistance cold; greater than 0 Ω.</param>
    /// <param name="text">What stands beside it: "ntc".</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public Element Thermistor(string name, string a, string b, ElectricResistance R, string text = "") => Pair(ElementKind.Thermistor, name, a, b, R, text);

    /// <summary>Puts in a contact that opens or closes at a temperature.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="T">The temperature.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element Thermostat(string name, string a, string b, Temperature T) => Pair(ElementKind.Thermostat, name, a, b, T);

    /// <summary>Puts in a source of heat. Heat paths are solved by the room Thermal.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="node">The node that it heats.</param>
    /// <param name="P">Its heat.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element HeatSource(string name, string node, Power P) => Drawn(ElementKind.HeatSource, name, P, "", new Terminal(nameof(node), node));

    /// <summary>Puts in a thermal resistance. Heat paths are solved by the room Thermal.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="theta">Greater than 0 K/W.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public Element ThermalPath(string name, string a, string b, ThermalResistance theta) => Pair(ElementKind.ThermalPath, name, a, b, theta);

    /// <summary>Puts in what stores heat, from a node to the ambient.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="node">The node whose temperature it slows.</param>
    /// <param name="C_th">Its heat capacity; greater than 0 J/K.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The capacity is not positive.</exception>
    public Element HeatCapacity(string name, string node, HeatCapacity C_th) => Pair(ElementKind.HeatCapacity, name, node, Ground, C_th);

    /// <summary>Puts in a heat sink. Heat paths are solved by the room Thermal.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="node">The node that it cools.</param>
    /// <param name="theta">To the air; greater than 0 K/W.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is not positive.</exception>
    public Element HeatSink(string name, string node, ThermalResistance theta) => Drawn(ElementKind.HeatSink, name, theta, "", new Terminal(nameof(node), node));

    /// <summary>Puts in a socket.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="tip">The signal's node.</param>
    /// <param name="sleeve">The return's node.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both are on one node.</exception>
    public Element Jack(string name, string tip, string sleeve = Ground) => Drawn(ElementKind.Jack, name, null, "", new(nameof(tip), tip), new(nameof(sleeve), sleeve));

    /// <summary>Puts in a terminal where the circuit meets the world.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="node">The node that it is on.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element Terminal(string name, string node) => Drawn(ElementKind.Terminal, name, null, "", new Terminal(nameof(node), node));

    private Element Pair(ElementKind kind, string name, string a, string b, object? value = null, string text = "") => Drawn(kind, name, value, text, new(nameof(a), a), new(nameof(b), b));

    private Element Drawn(ElementKind kind, string name, object? value, string text, params Terminal[] terminals)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Add(new Element(kind, name, Checked(name, terminals), value) { Text = text });
    }
}
