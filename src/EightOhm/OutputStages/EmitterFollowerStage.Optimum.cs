using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using MathNet.Numerics;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>"Optimum bias" is not one number: each method here states its criterion.</content>
public sealed partial record EmitterFollowerStage
{
    // Idle currents looked at, from a hundredth of the equal-gain current up.
    private const int Looks = 97;

    /// <summary>The bias that makes the gain at zero and far out equal: V_T/I_q = R_E + r_int, by the closed form, for the outputs alone.</summary>
    /// <remarks>A dip of the gain remains in between; base currents, drivers and source are left aside.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no emitter resistor, so that no finite current does it.</exception>
    [Worked("the idle current at which the gains are equal: in closed form for the outputs alone, for the whole stage a bracketed root search over the logarithm of the current")]
    public FollowerBias EqualGainBias()
    {
        Guard.Positive(EmitterResistor, "R_E", "Without an emitter resistor the gain rises with the current everywhere, and no bias makes it equal.");
        return BiasedAt(EqualGainCurrent());
    }

    /// <summary>The bias that makes the gain at zero and at an output voltage equal, of the whole stage with drivers, droop and source.</summary>
    /// <param name="at">The output voltage; greater than 0 V. Both polarities are taken, by their mean.</param>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    /// <exception cref="ShortfallException">No bias between 1/1000 and 1000 times the closed form does it; the message says what was found.</exception>
    [Worked("the idle current at which the gains are equal: in closed form for the outputs alone, for the whole stage a bracketed root search over the logarithm of the current")]
    public FollowerBias EqualGainBias(ElectricPotential at)
    {
        var volts = Guard.Positive(at).Volts;
        double Difference(double logarithm)
        {
            var gain = BiasedAt(ElectricCurrent.FromAmperes(Math.Exp(logarithm))).Curve([-volts, 0, volts]).Gain.Y;
            return gain[1] - (gain[0] + gain[2]) / 2;
        }

        var (low, high) = (Math.Log(EqualGainCurrent().Amperes / 1000), Math.Log(EqualGainCurrent().Amperes * 1000));
        double least = Difference(low), most = Difference(high);
        if (!(least < 0 && most > 0) || !Brent.TryFindRoot(Difference, low, high, 1e-12, 200, out var u))
            throw new ShortfallException($"Equal gain at zero and at {QuantityFormat.Short(at)}", Math.Min(Math.Abs(least), Math.Abs(most)), $"no bias makes it; the gain at zero is higher by {Engineering.Text(least, "", 3, 3)} at {QuantityFormat.Short(ElectricCurrent.FromAmperes(Math.Exp(low)))} and by {Engineering.Text(most, "", 3, 3)} at {QuantityFormat.Short(ElectricCurrent.FromAmperes(Math.Exp(high)))}", "Take an output voltage at which one side is off.");
        return BiasedAt(ElectricCurrent.FromAmperes(Math.Exp(u)));
    }

    /// <summary>The bias of least static distortion at an output level: the lowest current at which it is least nearby.</summary>
    /// <remarks>Below it the crossover shows, above it the gain near zero is too high; far above, where both sides always conduct (class A),
    /// the distortion falls again, at low levels below this least: the result tells it for the highest current considered.
    /// Where there is no least in between, the choice is the end that is better.</remarks>
    /// <param name="level">Peak output voltage (not rms); greater than 0 V.</param>
    /// <param name="upTo">The highest idle current of one device to consider; four times the equal-gain current when not given.</param>
    /// <param name="highest">The highest harmonic counted; 2 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">The solver did not converge; the message gives its last state.</exception>
    [Worked("the idle current of least distortion: a scan over the logarithm of the current, then golden section")]
    public BiasChoice LeastDistortionBias(ElectricPotential level, ElectricCurrent? upTo = null, int highest = 10)
    {
        Guard.Positive(level);
        var top = Guard.Positive(upTo ?? 4 * EqualGainCurrent(), nameof(upTo)).Amperes;
        var bottom = Math.Min(top, EqualGainCurrent().Amperes) / 100;
        ElectricCurrent[] looks = [.. Generate.LogSpaced(Looks, Math.Log10(bottom), Math.Log10(top)).Select(i => ElectricCurrent.FromAmperes(i))];
        var thd = DistortionAt(looks, level, highest).Distortions;
        var k = 1;
        while (k < Looks - 1 && !(thd[k] <= thd[k - 1] && thd[k] < thd[k + 1]))
            k++;
        if (k == Looks - 1)
            return Choice(thd[^1] < thd[0] ? looks[^1] : looks[0]);
        double Thd(double logarithm) => DistortionAt([ElectricCurrent.FromAmperes(Math.Exp(logarithm))], level, highest).Distortions[0];
        // A minimum is flat: half the digits are all there are, so the width below is enough.
        var least = GoldenSection.Highest(u => -Thd(u), Math.Log(looks[k - 1].Amperes), Math.Log(looks[k + 1].Amperes), 1e-5);
        return Choice(ElectricCurrent.FromAmperes(Math.Exp((least.Low + least.High) / 2)));

        BiasChoice Choice(ElectricCurrent idle)
        {
            var bias = BiasedAt(idle);
            return new(bias, bias.Harmonics(level, highest).StaticThd, looks[^1], Ratio.FromDecimalFractions(thd[^1]), idle / EqualGainCurrent());
        }
    }

    private ElectricCurrent EqualGainCurrent() =>
        Crossover.EqualGainCurrent(Devices.Junction.ThermalVoltage(Junction), ElectricResistance.FromOhms(Math.Max(TotalEmitterResistance.Ohms, 1e-6)), default);
}
