using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>A pole or a zero of a transfer function, or a conjugate pair of them, by what is measured of it.</summary>
/// <param name="Frequency">Its distance from the origin of the s plane over 2π: the corner of a real one, the natural frequency of a pair.</param>
/// <param name="Damping">−Re/|s|: 1 for a real one in the left half-plane, 0 on the imaginary axis, negative in the right half-plane, where a pole grows without end.</param>
/// <param name="IsPair">Whether it stands for two, one the conjugate of the other.</param>
public sealed record TransferRoot(
    [property: Symbol("f_0")] Frequency Frequency,
    [property: Symbol("zeta")] double Damping,
    bool IsPair)
{
    /// <summary>Whether it lies in the right half-plane.</summary>
    public bool IsRight => Damping < 0;

    /// <inheritdoc/>
    public override string ToString() => Frequency.Hertz == 0
        ? "at 0 Hz"
        : $"{QuantityFormat.Short(Frequency)}{(IsPair ? $" (pair, ζ {QuantityFormat.Short(Damping)})" : "")}{(IsRight ? " in the right half-plane" : "")}";

    /// <summary>The list of roots as they are read: pairs once, the lowest first.</summary>
    internal static IReadOnlyList<TransferRoot> Of(IEnumerable<Complex> roots) =>
        [.. roots.Where(r => r.Imaginary >= 0).OrderBy(r => r.Magnitude).Select(Of)];

    private static TransferRoot Of(Complex root) => new(
        Frequency.FromHertz(root.Magnitude / (2 * Math.PI)),
        root == Complex.Zero ? 0 : root.Imaginary == 0 ? -Math.Sign(root.Real) : -root.Real / root.Magnitude,
        root.Imaginary != 0);
}
