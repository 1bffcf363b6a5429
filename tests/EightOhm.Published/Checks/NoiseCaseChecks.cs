using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Cases that no source prints, computed from the definitions, each with the plausible wrong answers it must not give.</summary>
[Checks]
public class NoiseCaseChecks
{
    [Fact]
    public void The_corner_behind_a_ratio_and_a_density()
    {
        Check.Computed(
            Reference.Read("snr.csv"),
            r => Snr.CornerFor(ElectricPotential.FromVolts(r["V_s"]), Gain.FromDecibels(r["decibels"]), VoltageNoiseDensity.FromSi(r["e_n"])),
            "f_c");
        var corner = Snr.CornerFor(1.V, 110.dB, 3.3.nV_rtHz).Hertz;
        Assert.Equal(584_591, corner, 0.5);
        IsNot(corner, 918_274, "the noise bandwidth taken for the corner");
        IsNot(corner, 600_000, "a corner rounded up, which gives 109.89 dB");
        Assert.Equal(109.89, Snr.OfDensity(1.V, 3.3.nV_rtHz, 600.kHz).Decibels, 0.005);
    }

    [Fact]
    public void The_noise_bandwidth_of_two_unequal_poles()
    {
        Check.Computed(Reference.Read("unequal-poles.csv"), r => NoiseBandwidth.OfUnequalPoles(Frequency.FromHertz(r["f_1"]), Frequency.FromHertz(r["f_2"])), "B");
        var bandwidth = NoiseBandwidth.OfUnequalPoles(482.3.kHz, 1.111.MHz).Hertz;
        Assert.Equal(528_267, bandwidth, 0.5);
        IsNot(bandwidth, 656_900, "π/2 times the −3 dB frequency of both");
        IsNot(bandwidth, 757_600, "π/2 times the lower pole");
        IsNot(bandwidth, 510_300, "two equal poles");
    }

    private static void IsNot(double ours, double mistaken, string mistake) =>
        Assert.True(Math.Abs((ours / mistaken) - 1) > 0.01, $"{ours} cannot be told from {mistake}.");
}
