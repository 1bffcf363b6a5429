using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;

namespace EightOhm.Feedback;

/// <content>Stages in series, branches in parallel, feedback.</content>
public sealed partial class TransferFunction
{
    private const int DelayOrder = 6;

    // The poles of Padé's quotient for e^(−x), order 6: a coefficient is (12 − k)!·6!/(12!·k!·(6 − k)!). Its zeros are their mirror images.
    private static readonly Complex[] UnitDelay = PolynomialRoots.Of([1, 1.0 / 2, 5.0 / 44, 1.0 / 66, 1.0 / 792, 1.0 / 15840, 1.0 / 665280]);

    /// <summary>Stages in series: the gains multiply, the delays add.</summary>
    public static TransferFunction operator *(TransferFunction a, TransferFunction b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        return a.IsZero || b.IsZero ? Constant(0) : new(a.factor * b.factor, [.. a.zeros, .. b.zeros], [.. a.poles, .. b.poles], a.delay + b.delay);
    }

    /// <summary>A gain in front.</summary>
    public static TransferFunction operator *(Gain gain, TransferFunction a) => Constant(gain) * a;

    /// <summary>A gain behind.</summary>
    public static TransferFunction operator *(TransferFunction a, Gain gain) => a * Constant(gain);

    /// <summary>A factor in front.</summary>
    public static TransferFunction operator *(double factor, TransferFunction a) => Constant(factor) * a;

    /// <summary>A factor behind.</summary>
    public static TransferFunction operator *(TransferFunction a, double factor) => a * Constant(factor);

    /// <summary>One over the other: its poles become zeros.</summary>
    /// <exception cref="InvalidOperationException">The divisor is nothing, or has a longer delay than the dividend: the quotient would know the future.</exception>
    public static TransferFunction operator /(TransferFunction a, TransferFunction b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (b.IsZero)
            throw new InvalidOperationException("There is no quotient by a transfer function that is nothing at every frequency.");
        if (b.delay > a.delay)
            throw new InvalidOperationException($"The divisor is later by {QuantityFormat.Short(b.Delay - a.Delay)}: the quotient would have to know the future. Leave the delay out of it.");
        return new(a.factor / b.factor, [.. a.zeros, .. b.poles], [.. a.poles, .. b.zeros], a.delay - b.delay);
    }

    /// <summary>One over a transfer function, times a factor.</summary>
    public static TransferFunction operator /(double factor, TransferFunction a) => Constant(factor) / a;

    /// <summary>Branches in parallel: the outputs add.</summary>
    /// <exception cref="InvalidOperationException">The delays differ, or nothing is left of the sum.</exception>
    public static TransferFunction operator +(TransferFunction a, TransferFunction b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        if (a.IsZero || b.IsZero)
            return a.IsZero ? b : a;
        if (a.delay != b.delay)
            throw new InvalidOperationException($"Branches in parallel of different delays, {QuantityFormat.Short(a.Delay)} and {QuantityFormat.Short(b.Delay)}, have no finite number of zeros: use WithoutDelay on both first.");
        // Poles that both have stand once in the common denominator.
        List<Complex> onlyB = [.. b.poles], onlyA = [];
        foreach (var pole in a.poles)
            if (!onlyB.Remove(pole))
                onlyA.Add(pole);
        var (lead, zeros) = FactoredSum.Roots(a.factor, [.. a.zeros, .. onlyB], b.factor, [.. b.zeros, .. onlyA]);
        return new(lead, zeros, [.. a.poles, .. onlyB], a.delay);
    }

    /// <summary>A branch taken away from another.</summary>
    public static TransferFunction operator -(TransferFunction a, TransferFunction b) => a + (-1 * b);

    /// <summary>A function and a number.</summary>
    public static TransferFunction operator +(double number, TransferFunction a) => Constant(number) + a;

    /// <summary>This with negative feedback around it: A/(1 + A·B).</summary>
    /// <remarks>Its poles are the closed loop's: <see cref="IsStable"/> of the result is the loop's verdict, exact and without a margin. A delay inside stands as a
    /// quotient of order 6, since with a true delay there are endlessly many poles. Margins: <see cref="LoopStability.Of"/>.</remarks>
    /// <param name="B">What is fed back of the output: <c>Constant(B_fb)</c> for a divider.</param>
    /// <returns>The closed loop.</returns>
    /// <exception cref="InvalidOperationException">The loop has no limit: at high frequencies its gain comes to exactly −1.</exception>
    /// <example><code>(1000 * TransferFunction.Pole(1.kHz)).ClosedWith(TransferFunction.Constant(0.1))</code></example>
    public TransferFunction ClosedWith(TransferFunction B)
    {
        ArgumentNullException.ThrowIfNull(B);
        var (a, b) = (WithoutDelay(), B.WithoutDelay());
        if (a.IsZero || b.IsZero)
            return a;
        var (lead, closed) = FactoredSum.Roots(1, [.. a.poles, .. b.poles], a.factor * b.factor, [.. a.zeros, .. b.zeros]);
        return new(a.factor / lead, [.. a.zeros, .. b.poles], closed, 0);
    }

    /// <summary>This loop gain closed upon itself: 1/(1 + T), by which errors after the gain are divided; above 1 where the loop raises them.</summary>
    /// <returns>The sensitivity over frequency.</returns>
    public TransferFunction Sensitivity() => Constant(1).ClosedWith(this);

    /// <summary>The same with its delay as a quotient of polynomials of order 6, all-pass as the delay is.</summary>
    /// <returns>A transfer function with six poles and six zeros more and no delay; itself where there is none.</returns>
    public TransferFunction WithoutDelay() => delay == 0
        ? this
        : new(factor, [.. zeros, .. UnitDelay.Select(p => -p / delay)], [.. poles, .. UnitDelay.Select(p => p / delay)], 0);
}
