using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>A transfer function as a value: poles, zeros, a gain and a delay, kept as factors.</summary>
/// <remarks>Never an expanded polynomial, so a pole of 1 Hz and one of 100 MHz both keep their digits. Sums and loops find their new roots
/// together and put each in; sound to order 12 and beyond. The gain carries whatever unit its maker gave it (a plain ratio, or Ω for volts from
/// amperes). Made by <see cref="Pole"/>, <see cref="Zero"/>, <see cref="Pair"/> and their like; joined by · for stages in series, + for
/// branches in parallel and <see cref="ClosedWith"/> for feedback. Equality is by value.</remarks>
public sealed partial class TransferFunction : IEquatable<TransferFunction>
{
    /// <summary>The most poles or zeros that one may have.</summary>
    public const int MaxOrder = 40;

    // In rad/s; complex ones stand beside their conjugates.
    private readonly Complex[] zeros, poles;

    // The factor of ∏(s − zero)/∏(s − pole).
    private readonly double factor;

    // In seconds.
    private readonly double delay;

    private TransferFunction(double factor, IEnumerable<Complex> zeros, IEnumerable<Complex> poles, double delay)
    {
        (this.zeros, this.poles) = Shortened(zeros, poles);
        (this.factor, this.delay) = (factor, delay);
        if (!double.IsFinite(factor))
            throw new InvalidOperationException("The gain of this transfer function is beyond what can be computed with: look at the units of its frequencies and gains.");
        if (Math.Max(this.zeros.Length, this.poles.Length) > MaxOrder)
            throw new InvalidOperationException($"This transfer function has {this.poles.Length} poles and {this.zeros.Length} zeros; {MaxOrder} are allowed. Leave out those far above the crossover.");
    }

    /// <summary>The poles, the lowest first.</summary>
    public IReadOnlyList<TransferRoot> Poles => TransferRoot.Of(poles);

    /// <summary>The zeros, the lowest first.</summary>
    public IReadOnlyList<TransferRoot> Zeros => TransferRoot.Of(zeros);

    /// <summary>How many poles there are, those of a pair counted as two.</summary>
    public int Order => poles.Length;

    /// <summary>The delay.</summary>
    [Symbol("t_d")]
    public Duration Delay => Duration.FromSeconds(delay);

    /// <summary>Whether there are no more zeros than poles: only then is there a response to a step.</summary>
    public bool IsProper => zeros.Length <= poles.Length;

    /// <summary>Whether all poles lie in the left half-plane. Of a closed loop: whether the loop is stable.</summary>
    public bool IsStable => poles.All(p => p.Real < 0);

    /// <summary>Whether it is nothing at every frequency.</summary>
    public bool IsZero => factor == 0;

    internal IReadOnlyList<Complex> PolesInS => poles;

    internal IReadOnlyList<Complex> ZerosInS => zeros;

    internal double Factor => factor;

    internal double DelaySeconds => delay;

    /// <summary>Whether the other is the same function, factor by factor.</summary>
    /// <param name="other">The other function.</param>
    public bool Equals(TransferFunction? other) =>
        other is not null && factor.Equals(other.factor) && delay.Equals(other.delay)
        && Ordered(zeros).SequenceEqual(Ordered(other.zeros)) && Ordered(poles).SequenceEqual(Ordered(other.poles));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TransferFunction);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(factor, delay, zeros.Length, poles.Length);

    /// <inheritdoc/>
    public override string ToString()
    {
        if (IsZero)
            return "nothing at any frequency";
        List<string> parts = [];
        if (!poles.Contains(Complex.Zero) && !zeros.Contains(Complex.Zero))
            parts.Add($"gain {QuantityFormat.Short(AtZero())} at 0 Hz");
        if (poles.Length > 0)
            parts.Add($"poles {string.Join(", ", Poles)}");
        if (zeros.Length > 0)
            parts.Add($"zeros {string.Join(", ", Zeros)}");
        if (delay > 0)
            parts.Add($"delay {QuantityFormat.Short(Delay)}");
        return string.Join("; ", parts);
    }

    private static IOrderedEnumerable<Complex> Ordered(Complex[] roots) => roots.OrderBy(r => r.Real).ThenBy(r => r.Imaginary);

    // A pole and a zero in exactly the same place leave, but not in the right half-plane: there the pole still grows, though the output does not show it.
    private static (Complex[] Zeros, Complex[] Poles) Shortened(IEnumerable<Complex> zeros, IEnumerable<Complex> poles)
    {
        List<Complex> above = [], below = [.. poles];
        foreach (var zero in zeros)
            if (!(zero.Real <= 0 && below.Remove(zero)))
                above.Add(zero);
        return ([.. above], [.. below]);
    }
}
