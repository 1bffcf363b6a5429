using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>Three frequencies that are all called the unity-gain frequency or the bandwidth, each under its own name.</summary>
/// <param name="OpenLoopUnity">Where the open-loop gain is one: nothing happens there in the amplifier as it is used.</param>
/// <param name="LoopCrossover">Where the loop gain is one: stability is decided about it, and loop gain at any lower frequency is about this over that.</param>
/// <param name="ClosedLoopBandwidth">Where the closed-loop gain has fallen by 3 dB from that at 0 Hz.</param>
public sealed record UnityFrequencies(
    [property: Symbol("f_ol")] Frequency? OpenLoopUnity,
    [property: Symbol("f_x")] Frequency? LoopCrossover,
    [property: Symbol("f_CL")] Frequency? ClosedLoopBandwidth)
{
    /// <summary>Finds the three.</summary>
    /// <param name="A">Open-loop gain; proper.</param>
    /// <param name="B">What is fed back; with A proper.</param>
    /// <returns>The three frequencies; one that there is not is left out, such as the bandwidth of an unstable loop.</returns>
    /// <exception cref="InvalidOperationException">A transfer function is improper or nothing.</exception>
    /// <example><code>UnityFrequencies.Of(TransferFunction.Integrator(26.6.MHz), TransferFunction.Constant(1 / 23.6))</code></example>
    [Worked("the highest crossing of one of A, of A·B, and of √2·|A/(1 + A·B)| over its value at 0 Hz, by a scan and root finding")]
    public static UnityFrequencies Of(TransferFunction A, TransferFunction B)
    {
        ArgumentNullException.ThrowIfNull(A);
        ArgumentNullException.ThrowIfNull(B);
        var closed = A.ClosedWith(B);
        return new(Highest(A), Highest(A * B), closed.IsStable ? closed.Bandwidth() : null);
    }

    private static Frequency? Highest(TransferFunction function) => LoopStability.Of(function).Crossover;
}
