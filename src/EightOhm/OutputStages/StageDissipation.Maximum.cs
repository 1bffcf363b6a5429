using EightOhm.Explaining;
using EightOhm.Numerics;
using EightOhm.Quantities;
using EightOhm.Samples;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <content>Sweeps, the sine of maximum dissipation, the peak within the cycle, music, and the dissipation over time.</content>
public sealed partial record StageDissipation
{
    private const int LevelSteps = 32;

    /// <summary>The powers at each of many levels, for a chart.</summary>
    /// <param name="levels">Peak voltages at the load; each from 0 V to <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public IReadOnlyList<StagePowers> Over(IEnumerable<ElectricPotential> levels, ElectricResistance Z, Angle phi) => [.. levels.Select(v => At(v, Z, phi))];

    /// <summary>The powers at evenly spaced levels from 0 V to full swing.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="points">How many levels; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public IReadOnlyList<StagePowers> Sweep(ElectricResistance Z, Angle phi, int points = 101)
    {
        Guard.Between(points, 2, 100_000);
        var full = FullSwing(Z, phi);
        return Over(Enumerable.Range(0, points).Select(i => full * (i / (points - 1.0))), Z, phi);
    }

    /// <summary>The sine of maximum dissipation into a resistor: the level at which the transistors dissipate most, with the powers there.</summary>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("the level of maximum dissipation, the rail as it is at each: a scan of levels, then golden section")]
    public StagePowers Maximum(ElectricResistance R) => Maximum(R, 0.deg);

    /// <summary>The sine of maximum dissipation: the level, from idle to full swing, at which the transistors dissipate most, with the powers there.</summary>
    /// <remarks>It grows with |φ| at every level, so over loads of one magnitude the maximum has the largest phase.</remarks>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <returns>The powers at that level, at the stage's mains.</returns>
    /// <example><code>var most = stage.Dissipation.AtMains(10.percent).Maximum(4.Ohm, 45.deg).Total;</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the supply's line does not reach the current of full swing.</exception>
    /// <exception cref="InvalidOperationException">Full swing was not found.</exception>
    [Worked("the level of maximum dissipation, the rail as it is at each: a scan of levels, then golden section")]
    public StagePowers Maximum(ElectricResistance Z, Angle phi)
    {
        var (rail, z, half, law, resistor) = (new Supplied(this), Z.Ohms, Math.Cos(phi.Radians) / 2, Law, Resistor);
        double Dissipated(double level)
        {
            var (sum, squares) = law.OverSine(level / z, coarse: true);
            return (rail.At(sum / 2) * sum) - (level * level / z * half) - (resistor * squares);
        }

        return At(ElectricPotential.FromVolts(Highest(Dissipated, Full(rail, Need(Z, phi), z), LevelSteps)), Z, phi);
    }

    /// <summary>The peak instantaneous dissipation of one side, the highest over all sine levels.</summary>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="InvalidOperationException">Full swing was not found.</exception>
    [Worked("the level and the instant of greatest dissipation in one transistor: a scan, then golden section, of each")]
    public PeakDissipation Peak(ElectricResistance Z, Angle phi)
    {
        var (rail, z, need) = (new Supplied(this), Z.Ohms, Need(Z, phi));
        HalfWave At(double level) => Wave(rail.AtPeak(level / z), level, z, phi);
        var worst = Highest(level => At(level).Highest().Watts, Full(rail, need, z), LevelSteps / 2);
        var wave = At(worst);
        var (angle, watts) = wave.Highest();
        return new PeakDissipation(ElectricPotential.FromVolts(worst), Power.FromWatts(watts), Power.FromWatts(watts / Pairs), ElectricPotential.FromVolts(wave.Output(angle)), ElectricPotential.FromVolts(wave.Across(angle)), ElectricCurrent.FromAmperes(wave.Current(angle)));
    }

    /// <summary>The powers of a sine that gives the load a power, such as an eighth of the rated one.</summary>
    /// <param name="P">The load's power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, between −90° and 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or the swing too small for the power.</exception>
    [Worked("the stage at the level of a sine that gives the load that power")]
    public StagePowers Sine(Power P, ElectricResistance Z, Angle phi) => At(MusicDissipation.RmsCurrent(P, Z, phi) * Z * Math.Sqrt(2), Z, phi);

    /// <summary>The powers of noise-like music that gives the load a power: a Gaussian current, the magnitude and phase of the load as at every frequency.</summary>
    /// <remarks>Steady noise. Music whose level comes and goes draws less from the supply for the same mean power, and so dissipates less.</remarks>
    /// <param name="P">The load's mean power; 0 W or more.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, between −90° and 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or full swing is below 3 times the rms, where clipping would count.</exception>
    [Worked("supply less load less emitter resistors, both sides' currents averaged over a Gaussian distribution of the level")]
    public NoisePowers Noise(Power P, ElectricResistance Z, Angle phi)
    {
        var (need, rms) = (Need(Z, phi), MusicDissipation.RmsCurrent(P, Z, phi).Amperes);
        var (sum, squares) = Law.OverNoise(rms);
        var (volts, rail) = (rms * Z.Ohms, new Supplied(this).Known(sum / 2));
        if (volts * need * MusicDissipation.LeastRoom > rail * Rounding)
            Guard.Refuse(nameof(P), P, $"at most {QuantityFormat.Short(Power.FromWatts(Math.Pow(rail / need / MusicDissipation.LeastRoom, 2) / Z.Ohms * Math.Cos(phi.Radians)))}", MusicDissipation.Clips);
        var (supply, load, resistors) = (rail * sum, (double)P.Watts, Resistor * squares);
        var total = supply - load - resistors;
        var room = volts > 0 ? Gain.FromRatio(rail / need / volts) : Gain.FromRatio(1e6);
        return new NoisePowers(ElectricPotential.FromVolts(volts), room, MusicDissipation.ClippedShare(room), ElectricPotential.FromVolts(rail), Power.FromWatts(supply), P, Power.FromWatts(resistors), Power.FromWatts(total), Power.FromWatts(total / (2 * Pairs)));
    }

    /// <summary>The dissipation of one transistor over a period of a sine, for its junction's temperature at low frequency.</summary>
    /// <remarks>The period begins where the load's current crosses zero upwards. The mean over both sides is a transistor's share of <see cref="At"/>.</remarks>
    /// <param name="V_p">Peak voltage at the load; from 0 V to <see cref="FullSwing"/>.</param>
    /// <param name="Z">Magnitude of the load; greater than 0 Ω.</param>
    /// <param name="phi">Phase of the load, −90° to 90°.</param>
    /// <param name="f">Frequency of the sine; greater than 0 Hz.</param>
    /// <param name="samples">Samples in the period, a multiple of 4; 8 or more. The peak rise is right to about 10/samples².</param>
    /// <returns>A power that repeats for ever, such as <see cref="FosterImpedance.Under"/> takes.</returns>
    /// <example><code>device.Under(stage.Dissipation.OverPeriod(40.V, 4.Ohm, 45.deg, 20.Hz)).Peak</code></example>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    [Worked("one transistor's dissipation at instants evenly spaced over the period")]
    public PeriodicHeat OverPeriod(ElectricPotential V_p, ElectricResistance Z, Angle phi, Frequency f, int samples = 2000)
    {
        Guard.Positive(f);
        Guard.Between(samples, 8, 1 << 24);
        if (samples % 4 != 0)
            Guard.Refuse(nameof(samples), samples, "a multiple of 4", "The ends of the half-wave must fall on samples.");
        var wave = Wave(At(V_p, Z, phi).Rail.Volts, V_p.Volts, Z.Ohms, phi);
        var watts = new double[samples];
        for (var i = 0; i < samples; i++)
            watts[i] = Math.Max(0, wave.Dissipation(phi.Radians + (2 * Math.PI * i / samples)) / Pairs);
        return PeriodicHeat.Sampled(watts, Duration.FromSeconds(1 / f.Hertz));
    }

    /// <summary>The dissipation of one transistor while a piece of music plays over and over into a resistive load, on the rail of its mean current.</summary>
    /// <remarks>The transistor is of the side that gives positive outputs.</remarks>
    /// <param name="piece">Output voltage at equal intervals, two samples or more; none beyond the rails.</param>
    /// <param name="R">Load, resistive; greater than 0 Ω.</param>
    /// <returns>A power that repeats for ever, such as <see cref="FosterImpedance.Under"/> takes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A sample is beyond the rail, or an input is out of range.</exception>
    [Worked("one transistor's dissipation at each sample, on the rail of the mean current of the piece")]
    public PeriodicHeat OverPiece(Waveform<ElectricPotential> piece, ElectricResistance R)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var (law, load, n) = (Law, Guard.Positive(R).Ohms, piece.Count);
        Guard.AtLeast(n, 2, "the number of samples");
        var (off, both) = (new double[n], 0.0);
        for (var i = 0; i < n; i++)
        {
            off[i] = law.Off(Math.Abs(piece.Y[i] / load), out _);
            both += (2 * off[i]) + Math.Abs(piece.Y[i] / load);
        }

        var rail = new Supplied(this).Known(both / n / 2);
        var watts = new double[n];
        for (var i = 0; i < n; i++)
        {
            var (v, current) = (piece.Y[i], off[i] + Math.Max(0, piece.Y[i] / load));
            if (!(Math.Abs(v) * (1 + (Resistor / load)) <= rail))
                Guard.Refuse($"sample {i + 1}", ElectricPotential.FromVolts(v), $"within ±{QuantityFormat.Short(ElectricPotential.FromVolts(rail / (1 + (Resistor / load))))}", "The output cannot swing past its rail: scale the piece, or clip it first.");
            watts[i] = (rail - v - (current * Resistor)) * current / Pairs;
        }

        return PeriodicHeat.Sampled(watts, piece.End * ((double)n / (n - 1)));
    }

    private static double Highest(Func<double, double> watts, double full, int steps) => Scan.Highest(watts, 0, full, steps, 1e-6 * full).X;

    private HalfWave Wave(double rail, double level, double z, Angle phi) => new(rail, level, z, phi.Radians, Resistor, Law);
}
