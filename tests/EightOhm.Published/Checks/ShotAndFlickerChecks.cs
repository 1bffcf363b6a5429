using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using static EightOhm.Quantities.Maths;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Noise of currents, noise below a 1/f corner.</summary>
[Checks]
public class ShotAndFlickerChecks
{
    private static readonly Source Question = Source.Secondhand("assignmentexpert.com", "question 252877, shot noise");

    [Fact]
    public void Shot_noise_of_half_a_milliampere()
    {
        var (I, B) = (0.5.mA, 10.kHz);
        Check.Check(() => ShotNoise.Current(I, B), "1.266 nA", Question);
        Check.Against(() => ShotNoise.CurrentDensity(I) * Sqrt(B), ElectricCurrent.FromAmperes(ShotNoise.CurrentDensity(I).Si * B.Hertz), "the root of the bandwidth forgotten", "1.266 nA", Question);
        Check.Against(() => ShotNoise.Current(I, B), ShotNoise.Current(I / 2, B), "q·I for 2·q·I", "1.266 nA", Question);
    }

    [Fact]
    public void A_current_above_its_shot_noise()
    {
        ElectricCurrent micro = 1.uA, nano = 1.nA;
        var B = 1.MHz;
        var source = Franco("Ex 7.5, p. 323");
        Check.Check(() => Gain.FromRatio(nano / ShotNoise.Current(nano, B)), "34.9 dB", source);
        Check.Against(
            () => Gain.FromRatio(micro / ShotNoise.Current(micro, B)),
            Gain.FromPowerRatio(micro / ShotNoise.Current(micro, B)),
            "10·log of a ratio of currents for 20·log",
            "64.9 dB",
            source);
    }

    [Fact]
    public void A_noise_diode_s_current()
    {
        var (I, B) = (278.mA, 200.kHz);
        Check.Check(() => ShotNoise.Current(I, B), "0.133 uA", Blake("Ex 1.6, p. 21"));
    }

    [Fact]
    public void Shot_noise_by_the_charge_of_the_tables() =>
        Check.Computed(Reference.Read("shot-noise.csv"), r => ShotNoise.CurrentDensity(ElectricCurrent.FromAmperes(r["I"])), "i");

    [Fact]
    public void An_op_amp_s_noise_over_three_bands()
    {
        var (e_w, f_c) = (20.nV_rtHz, 200.Hz);
        (Frequency Low, Frequency High, string Printed)[] rows = [(0.1.Hz, 100.Hz, "0.77 uV"), (20.Hz, 20.kHz, "2.92 uV"), (0.1.Hz, 1.MHz, "20.0 uV")];
        var source = Franco("Ex 7.1, p. 317");
        Check.Table(rows, r => FlickerNoise.Voltage(e_w, f_c, r.Low, r.High), r => r.Printed, source);
        var (low, high) = (0.1.Hz, 100.Hz);
        Check.Against(() => FlickerNoise.Voltage(e_w, f_c, low, high), e_w * Sqrt(high - low), "white noise alone", "0.77 uV", source);
        Check.Against(() => FlickerNoise.Voltage(e_w, f_c, low, high), e_w * Sqrt((f_c * Log10(high / low)) + (high - low)), "the logarithm to base ten for the natural one", "0.77 uV", source);
    }

    [Fact]
    public void Flicker_noise_by_integration() => Check.Computed(
        Reference.Read("flicker-noise.csv"),
        r => FlickerNoise.Voltage(VoltageNoiseDensity.FromSi(r["e_w"]), Frequency.FromHertz(r["f_c"]), Frequency.FromHertz(r["f_L"]), Frequency.FromHertz(r["f_H"])),
        "E");
}
