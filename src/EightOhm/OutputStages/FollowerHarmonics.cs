using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Harmonics of a follower stage at one bias and level. Static: a LOWER BOUND at high frequency.</summary>
public sealed record FollowerHarmonics
{
    internal FollowerHarmonics(FollowerBias bias, ElectricPotential level, DistortionOverBias over)
    {
        (Level, InputPeak, Fundamental, StaticThd) = (level, over.InputPeak[0].Y, over.Fundamental[0].Y, over.Thd[0].Y);
        Shares = over.Each[0];
        if (bias.Stage.TransitionFrequency is { } f_T && bias.DriverCurrent is { } standing)
            ChargeLimit = ChargeControl.LimitFrequency(standing, level / bias.Stage.Load, f_T);
    }

    /// <summary>Peak output voltage (not rms).</summary>
    [Symbol("V_p")]
    public ElectricPotential Level { get; }

    /// <summary>Peak of the sine at the input.</summary>
    [Symbol("V_in")]
    public ElectricPotential InputPeak { get; }

    /// <summary>Peak of the output's fundamental.</summary>
    [Symbol("V_1")]
    public ElectricPotential Fundamental { get; }

    /// <summary>The harmonics from the second up, root of the sum of squares, over the fundamental. A lower bound at high frequency.</summary>
    [Symbol("THD")]
    public Ratio StaticThd { get; }

    /// <summary>The frequency from which on the charge of the outputs asks for more than the drivers' standing current, so that the static harmonics say little;
    /// none where the stage has no drivers or no transition frequency was given.</summary>
    [Symbol("f_Q")]
    public Frequency? ChargeLimit { get; }

    /// <summary>Each harmonic over the fundamental, signed against the fundamental's peak, from the second up, as plain numbers.</summary>
    public IReadOnlyList<double> Shares { get; }

    /// <summary>One harmonic over the fundamental, without sign.</summary>
    /// <param name="n">Its number; 2 up to the highest asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">That harmonic was not asked for.</exception>
    [Worked("the harmonic of the Fourier series over its fundamental")]
    public Ratio Harmonic(int n) => Ratio.FromDecimalFractions(Math.Abs(Shares[Guard.Between(n, 2, Shares.Count + 1) - 2]));

    /// <summary>In one line, with what it leaves out.</summary>
    public override string ToString() =>
        $"{QuantityFormat.Short(StaticThd)} at {QuantityFormat.Short(Level)} peak, static: a lower bound at high frequency"
        + (ChargeLimit is { } f ? $"; from {QuantityFormat.Short(f)} on the outputs' charge takes more than the drivers' standing current." : ".");
}
