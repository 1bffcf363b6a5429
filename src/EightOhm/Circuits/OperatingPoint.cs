using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>How a device stands.</summary>
public enum DeviceState
{
    /// <summary>It conducts in the usual way.</summary>
    Active,

    /// <summary>It carries next to nothing: less than 10 nA.</summary>
    Off,

    /// <summary>Its collector-base junction conducts, or an amplifier's output stands at its end.</summary>
    Saturated,
}

/// <summary>A device at the operating point; magnitudes for either polarity.</summary>
/// <param name="Name">The device.</param>
/// <param name="Current">Collector current, or the current of a diode.</param>
/// <param name="BaseCurrent">Base current; null for a diode.</param>
/// <param name="BaseEmitterVoltage">Between its terminals, inner resistances and their drop in it; the voltage of a diode.</param>
/// <param name="CollectorEmitterVoltage">Between its terminals; null for a diode.</param>
/// <param name="Dissipation">The heat made in it.</param>
/// <param name="State">How it stands.</param>
public sealed record DevicePoint(
    string Name,
    [property: Symbol("I_C")] ElectricCurrent Current,
    [property: Symbol("I_B")] ElectricCurrent? BaseCurrent,
    [property: Symbol("V_BE")] ElectricPotential BaseEmitterVoltage,
    [property: Symbol("V_CE")] ElectricPotential? CollectorEmitterVoltage,
    [property: Symbol("P_D")] Power Dissipation,
    DeviceState State);

/// <summary>The dc operating point of a circuit.</summary>
/// <remarks>A point that the equations allow need not be one that the circuit stays in: <see cref="IsStable"/> tells, and <see cref="Off"/> and <see cref="Saturated"/> name the devices
/// of one that has latched.</remarks>
public sealed class OperatingPoint
{
    private readonly Dictionary<string, double> volts, amperes;

    internal OperatingPoint(Circuit circuit, Dictionary<string, double> volts, Dictionary<string, double> amperes, IReadOnlyList<DevicePoint> devices, IReadOnlyList<string> saturated, string method)
    {
        (Circuit, this.volts, this.amperes, Devices, Method) = (circuit, volts, amperes, devices, method);
        Off = [.. devices.Where(d => d.State == DeviceState.Off).Select(d => d.Name)];
        Saturated = [.. devices.Where(d => d.State == DeviceState.Saturated).Select(d => d.Name), .. saturated];
        (IsStable, Growing) = PointStability.Of(circuit);
    }

    /// <summary>The circuit with its devices at these currents, for small signals.</summary>
    public Circuit Circuit { get; }

    /// <summary>Transistors and diodes, in the order of the circuit.</summary>
    public IReadOnlyList<DevicePoint> Devices { get; }

    /// <summary>The devices that carry next to nothing.</summary>
    public IReadOnlyList<string> Off { get; }

    /// <summary>The devices that are saturated, amplifiers at an end of their output among them.</summary>
    public IReadOnlyList<string> Saturated { get; }

    /// <summary>Whether the circuit stays there: small deviations die away; null where that cannot be told.</summary>
    public bool? IsStable { get; }

    /// <summary>The natural frequencies with which deviations grow; none where it is stable.</summary>
    public IReadOnlyList<ComplexRoot> Growing { get; }

    /// <summary>How it was found.</summary>
    public string Method { get; }

    /// <summary>The dc voltage of a node.</summary>
    /// <param name="node">The node.</param>
    /// <param name="minus">The node against which it is taken; ground when not given.</param>
    /// <returns>V.</returns>
    /// <exception cref="ArgumentException">There is no such node; the nearest is offered.</exception>
    [Worked("Newton's method on the node equations, junctions exponential")]
    public ElectricPotential Voltage(string node, string minus = Circuit.Ground) =>
        ElectricPotential.FromVolts(volts[Circuit.Node(node, nameof(node))] - volts[Circuit.Node(minus, nameof(minus))]);

    /// <summary>The dc current of an element: through a resistor, inductor, diode or source from its first terminal to its second; of a transistor its collector's, a magnitude; of an amplifier out of its output.</summary>
    /// <param name="element">The element.</param>
    /// <returns>A; for a voltage source negative where it delivers.</returns>
    /// <exception cref="ArgumentException">There is no such element, or it carries no dc current of its own.</exception>
    [Worked("Newton's method on the node equations, junctions exponential")]
    public ElectricCurrent Current(string element)
    {
        ArgumentNullException.ThrowIfNull(element);
        return amperes.TryGetValue(Circuit[element].Name, out var i)
            ? ElectricCurrent.FromAmperes(i)
            : throw new ArgumentException($"{element} carries no dc current of its own.", nameof(element));
    }

    /// <summary>The figures in a sentence.</summary>
    public override string ToString() =>
        $"operating point of {Devices.Count} device{(Devices.Count == 1 ? "" : "s")}{(Off.Count > 0 ? $"; off: {Lists.And(Off)}" : "")}{(Saturated.Count > 0 ? $"; saturated: {Lists.And(Saturated)}" : "")}{IsStable switch { false => $"; the circuit does NOT stay there ({string.Join("; ", Growing)})", null => "; whether the circuit stays there cannot be told", _ => "" }}";
}
