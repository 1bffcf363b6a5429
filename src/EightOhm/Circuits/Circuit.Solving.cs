using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Circuits;

/// <content>Answers for small signals: responses, impedances, noise, loops, poles, steps.</content>
public sealed partial class Circuit
{
    private const string Nodal = "modified nodal analysis: G. Ho, A. Ruehli, P. Brennan, IEEE Trans. Circuits and Systems 22 (1975), p. 504";

    private const string AdjointSource = "the adjoint network: S. Director, R. Rohrer, IEEE Trans. Circuit Theory 16 (1969), p. 318";

    private static readonly Temperature Room = Temperature.FromDegreesCelsius(25);

    private static readonly IReadOnlyList<Frequency> Wide = Sweep.Log(Frequency.FromHertz(1), Frequency.FromHertz(1e8), 50);

    private Circuit? ready;

    /// <summary>The response of a node's voltage to a signal.</summary>
    /// <remarks>Devices take part with their small-signal values at their currents; where a current is not given, the operating point is solved first.</remarks>
    /// <param name="from">Where the signal comes in: a voltage source, a rail, or a node; where the node has no voltage source to ground, an ideal one is put there.</param>
    /// <param name="to">The node whose voltage is asked for.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <param name="minus">The node against which it is taken; ground when not given.</param>
    /// <returns>The voltage over that of the signal: a gain with its phase.</returns>
    /// <exception cref="ArgumentException">A name is unknown; the nearest is offered. Or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer: a floating node, a ring of sources; they are named.</exception>
    /// <example><code>c.Response("in", "out")</code></example>
    [Worked("node equations at each frequency, many frequencies side by side", Source = Nodal)]
    public Response<Gain> Response(string from, string to, IReadOnlyList<Frequency>? frequencies = null, string minus = Ground)
    {
        var at = Excitation.At(this, from, Room.Kelvins);
        return at.IsCurrent
            ? throw new ArgumentException($"{from} is a current source: ask for c.Transresistance(\"{from}\", \"{to}\"), in ohms.", nameof(from))
            : Answer<Gain>(at, at.Watch(to, minus), frequencies);
    }

    /// <summary>The response of a node's voltage to a current source of the circuit.</summary>
    /// <param name="from">A current source.</param>
    /// <param name="to">The node whose voltage is asked for.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <param name="minus">The node against which it is taken; ground when not given.</param>
    /// <returns>The voltage over the current of the source, Ω, with its phase.</returns>
    /// <exception cref="ArgumentException">A name is unknown, or the source is no current source, or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer.</exception>
    [Worked("node equations at each frequency, many frequencies side by side", Source = Nodal)]
    public Response<ElectricResistance> Transresistance(string from, string to, IReadOnlyList<Frequency>? frequencies = null, string minus = Ground)
    {
        var at = Excitation.At(this, from, Room.Kelvins);
        return at.IsCurrent
            ? Answer<ElectricResistance>(at, at.Watch(to, minus), frequencies)
            : throw new ArgumentException($"{from} brings a voltage, not a current: ask for c.Response(\"{from}\", \"{to}\").", nameof(from));
    }

    /// <summary>The impedance that is seen at a node.</summary>
    /// <remarks>What a source connected there would see: a voltage source of the circuit that holds the node against ground is taken away.</remarks>
    /// <param name="node">The node.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <param name="minus">The other node of the port; ground when not given.</param>
    /// <returns>Ω, with its phase.</returns>
    /// <exception cref="ArgumentException">A name is unknown, both nodes are the same, or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer, or nothing is connected there.</exception>
    /// <example><code>c.Impedance("out").MagnitudeAt(20.kHz)</code></example>
    [Worked("the voltage of the port for a current of one ampere into it, by node equations at each frequency", Source = Nodal)]
    public Response<ElectricResistance> Impedance(string node, IReadOnlyList<Frequency>? frequencies = null, string minus = Ground)
    {
        var port = Node(node, nameof(node));
        if (port == Node(minus, nameof(minus)))
            throw new ArgumentException($"A port has two nodes; both are \"{port}\".", nameof(minus));
        var circuit = Ready();
        if (Excitation.SourceAt(circuit, port) is { Kind: ElementKind.VoltageSource } held)
        {
            var free = new Circuit();
            foreach (var e in circuit.elements.Where(e => e.Name != held.Name))
                free.Put(e);
            circuit = free;
            if (!circuit.HasNode(port))
                throw new InvalidOperationException($"Nothing but {held.Name} is on node \"{port}\": its impedance is infinite.");
        }

        Connections.Refuse(circuit, dc: false);
        var system = SmallSignalSystem.Of(circuit, Room.Kelvins);
        (int Row, double Sign)[] ends = [.. new[] { (system.Nodes[port], 1.0), (system.Nodes[circuit.Node(minus, nameof(minus))], -1.0) }.Where(e => e.Item1 >= 0)];
        return Answer<ElectricResistance>(new(circuit, system, [.. ends.Select(e => (e.Row, e.Sign, 0.0))], true), [.. ends.Select(e => (e.Row, e.Sign))], frequencies);
    }

    /// <summary>The noise at a node, by contribution, and referred to an input.</summary>
    /// <remarks>Resistors make thermal noise at the temperature given, inner resistances of devices at the device's; base and collector currents make shot noise.
    /// r_π, r_o and r_e are no resistors and make none.</remarks>
    /// <param name="to">The node.</param>
    /// <param name="from">The input that it is referred to, as in <see cref="Response"/>; none when not given: a source resistance is then a resistor of the circuit.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <param name="T">Temperature of the resistors; 25 °C when not given.</param>
    /// <returns>Densities, rms, and their parts.</returns>
    /// <exception cref="ArgumentException">A name is unknown, or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer, or nothing in it makes noise.</exception>
    /// <example><code>c.Noise("out", from: "in").Budget(1.kHz)</code></example>
    [Worked("each noise through the adjoint of the node equations: one solution a frequency for all of them", Source = AdjointSource)]
    public CircuitNoise Noise(string to, string? from = null, IReadOnlyList<Frequency>? frequencies = null, Temperature? T = null)
    {
        var kelvin = Guard.Positive(T ?? Room, nameof(T)).Kelvins;
        Excitation at;
        if (from is null)
        {
            var circuit = Ready();
            Connections.Refuse(circuit, dc: false);
            at = new(circuit, SmallSignalSystem.Of(circuit, kelvin), [], false);
        }
        else
        {
            at = Excitation.At(this, from, kelvin);
        }

        return CircuitNoise.Of(at, at.Watch(to, Ground), from, to, Response<Gain>.Checked(frequencies ?? Wide));
    }

    /// <summary>How the gain from one place to another hangs on each value, at one frequency.</summary>
    /// <param name="from">Where the signal comes in, as in <see cref="Response"/>.</param>
    /// <param name="to">The node whose voltage is asked for.</param>
    /// <param name="f">The frequency; greater than 0 Hz.</param>
    /// <returns>A line for each value, the greatest influence on the magnitude first.</returns>
    /// <exception cref="ArgumentException">A name is unknown.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer, or nothing of the signal arrives.</exception>
    /// <example><code>c.Sensitivities("in", "out", 20.kHz)</code></example>
    public IReadOnlyList<Sensitivity> Sensitivities(string from, string to, Frequency f)
    {
        var omega = Math.Tau * Guard.Positive(f).Hertz;
        var at = Excitation.At(this, from, Room.Kelvins);
        return Sensitivity.All(at, at.Watch(to, Ground), omega, $"from {from} to {to}");
    }

    /// <summary>What of each rail's voltage arrives at a node.</summary>
    /// <param name="to">The node.</param>
    /// <param name="from">The input; with it the rejection referred to the input can be told. Not given: the output-referred alone.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <returns>One for each rail, in their order.</returns>
    /// <exception cref="ArgumentException">A name is unknown, or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no rail or no one answer.</exception>
    /// <example><code>c.SupplyRejection("out")[0].OutputReferred(100.Hz)</code></example>
    public IReadOnlyList<SupplyRejection> SupplyRejection(string to, string? from = null, IReadOnlyList<Frequency>? frequencies = null)
    {
        if (Rails.Count == 0)
            throw new InvalidOperationException("The circuit has no rail: make one by c.Rail(\"V+\", 46.V).");
        var gain = from is null ? null : Response(from, to, frequencies);
        return [.. Rails.Select(rail => new SupplyRejection(rail, to, Response(rail, to, frequencies), gain))];
    }

    /// <summary>The return ratio of a loop that is opened at one device or controlled source; its crossovers and margins.</summary>
    /// <remarks>A transistor is opened at its base (or gate): the local feedback of its emitter resistor stays closed. An operational amplifier is opened at its input, a
    /// controlled source at its control. The impedances on both sides stay as they are. T is positive where the feedback is negative: the closed loop goes by 1/(1 + T).
    /// Source: H. W. Bode, Network Analysis and Feedback Amplifier Design, ch. 4.</remarks>
    /// <param name="at">The device or controlled source; the first one in the circuit that lies in a loop with a gain above one when not given: the first stage, when the circuit is put in from its input to its output, and so the outer loop.</param>
    /// <param name="frequencies">Rising, greater than 0 Hz; from 1 Hz to 100 MHz when not given.</param>
    /// <returns>The return ratio, its margins, and whether the closed loop is stable.</returns>
    /// <exception cref="ArgumentException">A name is unknown or no place where a loop can be opened, or the frequencies are not in order.</exception>
    /// <exception cref="InvalidOperationException">The circuit has no one answer, or nothing in it lies in a loop with a gain above one.</exception>
    /// <example><code>c.ReturnRatio("Q1")</code></example>
    [Worked("what comes back to the opened control for a signal of one there, by node equations", Source = "H. W. Bode, Network Analysis and Feedback Amplifier Design, ch. 4")]
    public ReturnRatio ReturnRatio(string? at = null, IReadOnlyList<Frequency>? frequencies = null)
    {
        var circuit = Ready();
        Connections.Refuse(circuit, dc: false);
        var system = SmallSignalSystem.Of(circuit, Room.Kelvins);
        if (at is not null && system.Openings.All(o => o.Element != at))
        {
            var there = circuit[at];
            throw new ArgumentException($"A loop is not opened at {there.Name}: name a transistor, an operational amplifier or a controlled source{(system.Openings.Count > 0 ? $", here {Lists.And([.. system.Openings.Select(o => o.Element)])}" : "")}.", nameof(at));
        }

        return Circuits.ReturnRatio.Of(system, at, Response<Gain>.Checked(frequencies ?? Wide));
    }

    /// <summary>The poles of the circuit: the natural frequencies at which it rings or settles by itself.</summary>
    /// <remarks>Up to 60 unknowns (nodes, and currents of sources and inductors). Each is checked by putting it back into the equations. A delay has no finite number of poles.</remarks>
    /// <returns>The poles, the slowest first; independent sources rest.</returns>
    /// <exception cref="InvalidOperationException">The circuit is too large or holds a delay, or the poles could not be verified.</exception>
    /// <example><code>c.Poles()</code></example>
    public IReadOnlyList<ComplexRoot> Poles()
    {
        var circuit = Ready();
        Connections.Refuse(circuit, dc: false);
        return ComplexRoot.List(SystemRoots.Of(SmallSignalSystem.Of(circuit, Room.Kelvins), "poles"));
    }

    /// <summary>The zeros of the response from one place to another.</summary>
    /// <remarks>As <see cref="Poles"/>; a zero where a pole is too cancels it.</remarks>
    /// <param name="from">Where the signal comes in, as in <see cref="Response"/>.</param>
    /// <param name="to">The node whose voltage is asked for.</param>
    /// <returns>The zeros, the slowest first.</returns>
    /// <exception cref="ArgumentException">A name is unknown.</exception>
    /// <exception cref="InvalidOperationException">The circuit is too large or holds a delay, the zeros could not be verified, or nothing of the signal arrives.</exception>
    public IReadOnlyList<ComplexRoot> Zeros(string from, string to)
    {
        var at = Excitation.At(this, from, Room.Kelvins);
        return ComplexRoot.List(SystemRoots.Of(at.System.Bordered(at.Drive, at.Watch(to, Ground)), "zeros"));
    }

    /// <summary>The answer of a node's voltage to a step of one volt (of one ampere from a current source).</summary>
    /// <param name="from">Where the step comes in, as in <see cref="Response"/>; it rests at 0 before.</param>
    /// <param name="to">The node whose voltage is asked for.</param>
    /// <param name="until">How long; greater than 0 s.</param>
    /// <param name="points">How many values, the first at 0 s; 2 to 100 000.</param>
    /// <returns>The voltage over time.</returns>
    /// <exception cref="ArgumentException">A name is unknown.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The time or the number is out of range.</exception>
    /// <exception cref="InvalidOperationException">The circuit holds a delay, or has no one answer.</exception>
    /// <example><code>c.StepResponse("in", "out", 5.us)</code></example>
    [Worked("the equations stepped through time by a Radau method of order 5, each step checked by two of half its length", Source = "E. Hairer & G. Wanner, Solving Ordinary Differential Equations II, sec. IV.5 and IV.8")]
    public Waveform<ElectricPotential> StepResponse(string from, string to, Duration until, int points = 501)
    {
        var end = Guard.Positive(until).Seconds;
        Guard.Between(points, 2, 100_000);
        var at = Excitation.At(this, from, Room.Kelvins);
        return StepSolver.Solve(at.System, at.Drive, at.Watch(to, Ground), end, points);
    }

    /// <summary>The circuit with all device currents known: itself, or what its operating point says.</summary>
    internal Circuit Ready() => ready ??= elements.Any(e => e.Bias is null && e.Kind is (ElementKind.Npn or ElementKind.Pnp or ElementKind.Diode)) ? OperatingPoint().Circuit : this;

    /// <summary>A copy with an ideal voltage source from a node to ground.</summary>
    internal (Circuit Circuit, Element Source) WithSource(string node)
    {
        var copy = Changed(i => elements[i]);
        var name = $"the source at \"{node}\"";
        return (copy, copy.Put(new Element(ElementKind.VoltageSource, name, [new("plus", node), new("minus", Ground)], ElectricPotential.Zero)));
    }

    private static Response<T> Answer<T>(Excitation at, IReadOnlyList<(int Col, double Sign)> watch, IReadOnlyList<Frequency>? frequencies)
        where T : struct
    {
        var hertz = Response<Gain>.Checked(frequencies ?? Wide);
        return Swept<T>(at.System, at.Drive, watch, hertz);
    }

    /// <summary>A response by a sweep, which knows itself between its points.</summary>
    internal static Response<T> Swept<T>(LinearSystem system, IReadOnlyList<(int Row, double G, double C)> drive, IReadOnlyList<(int Col, double Sign)> watch, double[] hertz)
        where T : struct
    {
        var values = new Complex[hertz.Length];
        SweepSolver.Solve(system, [.. hertz.Select(f => Math.Tau * f)], drive, null, new OutputTaker(values, watch));
        return new(hertz, values, f =>
        {
            var (x, _) = SingleSolver.At(system, new Complex(0, Math.Tau * f), drive, null);
            var sum = Complex.Zero;
            foreach (var (col, sign) in watch)
                sum += sign * x[col];
            return sum;
        });
    }
}
