using EightOhm.Devices;
using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using static EightOhm.Quantities.Maths;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Noise of pairs, mirrors and networks, against solved circuits and printed examples; each with the plausible wrong answers that it must not give.</summary>
[Checks]
public class PairNoiseChecks
{
    // The circuits of the reference have a millionth of an ohm where ours has none.
    private const double Solved = 1e-6;

    [Fact]
    public void A_bipolar_pair_source_by_source()
    {
        var reference = Reference.Read("pair-noise.csv");
        Check.Computed(reference, r => PairNoise.Density(Celsius(r["celsius"]), Amperes(r["I_C"]), r["h_FE"], Ohms(r["r_bb"]), Ohms(r["R_deg"]), Ohms(r["R_a"]), Ohms(r["R_b"])), "whole", Solved);
        Check.Computed(reference, r => PairNoise.CollectorShot(Ohms(r["r_e"]), Amperes(r["I_C"])), "shot", Solved);
        var shot = PairNoise.CollectorShot(12.85.Ohm, 2.mA).Si;
        IsNot(shot, 0.650e-9, "thermal noise of 2·r_e");
        IsNot(shot, 0.325e-9, "one device of the two");
        var i_B = PairNoise.BaseCurrent(2.mA, 300).Si;
        Assert.Equal(1.4616e-12, i_B, 5e-17);
        IsNot(i_B, 2.53e-12, "an r_pi that makes thermal noise");
    }

    [Fact]
    public void A_mirror_with_its_resistors_and_their_shot_noise()
    {
        var reference = Reference.Read("mirror-noise.csv");
        Check.Computed(reference, r => MirrorNoise.AtInput(Celsius(r["celsius"]), Ohms(r["R_m"]), Ohms(r["r_bm"]), Ohms(r["r_e"]), Ohms(r["r_e"]), Ohms(r["R_deg"])), "e", Solved);
        Check.Computed(reference, r => Sqrt(2) * MirrorNoise.OfOne(Celsius(r["celsius"]), Ohms(r["R_m"]), Ohms(r["r_bm"]), Ohms(r["r_e"])) * Ohms(r["r_e"] + r["R_deg"]), "e", Solved);
        double Mirror(double R_m) => MirrorNoise.AtInput(25.degC, Ohms(R_m), 0.Ohm, Junction.ThermalVoltage(25.degC) / 2.mA, Junction.ThermalVoltage(25.degC) / 2.mA, 22.Ohm).Si * 1e9;
        Assert.Equal([1.2475, 0.9675, 0.6748, 0.4087], new[] { 0, 22, 68, 220 }.Select(r => Math.Round(Mirror(r), 4)));
        Assert.True(Mirror(0.01) / Mirror(0) > 0.999999, "without a resistor the slope is zero: a little of one buys nothing");
        // The rule of the trade: the mirror's resistors larger than the pair's, or the mirror is the louder.
        Assert.True(Mirror(22) > PairNoise.OfBoth(22.Ohm, 25.degC).Si * 1e9);
        Assert.True(Mirror(68) < PairNoise.OfBoth(22.Ohm, 25.degC).Si * 1e9);
    }

    [Fact]
    public void The_mirror_s_resistor_for_a_density_is_the_one_that_makes_it()
    {
        var rows = Reference.Read("mirror-noise.csv");
        foreach (var r in rows.Rows.Where(r => r["R_m"] > 2 * r["r_e"]))
        {
            var R_m = MirrorNoise.ResistorFor(Density(r["e"]), Celsius(r["celsius"]), Ohms(r["r_bm"]), Ohms(r["r_e"]), Ohms(r["r_e"]), Ohms(r["R_deg"]));
            Assert.Equal(r["R_m"], R_m.Ohms, 1e-5 * r["R_m"]);
        }
    }

    [Fact]
    public void A_noisy_tail_behind_a_mirror() => Check.Computed(
        Reference.Read("tail-noise.csv"),
        r => MirrorNoise.OfTail(CurrentNoiseDensity.FromSi(r["i_t"]), Ratio.FromDecimalFractions(r["delta"]), Ratio.Zero, Ohms(r["r_e"]), Ohms(r["R_deg"])),
        "e",
        10 * Solved); // the difference of two nearly equal halves

    [Fact]
    public void A_field_effect_pair() => Check.Computed(
        Reference.Read("fet-noise.csv"), r => FieldEffectNoise.OfPair(Celsius(r["celsius"]), ElectricConductance.FromSiemens(r["g_m"]), Ohms(r["R_deg"])), "e", Solved);

    [Fact]
    public void What_a_base_sees_over_frequency()
    {
        var reference = Reference.Read("input-network.csv");
        Check.Computed(reference, r => SourceImpedance.Resistance(Cycles(r["f"]), Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "real");
        Check.Computed(reference, r => SourceImpedance.Magnitude(Cycles(r["f"]), Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "magnitude");
        Check.Computed(reference, r => SourceImpedance.Density(Cycles(r["f"]), Celsius(25), CurrentNoiseDensity.FromSi(1.5e-12), Ohms(r["R_1"]), Farads(r["C_in"]), Farads(r["C_c"]), Ohms(r["R_b"])), "e");
        var e = SourceImpedance.Density(20.Hz, 25.degC, CurrentNoiseDensity.FromSi(1.4616e-12), 100.Ohm, 0.pF, 10.uF, 10.kOhm).Si;
        Assert.Equal(1.9937e-9, e, 1e-13);
        IsNot(e, 1.277e-9, "the resistors alone in parallel, the capacitor a short");
        IsNot(e, 3.61e-9, "thermal noise of the magnitude of the impedance");
    }

    [Fact]
    public void The_collector_current_of_least_noise()
    {
        Check.Computed(Reference.Read("best-current.csv"), r => PairNoise.BestCollectorCurrent(Volts(r["V_T"]), r["h_FE"], Ohms(r["R_a"]), Ohms(r["R_b"])), "I", 1e-6);
        var best = PairNoise.BestCollectorCurrent(Volts(0.0256926), 300, 233.Ohm, Ohms(178.76)).Amperes;
        Assert.Equal(2.1430e-3, best, 1e-7);
        IsNot(best, 1.910e-3, "one side alone");
        IsNot(best, 3.536e-3, "the pair's own base and emitter resistors forgotten");
    }

    [Fact]
    public void Noise_over_a_band_behind_two_poles()
    {
        Check.Solved(
            "NoiseSpectrum.Over",
            Reference.Read("noise-over-band.csv"),
            r => new NoiseSpectrum([new("white and 1/f", f => FlickerNoise.Density(Density(r["e_w"]), Cycles(r["f_c"]), f))])
                .Over(Cycles(r["low"]), Cycles(r["high"]), f => Gain.FromRatio(1 / Math.Sqrt((1 + Math.Pow(f.Hertz / r["f_1"], 2)) * (1 + Math.Pow(f.Hertz / r["f_2"], 2)))), r["weighted"] > 0 ? NoiseWeighting.A : NoiseWeighting.None)
                .Total.Volts,
            "E",
            1e-7);
        // The same by the closed form: white noise through two poles, the band's ends cut off.
        var whole = new NoiseSpectrum([new("white", 3.nV_rtHz)]).Over(Cycles(1e-3), Cycles(1e11), f => Gain.FromRatio(1 / Math.Sqrt((1 + Math.Pow(f.Hertz / 482.3e3, 2)) * (1 + Math.Pow(f.Hertz / 1.111e6, 2)))));
        Assert.Equal((3.nV_rtHz * Sqrt(NoiseBandwidth.OfUnequalPoles(482.3.kHz, 1.111.MHz))).Volts, whole.Total.Volts, 1e-13);
    }

    [Fact]
    public void An_op_amp_s_resistance_for_its_noise_and_back()
    {
        var (R_f, R_g, T) = (99.kOhm, 1.kOhm, Temperature.FromKelvins(300));
        var source = Fiore("Ex 5.14, p. 167");
        var R_s = 100.Ohm;
        Check.Check(() => ThermalNoise.EquivalentResistance(NoiseTarget.OfDivider(R_f, R_g, T), T) + R_s, "1090 ohm", source);
        var (e_max, e_n, i_n) = (5.87.nV_rtHz, 4.nV_rtHz, 0.6.pA_rtHz);
        var e_i = i_n * 1090.Ohm;
        var others = Sqrt((e_n * e_n) + (e_i * e_i));
        Check.Check(() => NoiseTarget.ResistanceLeft(e_max, others, T), "1.09 kohm", source, "the example read backwards, from its rounded total");
        var G = 100.ratio;
        var R_fb = 990.Ohm;
        Check.Check(() => NoiseTarget.LowerResistor(R_fb, G), "1 kohm", source);
        Check.Check(() => NoiseTarget.UpperResistor(R_fb, G), "99 kohm", source);
    }

    [Fact]
    public void Shot_noise_in_front_of_a_noisy_amplifier()
    {
        var (I, R, B) = (5.uA, 150.Ohm, 10.MHz);
        Check.Check(() => ShotNoise.Current(I, B), "4.00 nA", Roddy("Ex 4.11.1, p. 135"), "with q = 1.6e-19 C in the source");
        Check.Check(() => PairNoise.FromBaseCurrents(ShotNoise.CurrentDensity(I), R, Ohms(0)) * Sqrt(B), "0.600 uV", Roddy("Ex 4.11.1, p. 135"));
    }

    private static void IsNot(double ours, double mistaken, string mistake) =>
        Assert.True(Math.Abs((ours / mistaken) - 1) > 0.01, $"{ours} cannot be told from {mistake}.");
}
