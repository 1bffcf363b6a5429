using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The budget from the peak of the output up to the rail at its minimum: each loss by name, for either polarity.</summary>
/// <remarks>
/// Two ways lead from the rail to the output and both must have room. The drive comes from the second stage through the junctions of the
/// followers; the output transistor itself must stay out of quasi-saturation. The rail needed is that of the needier way.
/// The polarities differ, because npn and pnp transistors, the second stage's two ends and the front end's filters do.
/// A budget is not changed: each line makes a new one.
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

    /// <summary>The rail that the positive peak needs at its minimum.</summary>
    public ElectricPotential NeededPositive => Peak + Lost(l => l.Positive, out _);

    /// <summary>The rail that the negative peak needs at its minimum, as a magnitude.</summary>
    public ElectricPotential NeededNegative => Peak + Lost(l => l.Negative, out _);

    /// <summary>Opens a budget.</summary>
    /// <param name="V_p">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="I_p">Peak output current at the moment of the peak voltage, which is the load's for a resistor; greater than 0 A.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is not positive.</exception>
    public static SwingBudget For(ElectricPotential V_p, ElectricCurrent I_p) => new(Guard.Positive(V_p), Guard.Positive(I_p), []);

    /// <summary>A loss that is the same for both polarities.</summary>
    /// <param name="name">What loses; not empty and not yet in the budget.</param>
    /// <param name="loss">How much; 0 V or more.</param>
    /// <param name="why">Why so much, in a few words.</param>
    /// <param name="on">Where it lies; on the way of the drive unless said otherwise.</param>
    /// <exception cref="ArgumentException">The name is empty or already there.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative.</exception>
    public SwingBudget Less(string name, ElectricPotential loss, string why, SwingPath on = SwingPath.Drive) => Less(name, loss, loss, why, on);

    /// <summary>A loss that differs between the polarities.</summary>
    /// <param name="name">What loses; not empty and not yet in the budget.</param>
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
            throw new ArgumentException($"\"{name}\" stands in the budget twice. Give each loss a name of its own.", nameof(name));
        Guard.NotNegative(positive, hint: "A loss is what the rail loses; a gain, such as a boosted front-end rail, makes its line smaller.");
        Guard.NotNegative(negative, hint: "A loss is a magnitude for either polarity.");
        return new SwingBudget(Peak, PeakCurrent, [.. Losses, new SwingLoss(name, positive, negative, on, why)]);
    }

    /// <summary>The emitter resistors, at the budget's peak current: on both ways.</summary>
    /// <param name="R_E">Emitter resistor of one transistor; 0 Ω or more.</param>
    /// <param name="pairs">Pairs in parallel; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public SwingBudget LessEmitterResistors(ElectricResistance R_E, int pairs) => Less(
        "emitter resistors",
        SwingLosses.EmitterResistors(PeakCurrent, R_E, pairs),
        $"{QuantityFormat.Short(PeakCurrent)} through {QuantityFormat.Short(R_E)} of {pairs} in parallel",
        SwingPath.Both);

    /// <summary>Holds the budget against rails at their minimum.</summary>
    /// <param name="rails">The rails at the moment of their own peak, at the valley of the ripple, at the mains that counts.</param>
    /// <returns>The verdict, with what is missing in <see cref="SwingVerdict.Short"/>.</returns>
    [Worked("each loss taken from each rail at its minimum; the nearer one clips first")]
    public SwingVerdict Against(Rails rails) => new(this, rails ?? throw new ArgumentNullException(nameof(rails)));

    /// <summary>The peak at which the output clips on a rail: losses that are not resistive held, the emitter resistors' going with the current.</summary>
    /// <param name="rails">The rails at their minimum.</param>
    /// <returns>The lesser of both polarities.</returns>
    /// <exception cref="ShortfallException">The losses take a whole rail.</exception>
    [Worked("the rails at their minimum less the losses, those of emitter resistors in proportion to the current")]
    public ElectricPotential ClipPeak(Rails rails)
    {
        ArgumentNullException.ThrowIfNull(rails);
        Leaves(rails.Positive, l => l.Positive, "The positive rail");
        Leaves(rails.Negative, l => l.Negative, "The negative rail");
        return ElectricPotential.FromVolts(ClipVolts(rails));
    }

    // The same, below zero where the losses take more than a rail: for searches that come by there.
    internal double ClipVolts(Rails rails)
    {
        var load = Peak / PeakCurrent;
        double Side(ElectricPotential rail, Func<SwingLoss, ElectricPotential> side)
        {
            var series = Sum(side, SwingPath.Both);
            var left = rail - (Lost(side, out _) - series);
            return left > default(ElectricPotential) ? Clipping.Peak(rail, rail - left, series / PeakCurrent, load).Volts : left.Volts;
        }

        return Math.Min(Side(rails.Positive, l => l.Positive), Side(rails.Negative, l => l.Negative));
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

    private void Leaves(ElectricPotential rail, Func<SwingLoss, ElectricPotential> side, string name)
    {
        var lost = Lost(side, out _) - Sum(side, SwingPath.Both);
        if (rail < lost)
            throw new ShortfallException(name, lost - rail, $"it stands at {QuantityFormat.Short(rail)} and the losses alone take {QuantityFormat.Short(lost)}", "Raise the rails, or lower the losses.");
    }
}
