using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Thermal;

/// <summary>One exponential of a thermal impedance.</summary>
/// <param name="R">How much of the steady resistance; greater than 0 K/W.</param>
/// <param name="Tau">Its time constant; greater than 0 s.</param>
public readonly record struct FosterTerm(
    [property: Symbol("R"), Called("share of the resistance")] ThermalResistance R,
    [property: Symbol("tau"), Called("time constant")] Duration Tau);

/// <summary>The thermal impedance of a device as makers print it: a sum of exponentials, each with a resistance and a time constant.</summary>
/// <remarks>It says how the junction answers to its own heat while the far end is held, and nothing else. Its terms are no layers: between them
/// there is no place and no temperature, so nothing can be joined there. To put a sink behind it, take <see cref="ToLadder"/>.</remarks>
[RecordName("foster-impedance")]
public sealed partial class FosterImpedance
{
    private const string Source = "IXYS, M##501-12io1 datasheet, Issue 3, sec. 8.3: Z(t) = Σ r·(1 − exp(−t/τ))";

    private readonly double[] _r, _tau;

    /// <summary>Makes an impedance from its terms.</summary>
    /// <param name="terms">One or more; every R and τ greater than zero.</param>
    /// <exception cref="ArgumentNullException">There is no list.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no term, or an element is not positive.</exception>
    public FosterImpedance(IReadOnlyList<FosterTerm> terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        Guard.Positive(terms.Count, "the number of terms");
        for (var i = 0; i < terms.Count; i++)
        {
            Guard.Positive(terms[i].R, $"the resistance of term {i + 1}", "A device that cools itself when heated does not exist: fit the curve with positive terms.");
            Guard.Positive(terms[i].Tau, $"the time constant of term {i + 1}");
        }

        Terms = [.. terms];
        _r = [.. terms.Select(t => t.R.Si)];
        _tau = [.. terms.Select(t => t.Tau.Seconds)];
    }

    /// <summary>Makes an impedance from pairs of a resistance and a time constant.</summary>
    /// <param name="terms">One or more; every R and τ greater than zero.</param>
    public FosterImpedance(params (ThermalResistance R, Duration Tau)[] terms)
        : this([.. terms.Select(x => new FosterTerm(x.R, x.Tau))])
    {
    }

    /// <summary>The exponentials.</summary>
    public IReadOnlyList<FosterTerm> Terms { get; }

    /// <summary>When nothing changes any more: the sum of the resistances.</summary>
    [Formula(Source, Symbol = "R_th")]
    [RecordName("foster-impedance.steady")]
    public ThermalResistance Steady => Sum(Terms, x => x.R);

    internal ReadOnlySpan<double> R => _r;

    internal ReadOnlySpan<double> Tau => _tau;

    /// <summary>The rise per watt, a time after a constant power began: Σ R·(1 − exp(−t/τ)).</summary>
    /// <param name="t">Since the power began; 0 s or more.</param>
    /// <returns>The rise per watt, in K/W.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    [Formula(Source, Symbol = "Z_th")]
    [RecordName("foster-impedance.at")]
    public ThermalResistance At(Duration t)
    {
        Guard.NotNegative(t);
        return Sum(Terms, x => x.R * (1 - Exp(-(t / x.Tau))));
    }

    /// <summary>The answer to a power that swings as a sine: the size of the swing in K for 1 W peak, and how far it lags.</summary>
    /// <param name="f">Frequency of that sine of the power, which is not the signal's: a half-wave has many; 0 Hz or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is negative.</exception>
    [Worked("the complex impedance Σ R/(1 + jωτ) at that frequency")]
    public ThermalSine Sine(Frequency f)
    {
        var w = 2 * Math.PI * Guard.NotNegative(f).Hertz;
        var z = Complex.Zero;
        for (var i = 0; i < _r.Length; i++)
            z += _r[i] / new Complex(1, w * _tau[i]);
        return new(ThermalResistance.FromSi(z.Magnitude), Angle.FromDegrees(-z.Phase * 180 / Math.PI));
    }

    /// <summary>The junction's rise above the far end for a power that repeats for ever, once the beginning is forgotten.</summary>
    /// <param name="heat">One period of the power.</param>
    [Worked("each exponential under the repeating power in closed form, summed")]
    public JunctionRise Under(PeriodicHeat heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        return PeriodicRise.Of(this, heat);
    }

    /// <summary>The same as a ladder of layers with mass, to which a sink can be joined.</summary>
    /// <remarks>By bidiagonalisation (Golub and Kahan) of the diagonal of decay rates, begun with the terms' shares: every element comes out as a
    /// product, none as a difference, so all are positive and keep their digits. Terms whose time constants agree to 1 in 10⁹ are taken as one.
    /// The layers are those of the ladder with the same answer, which the device's real layers need not be.</remarks>
    /// <exception cref="InvalidOperationException">Two time constants are too near each other to be told apart.</exception>
    [Worked("the ladder that has these modes, layer by layer from the junction")]
    public CauerLadder ToLadder() => LadderSynthesis.Of(_r, _tau);

    /// <inheritdoc/>
    public override string ToString() => string.Join(Environment.NewLine, Terms.Select((t, i) => FormattableString.Invariant($"{i + 1}: {QuantityFormat.Short(t.R)}, {QuantityFormat.Short(t.Tau)}")));
}

/// <summary>The answer to a power that swings as a sine.</summary>
/// <param name="Swing">Peak rise for 1 W peak.</param>
/// <param name="Lag">How far the temperature is behind the power.</param>
public readonly record struct ThermalSine(ThermalResistance Swing, Angle Lag);
