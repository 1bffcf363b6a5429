using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Supply;

/// <summary>The two rails of an amplifier, each as a magnitude from the common point (not rail to rail).</summary>
public sealed record Rails
{
    /// <summary>Makes a pair of rails.</summary>
    /// <param name="positive">The positive rail; greater than 0 V.</param>
    /// <param name="negative">The magnitude of the negative rail; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rail is not positive.</exception>
    public Rails(ElectricPotential positive, ElectricPotential negative)
    {
        Positive = Guard.Positive(positive);
        Negative = Guard.Positive(negative, hint: "Give the negative rail as a magnitude: 45.V for −45 V.");
    }

    /// <summary>Makes two rails of the same magnitude.</summary>
    /// <param name="each">Each rail; greater than 0 V.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rail is not positive.</exception>
    public Rails(ElectricPotential each)
        : this(each, each)
    {
    }

    /// <summary>The positive rail.</summary>
    public ElectricPotential Positive { get; }

    /// <summary>The negative rail, as a magnitude.</summary>
    public ElectricPotential Negative { get; }

    /// <summary>From rail to rail: what a transistor that is fully off has across it at full swing.</summary>
    public ElectricPotential RailToRail => Positive + Negative;
}
