using System.Numerics;
using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Feedback;

/// <summary>The fraction fed back and the loop gain at one frequency, from the open- and the closed-loop gain there with their phases: 1/A_CL − 1/A.</summary>
/// <remarks>Near crossover the difference of the magnitudes says nothing: with A lagging by 90° the magnitudes of 1/A_CL and 1/A add as squares.</remarks>
public sealed record ComplexFraction
{
    private ComplexFraction(Complex fraction, Complex loop) =>
        (Magnitude, Phase, LoopGain, LoopPhase, ReturnDifference) =
            (fraction.Magnitude, Degrees(fraction), loop.Magnitude, Degrees(loop), Complex.Abs(1 + loop));

    /// <summary>Magnitude of the fraction.</summary>
    [Symbol("B_fb")]
    public double Magnitude { get; }

    /// <summary>Its phase; negative lags.</summary>
    [Symbol("phi_B")]
    public Angle Phase { get; }

    /// <summary>Magnitude of the loop gain T = A·B.</summary>
    [Symbol("T")]
    public double LoopGain { get; }

    /// <summary>Its phase; −180° at a magnitude of 1 or more is an oscillator.</summary>
    [Symbol("phi_T")]
    public Angle LoopPhase { get; }

    /// <summary>|1 + T|: by so much errors after the gain are reduced at this frequency; below 1 they are raised.</summary>
    [Symbol("F")]
    public double ReturnDifference { get; }

    /// <summary>Solves A_CL = A/(1 + A·B) for B.</summary>
    /// <param name="A">Magnitude of the open-loop gain; greater than 0.</param>
    /// <param name="phi_A">Its phase; negative lags.</param>
    /// <param name="A_CL">Magnitude of the closed-loop gain; greater than 0.</param>
    /// <param name="phi_CL">Its phase; negative lags.</param>
    /// <example><code>ComplexFraction.Of(1000.ratio, (-90).deg, 23.6.ratio, (-1.35).deg)</code></example>
    /// <exception cref="ArgumentOutOfRangeException">A gain is not positive.</exception>
    [Worked("1/A_CL − 1/A in complex numbers; T = A·B")]
    public static ComplexFraction Of(Gain A, Angle phi_A, Gain A_CL, Angle phi_CL)
    {
        var open = Complex.FromPolarCoordinates(Guard.Positive(A).Ratio, phi_A.Radians);
        var closed = Complex.FromPolarCoordinates(Guard.Positive(A_CL).Ratio, phi_CL.Radians);
        var fraction = (1 / closed) - (1 / open);
        return new(fraction, open * fraction);
    }

    private static Angle Degrees(Complex z) => Angle.FromDegrees(z.Phase * 180 / Math.PI);
}
