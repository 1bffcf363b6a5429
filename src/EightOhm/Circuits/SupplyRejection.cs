using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>What of a rail's voltage arrives at a node.</summary>
/// <remarks>Two figures go by the name of rejection and lie the closed-loop gain apart: each is named here.</remarks>
public sealed class SupplyRejection
{
    private readonly Response<Gain>? gain;

    internal SupplyRejection(string rail, string node, Response<Gain> toOutput, Response<Gain>? gain) => (Rail, Node, ToOutput, this.gain) = (rail, node, toOutput, gain);

    /// <summary>The rail.</summary>
    public string Rail { get; }

    /// <summary>The node.</summary>
    public string Node { get; }

    /// <summary>The node's voltage over the rail's.</summary>
    public Response<Gain> ToOutput { get; }

    /// <summary>The rail's voltage over what of it is at the node.</summary>
    /// <param name="f">The frequency; within the response.</param>
    /// <returns>The rejection as a ratio, shown in decibels too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    /// <exception cref="InvalidOperationException">Nothing of the rail arrives.</exception>
    [Worked("one over the response from the rail to the node")]
    public Gain OutputReferred(Frequency f) => Over(Gain.FromRatio(1), f);

    /// <summary>The rail's voltage over the input voltage that would make the same at the node.</summary>
    /// <param name="f">The frequency; within the response.</param>
    /// <returns>The rejection as a ratio, shown in decibels too.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the response.</exception>
    /// <exception cref="InvalidOperationException">No input was named, or nothing of the rail arrives.</exception>
    [Worked("the response from the input over that from the rail")]
    public Gain InputReferred(Frequency f) => gain is null
        ? throw new InvalidOperationException("No input was named: ask for c.SupplyRejection(\"out\", from: \"in\").")
        : Over(gain.MagnitudeAt(f), f);

    /// <summary>"V+ to out".</summary>
    public override string ToString() => $"{Rail} to {Node}";

    private Gain Over(Gain numerator, Frequency f)
    {
        var there = ToOutput.MagnitudeAt(f);
        return there.Ratio > 0 ? numerator / there : throw new InvalidOperationException($"Nothing of {Rail} arrives at \"{Node}\": the rejection has no bound.");
    }
}
