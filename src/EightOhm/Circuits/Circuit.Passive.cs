using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <content>Resistors, capacitors, inductors and sources.</content>
public sealed partial class Circuit
{
    /// <summary>Puts in a resistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node.</param>
    /// <param name="b">Another node.</param>
    /// <param name="R">Greater than 0 Ω.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive.</exception>
    public Element Resistor(string name, string a, string b, ElectricResistance R) => Add(ElementKind.Resistor, name, R, new(nameof(a), a), new(nameof(b), b));

    /// <summary>Puts in a capacitor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node; the positive end of an electrolytic.</param>
    /// <param name="b">Another node.</param>
    /// <param name="C">Greater than 0 F.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive.</exception>
    public Element Capacitor(string name, string a, string b, ElectricCapacitance C) => Add(ElementKind.Capacitor, name, C, new(nameof(a), a), new(nameof(b), b));

    /// <summary>Puts in an inductor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">A node; the dotted end where it is coupled.</param>
    /// <param name="b">Another node.</param>
    /// <param name="L">Greater than 0 H.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive.</exception>
    public Element Inductor(string name, string a, string b, ElectricInductance L) => Add(ElementKind.Inductor, name, L, new(nameof(a), a), new(nameof(b), b));

    /// <summary>Couples two inductors that are in the circuit: M = k·√(L₁·L₂).</summary>
    /// <param name="name">The coupling's name.</param>
    /// <param name="first">An inductor.</param>
    /// <param name="second">Another.</param>
    /// <param name="k">The coupling factor, −0.999999 to 0.999999; positive when currents into both dotted ends help each other.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken, one of the two is no inductor, or both are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is out of range.</exception>
    public Element Coupling(string name, string first, string second, double k)
    {
        foreach (var (inductor, parameter) in new[] { (first, nameof(first)), (second, nameof(second)) })
            if (elements[Place(inductor, parameter)].Kind != ElementKind.Inductor)
                throw new ArgumentException($"Only inductors are coupled; {elements[Place(inductor, parameter)]} is none.", parameter);
        if (first == second)
            throw new ArgumentException($"{first} cannot be coupled to itself.", nameof(second));
        if (elements.FirstOrDefault(e => e.Kind == ElementKind.Coupling && e.Refers.Contains(first) && e.Refers.Contains(second)) is { } there)
            throw new ArgumentException($"{first} and {second} are coupled already, by {there.Name}.", nameof(name));
        return Add(new Element(ElementKind.Coupling, name, Checked(name), k) { Refers = [first, second] });
    }

    /// <summary>Puts in an ideal voltage source.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Its positive node.</param>
    /// <param name="minus">Its negative node.</param>
    /// <param name="V">Its dc voltage, plus against minus; 0 V when it only brings a signal.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element VoltageSource(string name, string plus, string minus = Ground, ElectricPotential V = default) =>
        Add(ElementKind.VoltageSource, name, V, new(nameof(plus), plus), new(nameof(minus), minus));

    /// <summary>Puts in an ideal current source.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">The node that its current leaves.</param>
    /// <param name="b">The node that its current enters: inside the source it flows from a to b.</param>
    /// <param name="I">Its dc current; 0 A when it only brings a signal.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element CurrentSource(string name, string a, string b, ElectricCurrent I = default) =>
        Add(ElementKind.CurrentSource, name, I, new(nameof(a), a), new(nameof(b), b));

    /// <summary>Makes a node a supply rail: held at a voltage against ground, still for signals.</summary>
    /// <param name="node">The rail's name and node: "V+".</param>
    /// <param name="V">Its dc voltage.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">The name is taken or is no word, or it is ground.</exception>
    public Element Rail(string node, ElectricPotential V) => Add(ElementKind.Rail, node, V, new("plus", node), new("minus", Ground));

    /// <summary>Puts in a voltage that a voltage controls.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Its positive node.</param>
    /// <param name="minus">Its negative node.</param>
    /// <param name="controlPlus">The controlling voltage's positive node.</param>
    /// <param name="controlMinus">The controlling voltage's negative node.</param>
    /// <param name="gain">Its voltage over the controlling one.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element VoltageControlledVoltage(string name, string plus, string minus, string controlPlus, string controlMinus, Gain gain) =>
        Controlled(ElementKind.VoltageControlledVoltage, name, gain, new(nameof(plus), plus), new(nameof(minus), minus), controlPlus, controlMinus);

    /// <summary>Puts in a current that a voltage controls: a transconductance.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">The node that its current leaves.</param>
    /// <param name="b">The node that its current enters: inside the source it flows from a to b.</param>
    /// <param name="controlPlus">The controlling voltage's positive node.</param>
    /// <param name="controlMinus">The controlling voltage's negative node.</param>
    /// <param name="g_m">Its current over the controlling voltage.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    public Element VoltageControlledCurrent(string name, string a, string b, string controlPlus, string controlMinus, ElectricConductance g_m) =>
        Controlled(ElementKind.VoltageControlledCurrent, name, g_m, new(nameof(a), a), new(nameof(b), b), controlPlus, controlMinus);

    /// <summary>Puts in a voltage that a current controls: a transresistance.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">Its positive node.</param>
    /// <param name="minus">Its negative node.</param>
    /// <param name="through">What carries the controlling current from its first terminal to its second: a voltage source, a resistor or an inductor of the circuit.</param>
    /// <param name="r">Its voltage over the controlling current.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or the controlling element carries no current of its own.</exception>
    public Element CurrentControlledVoltage(string name, string plus, string minus, string through, ElectricResistance r) =>
        Controlled(ElementKind.CurrentControlledVoltage, name, r, new(nameof(plus), plus), new(nameof(minus), minus), through);

    /// <summary>Puts in a current that a current controls.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="a">The node that its current leaves.</param>
    /// <param name="b">The node that its current enters: inside the source it flows from a to b.</param>
    /// <param name="through">What carries the controlling current from its first terminal to its second: a voltage source, a resistor or an inductor of the circuit.</param>
    /// <param name="gain">Its current over the controlling one.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or the controlling element carries no current of its own.</exception>
    public Element CurrentControlledCurrent(string name, string a, string b, string through, double gain) =>
        Controlled(ElementKind.CurrentControlledCurrent, name, gain, new(nameof(a), a), new(nameof(b), b), through);

    private Element Controlled(ElementKind kind, string name, object value, Terminal first, Terminal second, string controlPlus, string controlMinus)
    {
        Checked(name, first, second);
        Checked(name, new Terminal(nameof(controlPlus), controlPlus), new Terminal(nameof(controlMinus), controlMinus));
        return Add(kind, name, value, first, second, new("control plus", controlPlus), new("control minus", controlMinus));
    }

    private Element Controlled(ElementKind kind, string name, object value, Terminal first, Terminal second, string through)
    {
        var carrier = elements[Place(through, nameof(through))];
        if (carrier.Kind is not (ElementKind.VoltageSource or ElementKind.Rail or ElementKind.Resistor or ElementKind.Inductor))
            throw new ArgumentException($"The controlling current is taken from a voltage source, a resistor or an inductor; {carrier} is none. Put a voltage source of 0 V into the wire.", nameof(through));
        return Add(new Element(kind, name, Checked(name, first, second), value) { Refers = [through] });
    }
}
