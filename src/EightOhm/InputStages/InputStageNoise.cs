using EightOhm.Devices;
using EightOhm.Explaining;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.InputStages;

/// <summary>The noise of a whole bipolar input stage over frequency: source and input network, divider, pair, mirror, tail, and what comes back from the second stage.</summary>
/// <remarks>All referred to the bases of the pair, where a gain of the divider then applies; what the input network takes of the signal at either end of the band is not in it.
/// Parts that are left at zero make nothing. Invented or real, all figures of one temperature.</remarks>
/// <example><code>new InputStageNoise { Temperature = 45.degC, TailCurrent = 4.mA, CurrentGain = 300, Source = 100.Ohm, Coupling = 10.uF, Bias = 10.kOhm, Upper = 2.24.kOhm, Lower = 99.Ohm }.Spectrum()</code></example>
public sealed record InputStageNoise
{
    /// <summary>Temperature of all parts.</summary>
    [Symbol("T")]
    public required Temperature Temperature { get; init; }

    /// <summary>Tail current, of both devices together.</summary>
    [Symbol("I_tail")]
    public required ElectricCurrent TailCurrent { get; init; }

    /// <summary>Current gain of each device.</summary>
    [Symbol("h_FE")]
    public required double CurrentGain { get; init; }

    /// <summary>Base-spreading resistance of each device.</summary>
    [Symbol("r_bb")]
    public ElectricResistance BaseResistance { get; init; }

    /// <summary>Resistor in each emitter.</summary>
    [Symbol("R_deg")]
    public ElectricResistance Degeneration { get; init; }

    /// <summary>In series with the input: the source's resistance and the filter's resistor.</summary>
    [Symbol("R_1")]
    public required ElectricResistance Source { get; init; }

    /// <summary>The input filter's capacitor.</summary>
    [Symbol("C_in")]
    public ElectricCapacitance Filter { get; init; }

    /// <summary>The coupling capacitor.</summary>
    [Symbol("C_c")]
    public required ElectricCapacitance Coupling { get; init; }

    /// <summary>The bias resistor.</summary>
    [Symbol("R_b")]
    public required ElectricResistance Bias { get; init; }

    /// <summary>The divider's upper resistor.</summary>
    [Symbol("R_f")]
    public required ElectricResistance Upper { get; init; }

    /// <summary>The divider's lower resistor, a servo's in parallel.</summary>
    [Symbol("R_g")]
    public required ElectricResistance Lower { get; init; }

    /// <summary>A capacitor in series with the lower resistor; none where there is a servo.</summary>
    [Symbol("C_g")]
    public ElectricCapacitance? LowerCapacitor { get; init; }

    /// <summary>Whether a mirror loads the pair.</summary>
    public bool Mirror { get; init; } = true;

    /// <summary>Resistor in each emitter of the mirror.</summary>
    [Symbol("R_m")]
    public ElectricResistance MirrorDegeneration { get; init; }

    /// <summary>Base-spreading resistance of each device of the mirror.</summary>
    [Symbol("r_bm")]
    public ElectricResistance MirrorBaseResistance { get; init; }

    /// <summary>Current gain of each device of the mirror; none where its base currents make nothing.</summary>
    [Symbol("h_FEm")]
    public double? MirrorGain { get; init => field = value is { } h ? Guard.Positive(h, nameof(MirrorGain)) : null; }

    /// <summary>Current gain of each cascode between pair and mirror; none where there is none.</summary>
    [Symbol("h_FEc")]
    public double? CascodeGain { get; init => field = value is { } h ? Guard.Positive(h, nameof(CascodeGain)) : null; }

    /// <summary>Base current at the second stage's input: of its follower where it has one; none where it makes nothing.</summary>
    [Symbol("I_B2")]
    public ElectricCurrent SecondStageBase { get; init => field = Guard.NotNegative(value); }

    /// <summary>Noise voltage in series with the second stage's input, as <see cref="SecondStageNoise.Voltage"/>.</summary>
    [Symbol("e_2")]
    public VoltageNoiseDensity SecondStageVoltage { get; init => field = Guard.NotNegative(value); }

    /// <summary>All capacitance at that input, the compensation capacitor included.</summary>
    [Symbol("C_2")]
    public ElectricCapacitance SecondStageCapacitance { get; init => field = Guard.NotNegative(value); }

    /// <summary>Noise of the tail current.</summary>
    [Symbol("i_t")]
    public CurrentNoiseDensity TailNoise { get; init; }

    /// <summary>Imbalance of the collector currents, (I_1 − I_2)/I_tail.</summary>
    [Symbol("delta")]
    public Ratio Imbalance { get; init; }

    /// <summary>Error of the mirror's current.</summary>
    [Symbol("m")]
    public Ratio MirrorError { get; init; }

    /// <summary>1/f corner of the base currents' noise.</summary>
    [Symbol("f_cB")]
    public Frequency BaseCorner { get; init; }

    /// <summary>1/f corner of the collectors' noise.</summary>
    [Symbol("f_cC")]
    public Frequency CollectorCorner { get; init; }

    /// <summary>The whole as a spectrum, at the bases.</summary>
    /// <returns>Up to ten named sources, fewer where a part is absent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure of the stage is out of range.</exception>
    [Worked("PairNoise, MirrorNoise, SecondStageNoise and SourceImpedance, each at the frequency")]
    public NoiseSpectrum Spectrum()
    {
        var half = Guard.Positive(TailCurrent) / 2;
        var r_e = Junction.ThermalVoltage(Guard.Positive(Temperature)) / half;
        var inner = Guard.NotNegative(BaseResistance) + Guard.NotNegative(Degeneration);
        var i_B = PairNoise.BaseCurrent(half, CurrentGain);
        var e_C = PairNoise.CollectorShot(r_e, half);
        ElectricResistance Z(Frequency f) => SourceImpedance.Magnitude(f, Source, Filter, Coupling, Bias);
        // Without a capacitor the divider is the same at every frequency, and an integral asks for thousands.
        var both = LowerCapacitor is null ? Maths.Parallel(Upper, Lower) : default;
        ElectricResistance Magnitude(Frequency f) => LowerCapacitor is { } c ? SourceImpedance.Magnitude(f, Lower, default, c, Upper) : both;
        var sources = new List<NoiseSource>
        {
            new("source and input network", f => ThermalNoise.VoltageDensity(SourceImpedance.Resistance(f, Source, Filter, Coupling, Bias), Temperature)),
            LowerCapacitor is { } c
                ? new("feedback network", f => ThermalNoise.VoltageDensity(SourceImpedance.Resistance(f, Lower, default, c, Upper), Temperature))
                : new("feedback network", ThermalNoise.VoltageDensity(both, Temperature)),
            new("emitter resistors", PairNoise.OfBoth(Degeneration, Temperature)),
            new("base resistances", PairNoise.OfBoth(BaseResistance, Temperature)),
            new("collector shot noise", f => FlickerNoise.Density(e_C, CollectorCorner, f)),
            // Resistances of the device and of the network add as magnitudes: at most a little too much where the network is not real.
            new("base currents", f => PairNoise.FromBaseCurrents(FlickerNoise.CurrentDensity(i_B, BaseCorner, f), Z(f) + inner, Magnitude(f) + inner)),
        };
        if (Mirror)
            sources.Add(new("mirror", MirrorNoise.AtInput(Temperature, MirrorDegeneration, MirrorBaseResistance, r_e, r_e, Degeneration)));
        if (TailNoise.Si > 0)
            sources.Add(new("tail current", MirrorNoise.OfTail(TailNoise, Imbalance, MirrorError, r_e, Degeneration)));
        var bases = new List<CurrentNoiseDensity>();
        if (Mirror && MirrorGain is { } h_m)
            bases.Add(SecondStageNoise.OfMirrorBases(half, h_m, MirrorDegeneration, r_e));
        // Two of them, each missing from a collector current of the pair.
        if (CascodeGain is { } h_c)
            bases.Add(Math.Sqrt(2) * ShotNoise.CurrentDensity(half / h_c));
        if (bases.Count > 0)
        {
            var i = CurrentNoiseDensity.FromSi(Math.Sqrt(bases.Sum(b => b.Si * b.Si)));
            sources.Add(new("base currents of mirror and cascode", SecondStageNoise.AtInput(default, i, default, default, r_e, Degeneration)));
        }

        if (SecondStageBase.Amperes > 0 || SecondStageVoltage.Si > 0)
        {
            var i_2 = ShotNoise.CurrentDensity(SecondStageBase);
            sources.Add(new("second stage", f => SecondStageNoise.AtInput(f, i_2, SecondStageVoltage, SecondStageCapacitance, r_e, Degeneration)));
        }

        return new(sources);
    }
}
