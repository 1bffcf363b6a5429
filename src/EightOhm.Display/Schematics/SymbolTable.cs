using EightOhm.Circuits;

namespace EightOhm.Display.Schematics;

/// <summary>Which symbol stands for an element, and which of its terminals is which pin.</summary>
internal static class SymbolTable
{
    /// <summary>The symbol of an element, its pins named by the element's terminals; null for what has no place of its own in a drawing.</summary>
    public static Symbol? Of(Element element)
    {
        var terminals = element.Terminals.Select(t => t.Name).ToArray();
        return element.Kind switch
        {
            ElementKind.Coupling or ElementKind.Rail => null,
            ElementKind.Terminal => Named(OtherSymbols.Terminal, terminals),
            ElementKind.HeatSink => Named(OtherSymbols.HeatSink, terminals),
            ElementKind.HeatSource => Named(OtherSymbols.HeatSource, terminals),
            ElementKind.Jack => Named(OtherSymbols.Jack, terminals),
            ElementKind.Npn => Named(TransistorSymbols.Npn, terminals),
            ElementKind.Pnp => Named(TransistorSymbols.Pnp, terminals),
            ElementKind.Nmos => Named(TransistorSymbols.NMosfet, terminals),
            ElementKind.Pmos => Named(TransistorSymbols.PMosfet, terminals),
            ElementKind.Njfet => Named(TransistorSymbols.NJfet, terminals),
            ElementKind.Pjfet => Named(TransistorSymbols.PJfet, terminals),
            ElementKind.OpAmp => Named(TransistorSymbols.OpAmp, terminals),
            ElementKind.Amplifier => Named(TransistorSymbols.Amplifier, terminals),
            ElementKind.SummingPoint => Named(OtherSymbols.SummingPoint, terminals),
            ElementKind.BridgeRectifier => Named(OtherSymbols.Bridge, terminals),
            ElementKind.Transformer when terminals.Contains("tap") => Named(OtherSymbols.TappedTransformer, [terminals[0], terminals[1], terminals[2], "tap", terminals[3]]),
            ElementKind.Transformer => Named(OtherSymbols.Transformer, terminals),
            ElementKind.VoltageControlledVoltage => Named(OtherSymbols.Controlled(givesCurrent: false), terminals),
            ElementKind.VoltageControlledCurrent => Named(OtherSymbols.Controlled(givesCurrent: true), terminals),
            ElementKind.Block or ElementKind.Delay => BlockSymbol.Of(element),
            var kind => Named(TwoPole(kind), terminals),
        };
    }

    private static Symbol TwoPole(ElementKind kind) => kind switch
    {
        ElementKind.Resistor or ElementKind.ThermalPath => TwoPoleSymbols.Resistor,
        ElementKind.Capacitor or ElementKind.HeatCapacity => TwoPoleSymbols.Capacitor,
        ElementKind.Inductor => TwoPoleSymbols.Inductor,
        ElementKind.VoltageSource => TwoPoleSymbols.VoltageSource,
        ElementKind.CurrentSource => TwoPoleSymbols.CurrentSource,
        ElementKind.CurrentControlledVoltage => TwoPoleSymbols.ControlledVoltage,
        ElementKind.CurrentControlledCurrent => TwoPoleSymbols.ControlledCurrent,
        ElementKind.Diode => TwoPoleSymbols.Diode,
        ElementKind.Zener => TwoPoleSymbols.ZenerDiode,
        ElementKind.RelayCoil => TwoPoleSymbols.RelayCoil,
        ElementKind.RelayContact => TwoPoleSymbols.MakeContact,
        ElementKind.Thermostat => TwoPoleSymbols.Thermostat,
        ElementKind.Fuse => TwoPoleSymbols.Fuse,
        ElementKind.Lamp => TwoPoleSymbols.Lamp,
        ElementKind.Loudspeaker => TwoPoleSymbols.Loudspeaker,
        ElementKind.Switch => TwoPoleSymbols.Switch,
        ElementKind.Thermistor => TwoPoleSymbols.Thermistor,
        _ => throw new ArgumentException($"No symbol is known for the kind {kind}.", nameof(kind)),
    };

    // The pins of a symbol stand in the order of the element's terminals.
    private static Symbol Named(Symbol symbol, IReadOnlyList<string> terminals) =>
        symbol with { Pins = [.. symbol.Pins.Zip(terminals, (pin, name) => pin with { Name = name })] };
}
