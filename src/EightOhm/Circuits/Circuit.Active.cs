using EightOhm.Devices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <content>Transistors, diodes, operational amplifiers, delays.</content>
public sealed partial class Circuit
{
    /// <summary>Puts in an npn transistor at a known collector current.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="c">The collector's node.</param>
    /// <param name="b">The base's node.</param>
    /// <param name="e">The emitter's node.</param>
    /// <param name="at">Its dc collector current; greater than 0 A.</param>
    /// <param name="model">A card or a model.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, all terminals are on one node, or the card is of a pnp.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive.</exception>
    /// <example><code>c.Npn("Q1", c: "vas", b: "in", e: "e1", at: 2.mA, card);</code></example>
    public Element Npn(string name, string c, string b, string e, ElectricCurrent at, BipolarModel model) => Bipolar(ElementKind.Npn, name, c, b, e, at, model);

    /// <summary>Puts in an npn transistor whose current is to be found: see the operating point.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="c">The collector's node.</param>
    /// <param name="b">The base's node.</param>
    /// <param name="e">The emitter's node.</param>
    /// <param name="model">A card or a model.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, all terminals are on one node, or the card is of a pnp.</exception>
    public Element Npn(string name, string c, string b, string e, BipolarModel model) => Bipolar(ElementKind.Npn, name, c, b, e, null, model);

    /// <summary>Puts in a pnp transistor at a known collector current.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="c">The collector's node.</param>
    /// <param name="b">The base's node.</param>
    /// <param name="e">The emitter's node.</param>
    /// <param name="at">Its dc collector current, a magnitude; greater than 0 A.</param>
    /// <param name="model">A card or a model.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, all terminals are on one node, or the card is of an npn.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive.</exception>
    public Element Pnp(string name, string c, string b, string e, ElectricCurrent at, BipolarModel model) => Bipolar(ElementKind.Pnp, name, c, b, e, at, model);

    /// <summary>Puts in a pnp transistor whose current is to be found: see the operating point.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="c">The collector's node.</param>
    /// <param name="b">The base's node.</param>
    /// <param name="e">The emitter's node.</param>
    /// <param name="model">A card or a model.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, all terminals are on one node, or the card is of an npn.</exception>
    public Element Pnp(string name, string c, string b, string e, BipolarModel model) => Bipolar(ElementKind.Pnp, name, c, b, e, null, model);

    /// <summary>Puts in an n-channel enhancement field-effect transistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="d">The drain's node.</param>
    /// <param name="g">The gate's node.</param>
    /// <param name="s">The source's node; the bulk is on it.</param>
    /// <param name="model">Its small-signal values at its current.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or all terminals are on one node.</exception>
    public Element Nmos(string name, string d, string g, string s, FetModel model) => Fet(ElementKind.Nmos, name, d, g, s, model);

    /// <summary>Puts in a p-channel enhancement field-effect transistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="d">The drain's node.</param>
    /// <param name="g">The gate's node.</param>
    /// <param name="s">The source's node; the bulk is on it.</param>
    /// <param name="model">Its small-signal values at its current.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or all terminals are on one node.</exception>
    public Element Pmos(string name, string d, string g, string s, FetModel model) => Fet(ElementKind.Pmos, name, d, g, s, model);

    /// <summary>Puts in an n-channel junction field-effect transistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="d">The drain's node.</param>
    /// <param name="g">The gate's node.</param>
    /// <param name="s">The source's node.</param>
    /// <param name="model">Its small-signal values at its current.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or all terminals are on one node.</exception>
    public Element Njfet(string name, string d, string g, string s, FetModel model) => Fet(ElementKind.Njfet, name, d, g, s, model);

    /// <summary>Puts in a p-channel junction field-effect transistor.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="d">The drain's node.</param>
    /// <param name="g">The gate's node.</param>
    /// <param name="s">The source's node.</param>
    /// <param name="model">Its small-signal values at its current.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or all terminals are on one node.</exception>
    public Element Pjfet(string name, string d, string g, string s, FetModel model) => Fet(ElementKind.Pjfet, name, d, g, s, model);

    /// <summary>Puts in a diode.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="anode">A node.</param>
    /// <param name="cathode">Another node.</param>
    /// <param name="model">Its data; an ordinary small silicon junction when not given.</param>
    /// <param name="at">Its dc current; 0 A or more. Not given: to be found, see the operating point.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both ends are on one node.</exception>
    public Element Diode(string name, string anode, string cathode, DiodeModel? model = null, ElectricCurrent? at = null) =>
        Add(new Element(ElementKind.Diode, name, Checked(name, new Terminal(nameof(anode), anode), new Terminal(nameof(cathode), cathode)))
        {
            Model = model ?? new DiodeModel(),
            Bias = at is { } i ? Guard.NotNegative(i, $"the current of {name}") : null,
        });

    /// <summary>Puts in an operational amplifier of finite gain and bandwidth.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">The non-inverting input's node.</param>
    /// <param name="minus">The inverting input's node.</param>
    /// <param name="output">The output's node.</param>
    /// <param name="gain">Open-loop gain at dc; 1 or more.</param>
    /// <param name="gbw">Gain-bandwidth product; greater than 0 Hz.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <example><code>c.OpAmp("U1", plus: "in", minus: "fb", output: "out", gain: 100.dB, gbw: 8.MHz);</code></example>
    public Element OpAmp(string name, string plus, string minus, string output, Gain gain, Frequency gbw) => OpAmp(name, plus, minus, output, new OpAmpModel(gain, gbw));

    /// <summary>Puts in an operational amplifier.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="plus">The non-inverting input's node.</param>
    /// <param name="minus">The inverting input's node.</param>
    /// <param name="output">The output's node.</param>
    /// <param name="model">Its data.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or the inputs are on one node.</exception>
    public Element OpAmp(string name, string plus, string minus, string output, OpAmpModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        Checked(name, new Terminal(nameof(plus), plus), new Terminal(nameof(minus), minus));
        return Add(new Element(ElementKind.OpAmp, name, Checked(name, new Terminal(nameof(plus), plus), new Terminal(nameof(minus), minus), new Terminal("out", output))) { Model = model });
    }

    /// <summary>Puts in a buffer that repeats the voltage of a node, against ground, after a time.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="input">The node whose voltage is repeated; no current flows into it.</param>
    /// <param name="output">The node held at it.</param>
    /// <param name="t">The delay; 0 s or more.</param>
    /// <returns>The element.</returns>
    /// <exception cref="ArgumentException">A name is taken or is no word, or both are on one node.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The delay is negative.</exception>
    public Element Delay(string name, string input, string output, Duration t) => Add(ElementKind.Delay, name, t, new("in", input), new("out", output));

    private Element Bipolar(ElementKind kind, string name, string c, string b, string e, ElectricCurrent? at, BipolarModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (model.Polarity is { } polarity && (polarity == Polarity.Npn) != (kind == ElementKind.Npn))
            throw new ArgumentException($"The card of {name} is of {(polarity == Polarity.Npn ? "an npn" : "a pnp")}: use c.{polarity}, or the other card.", nameof(model));
        if (at is { } current)
            Guard.Positive(current, $"the collector current of {name}", "Without current a transistor has no transconductance. Leave the current out to have it found.");
        return Add(new Element(kind, name, Device(name, new(nameof(c), c), new(nameof(b), b), new(nameof(e), e))) { Model = model, Bias = at });
    }

    private Element Fet(ElementKind kind, string name, string d, string g, string s, FetModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return Add(new Element(kind, name, Device(name, new(nameof(d), d), new(nameof(g), g), new(nameof(s), s))) { Model = model });
    }

    private Terminal[] Device(string name, Terminal first, Terminal control, Terminal common)
    {
        var made = Checked(name, first, control, common);
        return made[0].Node == made[1].Node && made[1].Node == made[2].Node
            ? throw new ArgumentException($"All terminals of {name} are on node \"{made[0].Node}\": it would do nothing.", common.Name)
            : made;
    }
}
