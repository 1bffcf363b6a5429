using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Sums of noise, and signal over noise in each direction.</summary>
[Checks]
public class SnrChecks
{
    private static readonly Source Fiores = Fiore("Ex 5.14, p. 167");

    // The printed intermediate values of the example: gain 100 and 1 V out, so 10 mV at the input.
    private readonly ElectricPotential _output = 1.V, _input = 10.mV;
    private readonly Frequency _corner = 100.kHz;
    private readonly Gain _ratio = 4298.ratio;

    [Fact]
    public void Three_densities_at_an_op_amp_s_input()
    {
        VoltageNoiseDensity e_n = 4.nV_rtHz, thermal = ThermalNoise.VoltageDensity(1090.Ohm, Temperature.FromKelvins(300)), current = 0.6.pA_rtHz * 1090.Ohm;
        VoltageNoiseDensity[] parts = [e_n, thermal, current];
        Check.Against(() => NoiseSum.OfDensities(parts), e_n + thermal + current, "densities added without their squares", "5.87 nV/√Hz", Fiores);
    }

    [Fact]
    public void Resistors_in_series_by_their_voltages()
    {
        ElectricPotential[] parts = [5.66.uV, 8.949.uV];
        Check.Check(() => NoiseSum.OfVoltages(parts), "10.589 uV", Roddy("Ex 4.2.2, p. 122"), "the companion's unit is a factor 1e6 out; its digits are these");
    }

    [Fact]
    public void An_op_amp_s_signal_over_its_noise()
    {
        ElectricPotential noise = 232.66.uV;
        VoltageNoiseDensity density = 587.nV_rtHz;
        Check.Check(() => Snr.OfVoltages(_output, noise), "4298", Fiores);
        Check.Against(() => Snr.OfVoltages(_output, noise), Gain.FromPowerRatio(_output / noise), "10·log of a ratio of voltages for 20·log", "72.7 dB", Fiores);
        Check.Against(() => Snr.OfDensity(_output, density, _corner), Snr.OfDensity(_output, density, _corner / (Math.PI / 2)), "the corner taken for the noise bandwidth", "72.7 dB", Fiores);
    }

    [Fact]
    public void The_way_back_from_a_ratio()
    {
        ElectricPotential tenMillivolts = _input;
        var density = 5.87.nV_rtHz;
        Check.Check(() => Snr.NoiseFor(_output, _ratio), "233 uV", Fiores);
        Check.Check(() => Snr.DensityFor(tenMillivolts, _ratio, _corner), "5.87 nV/√Hz", Fiores);
        Check.Against(() => Snr.CornerFor(tenMillivolts, _ratio, density), Snr.CornerFor(tenMillivolts, _ratio, density) * (Math.PI / 2), "the noise bandwidth taken for the corner", "100 kHz", Fiores);
    }

    [Fact]
    public void A_sheet_of_110_dB_below_a_volt()
    {
        var SNR = 110.dB;
        var e_n = 3.3.nV_rtHz;
        Check.TradeFact(() => Snr.CornerFor(_output, SNR, e_n), "0.58 MHz");
    }

    [Fact]
    public void Noise_through_one_pole_by_integration()
    {
        var reference = Reference.Read("snr.csv");
        Check.Computed(reference, r => Snr.NoiseFor(ElectricPotential.FromVolts(r["V_s"]), Gain.FromDecibels(r["decibels"])), "V_n");
        Check.Computed(reference, r => Snr.OfDensity(ElectricPotential.FromVolts(r["V_s"]), VoltageNoiseDensity.FromSi(r["e_n"]), Frequency.FromHertz(r["f_c"])), "SNR");
        Check.Computed(reference, r => Snr.DensityFor(ElectricPotential.FromVolts(r["V_s"]), Gain.FromDecibels(r["decibels"]), Frequency.FromHertz(r["f_c"])), "e_n");
    }
}
