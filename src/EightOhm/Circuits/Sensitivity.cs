using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Circuits;

/// <summary>How a gain hangs on one value of the circuit: for small changes, relative change over relative change.</summary>
/// <remarks>0.9 says that 1 % more of the value makes 0.9 % more of the magnitude.</remarks>
public sealed class Sensitivity
{
    private Sensitivity(string name, double magnitude, Angle phase) => (Name, Magnitude, Phase) = (name, magnitude, phase);

    /// <summary>The value: an element, or a figure of a device, such as "Q1 I_C".</summary>
    public string Name { get; }

    /// <summary>Relative change of the magnitude over relative change of the value.</summary>
    [Symbol("S")]
    public double Magnitude { get; }

    /// <summary>Change of the phase over relative change of the value; a hundredth of it for a change of 1 %.</summary>
    [Symbol("S_phi")]
    public Angle Phase { get; }

    /// <summary>"R1: 0.9".</summary>
    public override string ToString() => $"{Name}: {QuantityFormat.Short(Magnitude)}";

    /// <summary>dH/H over dp/p of all values: −yᵀ·(p·dA/dp)·x / H.</summary>
    internal static IReadOnlyList<Sensitivity> All(Excitation at, IReadOnlyList<(int Col, double Sign)> watch, double omega, string way)
    {
        var (system, s) = (at.System, new Complex(0, omega));
        var (x, y) = SingleSolver.At(system, s, at.Drive, watch);
        var h = Complex.Zero;
        foreach (var (col, sign) in watch)
            h += sign * x[col];
        if (h == Complex.Zero)
            throw new InvalidOperationException($"Nothing of the signal arrives {way}: a share of nothing has no value.");
        var sums = new Complex[system.Parameters.Count];
        foreach (var (stamp, parameter, weight) in system.Tags)
        {
            var entry = system.Stamps[stamp];
            sums[parameter] -= weight * y[entry.Row] * (entry.G + (s * entry.C)) * x[entry.Col] / h;
        }

        return [.. sums.Select((sum, i) => new Sensitivity(system.Parameters[i], sum.Real, Angle.FromRadians(sum.Imaginary)))
            .OrderByDescending(v => Math.Abs(v.Magnitude)).ThenBy(v => v.Name, StringComparer.Ordinal)];
    }
}
