using EightOhm.Display.Figures;
using EightOhm.Feedback;
using EightOhm.OutputNetworks;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <content>Loops of transfer functions over frequency and on the complex plane, and the output's impedance.</content>
public static partial class Charts
{
    private const int PointsPerDecade = 40;

    /// <summary>Magnitude and phase of loop gains, one above the other: crossovers and margins marked, and a frequency of interest.</summary>
    /// <param name="loops">The loop gains with their names; one or more. Margins are marked of the first.</param>
    /// <param name="from">The lowest frequency; greater than 0 Hz.</param>
    /// <param name="to">The highest; above the lowest.</param>
    /// <param name="at">A frequency to mark, such as 20 kHz; none when not given.</param>
    /// <exception cref="ArgumentException">There is no loop.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The frequencies are not in order.</exception>
    public static StackedFigures Bode(IReadOnlyList<(string Name, TransferFunction Loop)> loops, Frequency from, Frequency to, Frequency? at = null)
    {
        ArgumentNullException.ThrowIfNull(loops);
        if (loops.Count == 0)
            throw new ArgumentException("Give at least one loop gain with a name.", nameof(loops));
        var f = Sweep.Log(from, to, PointsPerDecade);
        double[] hertz = [.. f.Select(x => x.Hertz)];
        LineSeries[] Lines(Func<TransferFunction, Frequency, double> value) => [.. loops.Select(l => new LineSeries(l.Name, hertz, f.Select(x => value(l.Loop, x))))];
        var first = loops[0].Loop;
        var stability = LoopStability.Of(first);
        return LoopFigures(
            "Loop gain",
            Lines((t, x) => t.Magnitude(x).Decibels),
            Lines((t, x) => t.Phase(x).Degrees),
            stability.IsStable,
            [.. stability.GainCrossings.Where(c => c.Frequency >= from && c.Frequency <= to).Select(c => (c.Frequency, first.Phase(c.Frequency), (Angle?)c.PhaseMargin))],
            at is { } f_at ? (f_at, first.Magnitude(f_at)) : null);
    }

    /// <summary>A loop gain on the complex plane, with the point −1 and the circle of gain one.</summary>
    /// <param name="loop">The loop gain.</param>
    /// <exception cref="InvalidOperationException">The loop gain is improper, or nowhere one.</exception>
    public static Figure Nyquist(TransferFunction loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        var crossings = LoopStability.Of(loop).GainCrossings;
        if (crossings.Count == 0)
            throw new InvalidOperationException("This loop gain is nowhere one: there is nothing to see near −1.");
        // From where the gain is two or so; below that the curve leaves the picture.
        var turn = Sweep.Log(crossings[0].Frequency / 2, crossings[^1].Frequency * 300, 60).Select(loop.Value).Where(InPlane).ToArray();
        return LoopPlane("Loop gain on the complex plane", turn, [.. crossings.Select(c => Place(loop.Value(c.Frequency), c.Frequency))]);
    }

    /// <summary>Output impedance over frequency: loop, coil and cable, and what it comes to at the loudspeaker.</summary>
    /// <param name="impedances">As <see cref="OutputNetwork.ImpedanceOver"/> gives them; two or more.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    public static Figure OutputImpedance(IReadOnlyList<OutputImpedance> impedances)
    {
        ArgumentNullException.ThrowIfNull(impedances);
        if (impedances.Count < 2)
            throw new ArgumentException("Give at least two frequencies: OutputNetwork.ImpedanceOver makes them.", nameof(impedances));
        double[] f = [.. impedances.Select(z => z.Frequency.Hertz)];
        LineSeries Line(string name, Func<OutputImpedance, ElectricResistance> part) => new(name, f, impedances.Select(z => part(z).Ohms));
        List<LineSeries> lines = [Line("loop", z => z.Loop), Line("coil", z => z.Coil)];
        if (impedances.All(z => z.Cable.Ohms > 0))
            lines.Add(Line("cable", z => z.Cable));
        lines.Add(Line("at the loudspeaker", z => z.AtLoudspeaker));
        lines.RemoveAll(l => l.Y.Any(y => !(y > 0)));
        return Figure.Line("Output impedance by its parts", Axis.Log("frequency", "Hz"), Axis.Log("impedance", "Ω"), [.. lines]);
    }

    /// <summary>How the closed loop's poles move with the capacitor at the terminals: the least damping of them, and the edge of stability.</summary>
    /// <param name="loads">As <see cref="OutputNetwork.WithCapacitors"/> gives them; two or more capacitors.</param>
    /// <exception cref="ArgumentException">There are fewer than two capacitors.</exception>
    public static Figure RootMovement(CapacitiveLoads loads) => RootMovement(("", loads));

    /// <summary>The same of several networks or loads, side by side.</summary>
    /// <param name="cases">Each with its name; each of two or more capacitors.</param>
    /// <exception cref="ArgumentException">There is no case, or one with fewer than two capacitors.</exception>
    public static Figure RootMovement(params IReadOnlyList<(string Name, CapacitiveLoads Loads)> cases)
    {
        ArgumentNullException.ThrowIfNull(cases);
        if (cases.Any(c => c.Loads.Loads.Count < 2))
            throw new ArgumentException("Give at least two capacitors: OutputNetwork.WithCapacitors takes them.", nameof(cases));
        return Figure.Line(
            "Least damping of the closed loop's poles",
            Axis.Log("capacitor", "F"),
            new Axis("damping"),
            [.. cases.Select(c => new LineSeries(c.Name, c.Loads.Loads.Select(l => l.Capacitance.Farads), c.Loads.Loads.Select(l => l.LeastDamping)))]) with
        {
            Limits = [Limit.Horizontal(0, "oscillates below")],
            Marks = [.. cases.Select(c => c.Loads.Worst).Select(worst => new Mark(worst.Capacitance.Farads, worst.LeastDamping, $"hardest on the loop: {QuantityFormat.Short(worst.Capacitance, 3)}"))],
        };
    }
}
