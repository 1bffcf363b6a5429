namespace EightOhm.Circuits;

/// <summary>What stands in a circuit.</summary>
/// <remarks>From <see cref="Block"/> on they are drawn and not solved: an answer that would need them is refused in words.</remarks>
public enum ElementKind
{
    /// <summary>A resistor: terminals a and b.</summary>
    Resistor,

    /// <summary>A capacitor: terminals a and b.</summary>
    Capacitor,

    /// <summary>An inductor: terminals a (the dotted end) and b.</summary>
    Inductor,

    /// <summary>The coupling of two inductors: no terminals of its own.</summary>
    Coupling,

    /// <summary>An independent voltage source: plus and minus.</summary>
    VoltageSource,

    /// <summary>An independent current source: its current flows inside it from a to b.</summary>
    CurrentSource,

    /// <summary>A supply rail: an ideal voltage from ground to the node of its name.</summary>
    Rail,

    /// <summary>A voltage controlled by a voltage: plus, minus, control plus, control minus.</summary>
    VoltageControlledVoltage,

    /// <summary>A current controlled by a voltage: it flows inside from a to b; control plus, control minus.</summary>
    VoltageControlledCurrent,

    /// <summary>A voltage controlled by a current: plus, minus.</summary>
    CurrentControlledVoltage,

    /// <summary>A current controlled by a current: it flows inside from a to b.</summary>
    CurrentControlledCurrent,

    /// <summary>An npn transistor: c, b, e.</summary>
    Npn,

    /// <summary>A pnp transistor: c, b, e.</summary>
    Pnp,

    /// <summary>An n-channel enhancement field-effect transistor: d, g, s.</summary>
    Nmos,

    /// <summary>A p-channel enhancement field-effect transistor: d, g, s.</summary>
    Pmos,

    /// <summary>An n-channel junction field-effect transistor: d, g, s.</summary>
    Njfet,

    /// <summary>A p-channel junction field-effect transistor: d, g, s.</summary>
    Pjfet,

    /// <summary>A diode: anode, cathode.</summary>
    Diode,

    /// <summary>An operational amplifier: plus, minus, out.</summary>
    OpAmp,

    /// <summary>A buffer of gain one that delays: in, out.</summary>
    Delay,

    /// <summary>A box with a text: in, out.</summary>
    Block,

    /// <summary>An amplifier as a triangle: in, out.</summary>
    Amplifier,

    /// <summary>A point where signals are added and subtracted: plus, minus, out.</summary>
    SummingPoint,

    /// <summary>A transformer: primary a, primary b, secondary a, secondary b, and tap where it has one.</summary>
    Transformer,

    /// <summary>Four diodes as a rectifier: ac a, ac b, plus, minus.</summary>
    BridgeRectifier,

    /// <summary>A Zener diode or clamp: anode, cathode.</summary>
    Zener,

    /// <summary>The coil of a relay: a, b.</summary>
    RelayCoil,

    /// <summary>A contact of a relay: a, b.</summary>
    RelayContact,

    /// <summary>A fuse: a, b.</summary>
    Fuse,

    /// <summary>A lamp: a, b.</summary>
    Lamp,

    /// <summary>A loudspeaker: plus, minus.</summary>
    Loudspeaker,

    /// <summary>A switch: a, b.</summary>
    Switch,

    /// <summary>A thermistor: a, b.</summary>
    Thermistor,

    /// <summary>A contact that opens or closes at a temperature: a, b.</summary>
    Thermostat,

    /// <summary>A source of heat: node.</summary>
    HeatSource,

    /// <summary>A thermal resistance: a, b.</summary>
    ThermalPath,

    /// <summary>What stores heat: a node and the ambient, a and b.</summary>
    HeatCapacity,

    /// <summary>A heat sink: node.</summary>
    HeatSink,

    /// <summary>A socket: tip, sleeve.</summary>
    Jack,

    /// <summary>A terminal where the circuit meets the world: node.</summary>
    Terminal,
}
