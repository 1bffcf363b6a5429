using EightOhm.Devices;

namespace EightOhm.Sizing;

/// <summary>A first sizing of an amplifier: from what it must do to a choice of its parts, each with its reason. It always answers.</summary>
/// <remarks>
/// A beginning, not a verdict: the design's own requirements judge it. Pairs, sink and voltages are chosen at high mains, at the rated phases and loads; rails at
/// nominal mains, with a sine that lasts in all channels. Where the set has no device that is enough the nearest is taken, and said.
/// </remarks>
/// <example><code>FirstSizing.Of(new AmplifierTargets { Power = 60.W, Load = 4.Ohm }, DeviceSet.Shipped).Choices</code></example>
public sealed class FirstSizing
{
    internal FirstSizing(AmplifierTargets targets, IReadOnlyList<SizedChoice> choices, IReadOnlyList<SizedPart> parts, IReadOnlyList<string> missing, IReadOnlyList<string> remarks) =>
        (Targets, Choices, Parts, Missing, Remarks) = (targets, choices, parts, missing, remarks);

    /// <summary>The targets, with those filled in that others imply.</summary>
    public AmplifierTargets Targets { get; }

    /// <summary>Values by the names of a design's entries.</summary>
    public IReadOnlyList<SizedChoice> Choices { get; }

    /// <summary>Devices by role; a role for which the set has no device of the kind is not there, and said in <see cref="Missing"/>.</summary>
    public IReadOnlyList<SizedPart> Parts { get; }

    /// <summary>What is not enough, a sentence each; none when everything is.</summary>
    public IReadOnlyList<string> Missing { get; }

    /// <summary>What a target costs beyond what one would guess, a sentence each; none where there is nothing of that kind.</summary>
    public IReadOnlyList<string> Remarks { get; }

    /// <summary>Sizes an amplifier.</summary>
    /// <param name="targets">What it must do.</param>
    /// <param name="set">The devices to choose from.</param>
    /// <param name="basis">What is taken for granted; the usual when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The targets do not fit each other.</exception>
    public static FirstSizing Of(AmplifierTargets targets, DeviceSet set, SizingBasis? basis = null)
    {
        ArgumentNullException.ThrowIfNull(targets);
        ArgumentNullException.ThrowIfNull(set);
        return new SizingWork(targets, set, basis ?? new()).Answer();
    }

    /// <summary>Choices and parts with their reasons, a line each, what they cost and what is missing.</summary>
    public override string ToString() => string.Join('\n', [.. Choices.Select(c => c.ToString()), .. Parts.Select(p => p.ToString()), .. Remarks, .. Missing]);
}
