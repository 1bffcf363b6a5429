using EightOhm.Explaining;
using EightOhm.Quantities;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace EightOhm.Thermal;

/// <summary>A layer of a device: what it stores, and the resistance to the next layer (or to the case).</summary>
/// <param name="C">Heat capacity; greater than 0 J/K.</param>
/// <param name="R">To the next layer; greater than 0 K/W.</param>
public readonly record struct LadderRung(
    [property: Symbol("C"), Called("heat capacity")] HeatCapacity C,
    [property: Symbol("R"), Called("to the next layer")] ThermalResistance R);

/// <summary>Heat through layers in a row, from the junction to where the temperature is held: each layer is a thing with mass and has a temperature.</summary>
/// <remarks>This is the form to which a sink may be joined. Both forms: M. E. Van Valkenburg, Introduction
/// to Modern Network Synthesis, on RC networks after Foster and after Cauer.</remarks>
public sealed class CauerLadder
{
    /// <summary>Makes a ladder from its rungs, the junction first.</summary>
    /// <param name="rungs">One or more; every element greater than zero.</param>
    /// <exception cref="ArgumentNullException">There is no list.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no rung, or an element is not positive.</exception>
    public CauerLadder(IReadOnlyList<LadderRung> rungs)
    {
        ArgumentNullException.ThrowIfNull(rungs);
        Guard.Positive(rungs.Count, "the number of rungs");
        for (var i = 0; i < rungs.Count; i++)
        {
            Guard.Positive(rungs[i].C.Si, $"the heat capacity of rung {i + 1} in J/K", "A layer of negative mass does not exist: the list is of another form, or was fitted without that condition.");
            Guard.Positive(rungs[i].R, $"the resistance of rung {i + 1}", "A layer of negative resistance does not exist: the list is of another form, or was fitted without that condition.");
        }

        Rungs = [.. rungs];
    }

    /// <summary>Makes a ladder from pairs, the junction first.</summary>
    /// <param name="rungs">One or more; every element greater than zero.</param>
    public CauerLadder(params (HeatCapacity C, ThermalResistance R)[] rungs)
        : this([.. rungs.Select(x => new LadderRung(x.C, x.R))])
    {
    }

    /// <summary>The layers, the junction first.</summary>
    public IReadOnlyList<LadderRung> Rungs { get; }

    /// <summary>From the junction to the end, when nothing changes any more.</summary>
    [Explaining.Symbol("R_th")]
    public ThermalResistance Steady => ThermalResistance.FromSi(Rungs.Sum(r => r.R.Si));

    /// <summary>All that the layers store.</summary>
    [Explaining.Symbol("C_th")]
    public HeatCapacity Capacity => HeatCapacity.FromSi(Rungs.Sum(r => r.C.Si));

    /// <summary>This ladder with another one after it: the device on its insulator and sink, say.</summary>
    /// <param name="next">What follows.</param>
    public CauerLadder Then(CauerLadder next)
    {
        ArgumentNullException.ThrowIfNull(next);
        return new([.. Rungs, .. next.Rungs]);
    }

    /// <summary>The same seen from the junction as a sum of exponentials.</summary>
    /// <remarks>By the singular values of the bidiagonal matrix √(1/(R·C)) whose square is the ladder's symmetric matrix.
    /// A mode of layers so far from the junction that a double holds no share of theirs in it is no term.</remarks>
    /// <exception cref="InvalidOperationException">The singular values were not found.</exception>
    [Worked("the modes of the ladder: singular values of the square root of its symmetric form")]
    public FosterImpedance ToFoster()
    {
        var n = Rungs.Count;
        var half = Matrix<double>.Build.Dense(n, n);
        for (var i = 0; i < n; i++)
        {
            var g = Math.Sqrt(1 / Rungs[i].R.Si);
            half[i, i] = g / Math.Sqrt(Rungs[i].C.Si);
            if (i + 1 < n)
                half[i, i + 1] = -g / Math.Sqrt(Rungs[i + 1].C.Si);
        }

        var taken = half.Svd();
        var c = Rungs[0].C.Si;
        return new FosterImpedance([.. Enumerable.Range(0, n)
            .Select(m => (Rate: taken.S[m] * taken.S[m], Share: taken.VT[m, 0]))
            .Select(x => new FosterTerm(ThermalResistance.FromSi(x.Share * x.Share / (c * x.Rate)), Duration.FromSeconds(1 / x.Rate)))
            .Where(t => t.R >= Reach<ThermalResistance>.Least)
            .OrderBy(t => t.Tau.Seconds)]);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join(Environment.NewLine, Rungs.Select((r, i) => FormattableString.Invariant($"{i + 1}: {QuantityFormat.Short(r.C)}, {QuantityFormat.Short(r.R)}")));
}
