using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The ledger from the peak of the output up to the rail at its trough: each loss by name, for either polarity.</summary>
/// <remarks>
/// Two ways lead from the rail to the output and both must have room. The drive comes from the second stage through the junctions of the
/// followers; the output transistor itself must stay out of quasi-saturation. The rail needed is that of the needier way.
/// The polarities differ, because npn and pnp transistors, the second stage's two ends and the front end's filters do.
/// A ledger is not changed: each line makes a new one.
/// </remarks>
public sealed class SwingBudget
{
    private SwingBudget(ElectricPotential V_p, ElectricCurrent I_p, IReadOnlyList<SwingLoss> losses) => (Peak, PeakCurrent, Losses) = (V_p, I_p, losses);

    /// <summary>The peak output voltage.</summary>
    public ElectricPotential Peak { get; }

    /// <summary>The peak output current at that moment.</summary>
    public ElectricCurrent PeakCurrent { get; }

    /// <summary>The losses in the order in which they were written.</summary>
    public IReadOnlyList<SwingLoss> Losses { get; }

    /// <summary>The rail that the positive peak needs at its trough.</summary>
    public ElectricPotential NeededPositive => Peak + Lost(l => l.Positive, out _);

    /// <summary>The rail that the negative peak needs at its trough, as a magnitude.</summary>
    public ElectricPotential NeededNegative => Peak + Lost(l => l.Negative, out _);

    /// <summary>Opens a ledger.</summary>
    /// <param name="V_p">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="I_p">Peak output current at the moment of the peak voltage, which is the load's for a resistor; greater than 0 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public static SwingBudget For(ElectricPotential V_p, ElectricCurrent I_p) => new(Guard.Positive(V_p), Guard.Positive(I_p), []);

    /// <summary>A loss that is the same for both polarities.</summary>
    /// <param name="name">What loses; not empty and not yet in the ledger.</param>
    /// <param name="loss">How much; 0 V or more.</param>
    /// <param name="why">Why so much, in a few words.</param>
    /// <param name="on">Where it lies; on the way of the drive unless said otherwise.</param>
    /// <exception cref="ArgumentException">The name is empty or already there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative.</exception>
    public SwingBudget Less(string name, ElectricPotential loss, string why, SwingPath on = SwingPath.Drive) => Less(name, loss, loss, why, on);

    /// <summary>A loss that differs between the polarities.</summary>
    /// <param name="name">What loses; not empty and not yet in the ledger.</param>
    /// <param name="positive">How much of the positive rail; 0 V or more.</param>
    /// <param name="negative">How much of the negative rail; 0 V or more.</param>
    /// <param name="why">Why so much, in a few words.</param>
    /// <param name="on">Where it lies; on the way of the drive unless said otherwise.</param>
    /// <exception cref="ArgumentException">The name is empty or already there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A loss is negative.</exception>
    public SwingBudget Less(string name, ElectricPotential positive, ElectricPotential negative, string why, SwingPath on = SwingPath.Drive)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(why);
        if (Losses.Any(l => string.Equals(l.Name, name, StringComparison.Ordinal)))
            throw new ArgumentException($"\"{name}\" stands in the ledger twice. Give each loss a name of its own.", nameof(name));
        Guard.NotNegative(positive, hint: "A loss is what the rail loses; a gain, such as a boosted front-end rail, makes its line smaller.");
        Guard.NotNegative(negative, hint: "A loss is a magnitude for either polarity.");
        return new SwingBudget(Peak, PeakCurrent, [.. Losses, new SwingLoss(name, positive, negative, on, why)]);
    }

    /// <summary>The emitter resistors, at the ledger's peak current: on both ways.</summary>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="pairs">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public SwingBudget LessEmitterResistors(ElectricResistance R_E, int pairs) => Less(
        "emitter resistors",
        SwingLosses.EmitterResistors(PeakCurrent, R_E, pairs),
        $"{QuantityFormat.Short(PeakCurrent)} through {QuantityFormat.Short(R_E)} of {pairs} in parallel",
        SwingPath.Both);

    /// <summary>Holds the ledger against rails at their trough.</summary>
    /// <param name="rails">The rails at the moment of their own peak, at the trough of the ripple, at the mains that counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rail is not above the peak of the output itself.</exception>
    public SwingVerdict Against(Rails rails)
    {
        ArgumentNullException.ThrowIfNull(rails);
        Above(rails.Positive, "the positive rail");
        Above(rails.Negative, "the negative rail");
        return new SwingVerdict(this, rails);
    }

    /// <summary>The peak at which the output clips on a rail: losses that are not resistive held, the emitter resistors' going with the current.</summary>
    /// <param name="rails">The rails at their trough.</param>
    /// <returns>The lesser of both polarities.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A rail is below the losses.</exception>
    public ElectricPotential ClipPeak(Rails rails)
    {
        ArgumentNullException.ThrowIfNull(rails);
        var load = Peak / PeakCurrent;
        ElectricPotential Side(ElectricPotential rail, Func<SwingLoss, ElectricPotential> side)
        {
            var series = Sum(side, SwingPath.Both);
            return Clipping.Peak(rail, Lost(side, out _) - series, series / PeakCurrent, load);
        }

        ElectricPotential p = Side(rails.Positive, l => l.Positive), n = Side(rails.Negative, l => l.Negative);
        return p < n ? p : n;
    }

    // What is lost on the needier of the two ways, and which that is.
    internal ElectricPotential Lost(Func<SwingLoss, ElectricPotential> side, out SwingPath decides)
    {
        ElectricPotential drive = Sum(side, SwingPath.Drive), output = Sum(side, SwingPath.Output);
        decides = output > drive ? SwingPath.Output : SwingPath.Drive;
        return Sum(side, SwingPath.Both) + (output > drive ? output : drive);
    }

    private ElectricPotential Sum(Func<SwingLoss, ElectricPotential> side, SwingPath path)
    {
        var sum = default(ElectricPotential);
        foreach (var loss in Losses.Where(l => l.On == path))
            sum += side(loss);
        return sum;
    }

    private void Above(ElectricPotential rail, string name)
    {
        if (!(rail > Peak))
            Guard.Refuse(name, rail, $"above the peak of the output, {QuantityFormat.Short(Peak)}", $"This ledger needs {QuantityFormat.Short(NeededPositive)} and {QuantityFormat.Short(NeededNegative)}; raise the rails or ask for less power.");
    }
}
