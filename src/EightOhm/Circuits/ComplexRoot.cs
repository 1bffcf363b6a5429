using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>A pole or a zero: a real one, or a pair of complex ones.</summary>
[Called("root")]
public sealed class ComplexRoot
{
    private ComplexRoot(Complex s) => S = s;

    /// <summary>The root, rad/s; of a pair the one above the real axis.</summary>
    public Complex S { get; }

    /// <summary>|s|/2π.</summary>
    [Symbol("f")]
    public Frequency Frequency => Frequency.FromHertz(S.Magnitude / Math.Tau);

    /// <summary>The quality of a pair, |s|/(2·|Re s|); null for a real root, and for a pair on the imaginary axis, whose quality has no bound.</summary>
    [Symbol("Q")]
    public double? Quality => IsPair && S.Real != 0 ? S.Magnitude / (2 * Math.Abs(S.Real)) : null;

    /// <summary>Whether it stands for a pair.</summary>
    public bool IsPair => S.Imaginary != 0;

    /// <summary>Whether it lies in the left half plane: what a pole there rings with dies away.</summary>
    public bool IsLeft => S.Real < 0;

    /// <summary>"1.59 kHz", "pair at 10 kHz, quality 0.707", "right half plane, 50 MHz".</summary>
    public override string ToString() =>
        $"{(IsPair ? "pair at " : "")}{QuantityFormat.Short(Frequency)}{(Quality is { } q ? $", quality {QuantityFormat.Short(q)}" : "")}{(IsLeft ? "" : S.Real > 0 ? ", right half plane" : S.Magnitude == 0 ? "" : ", on the imaginary axis")}";

    /// <summary>Roots in the order of their frequencies, each pair once.</summary>
    internal static IReadOnlyList<ComplexRoot> List(IEnumerable<Complex> roots) =>
        [.. roots.Where(s => s.Imaginary >= 0).OrderBy(s => s.Magnitude).ThenBy(s => s.Real).Select(s => new ComplexRoot(s))];
}
