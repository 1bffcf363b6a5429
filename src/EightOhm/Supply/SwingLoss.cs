using UnitsNet;

namespace EightOhm.Supply;

/// <summary>On which way from the rail to the output a loss lies.</summary>
public enum SwingPath
{
    /// <summary>On both ways: the emitter resistors.</summary>
    Both,

    /// <summary>On the way of the drive: the front end's filter, the second stage, the junctions of the followers.</summary>
    Drive,

    /// <summary>In the output transistor itself: what it needs across it to stay out of quasi-saturation.</summary>
    Output,
}

/// <summary>One line of a voltage-swing budget.</summary>
/// <param name="Name">What loses.</param>
/// <param name="Positive">How much of the positive rail.</param>
/// <param name="Negative">How much of the negative rail.</param>
/// <param name="On">On which way it lies.</param>
/// <param name="Why">Why so much.</param>
public sealed record SwingLoss(string Name, ElectricPotential Positive, ElectricPotential Negative, SwingPath On, string Why);
