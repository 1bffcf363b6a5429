using EightOhm.InputStages;
using EightOhm.Noise;
using EightOhm.Quantities;

namespace EightOhm.Tests.Noise;

/// <summary>By hand at 45 °C, where V_T is 27.416 mV, 4kT is 1.75700e-20 J and 2q is 3.20435e-19 C.</summary>
public class SecondStageNoiseTests
{
    private const double FourKT = 4 * 1.380649e-23 * 318.15, TwoQ = 2 * 1.602176634e-19, ThermalVolts = 1.380649e-23 * 318.15 / 1.602176634e-19;

    [Fact]
    public void Each_source_of_the_second_stage_by_hand()
    {
        // 10 mA with 22 Ω, 100 in its base; a follower of 1.8 mA with 510 Ω.
        double r_2 = ThermalVolts / 10e-3, r_f = ThermalVolts / 1.8e-3;
        // What comes behind the follower's loss is larger by it at the input, and the collector's noise by what the base takes of a signal.
        double g = 1 + (r_f / 510), b = 1 + ((r_f + 22) / (100 * r_2)), own = 1 + (22 / (100 * r_2));
        double[] squares = [FourKT * 22 * g * g, TwoQ * 10e-3 * r_2 * r_2 * b * b * g * g, TwoQ * 1.8e-3 * r_f * r_f, FourKT / 510 * r_f * r_f, TwoQ * 10e-3 / 100 * (r_f + (g * 22)) * (r_f + (g * 22))];
        Assert.Equal(Math.Sqrt(squares.Sum()), SecondStageNoise.Voltage(45.degC, 10.mA, 100, 22.Ohm, 1.8.mA, 510.Ohm).Si, 1e-14);
        double[] alone = [FourKT * 22, TwoQ * 10e-3 * r_2 * r_2 * own * own, TwoQ * 10e-3 / 100 * 22 * 22];
        Assert.Equal(Math.Sqrt(alone.Sum()), SecondStageNoise.Alone(45.degC, 10.mA, 100, 22.Ohm).Si, 1e-14);
    }

    [Fact]
    public void Bases_of_a_mirror_count_twice_of_the_output_s_transistor_alone_with_resistors_and_once_of_each_without()
    {
        var i = Math.Sqrt(TwoQ * 2e-3 / 200);
        Assert.Equal(Math.Sqrt(2) * i, SecondStageNoise.OfMirrorBases(2.mA, 200, 0.Ohm, 13.7.Ohm).Si, 1e-16);
        Assert.Equal(2 * i, SecondStageNoise.OfMirrorBases(2.mA, 200, 1.MOhm, 13.7.Ohm).Si, 1e-4 * i);
        // Superposition with the resistor: the output's own base 1 + s, the other's 1 − s.
        var s = 470 / (470 + 13.7);
        Assert.Equal(i * Math.Sqrt(((1 + s) * (1 + s)) + ((1 - s) * (1 - s))), SecondStageNoise.OfMirrorBases(2.mA, 200, 470.Ohm, 13.7.Ohm).Si, 1e-16);
    }

    [Fact]
    public void At_the_pair_the_current_is_flat_and_the_voltage_rises_with_frequency()
    {
        double At(double f) => SecondStageNoise.AtInput(f.Hz, 3.pA_rtHz, 750.pV_rtHz, 400.pF, 13.7.Ohm, 47.Ohm).Si;
        Assert.Equal(3e-12 * 60.7, At(1e3), 1e-14);
        var rising = 750e-12 * 2 * Math.PI * 1e6 * 400e-12 * 60.7;
        Assert.Equal(Math.Sqrt((3e-12 * 60.7 * 3e-12 * 60.7) + (rising * rising)), At(1e6), 1e-14);
        // To divide the voltage by a gain of the first stage in mid-band would leave nothing of it.
        Assert.True(At(10e6) > 6 * At(1e3));
    }

    [Fact]
    public void An_input_stage_has_the_parts_that_it_is_told_of()
    {
        var before = new InputStageNoise { Temperature = 45.degC, TailCurrent = 4.mA, CurrentGain = 300, Degeneration = 47.Ohm, Source = 132.Ohm, Coupling = 10.uF, Bias = 10.kOhm, Upper = 560.Ohm, Lower = 24.7.Ohm, MirrorDegeneration = 470.Ohm };
        var whole = before with { MirrorGain = 200, CascodeGain = 300, SecondStageBase = 18.uA, SecondStageVoltage = 750.pV_rtHz, SecondStageCapacitance = 400.pF };
        double Part(string name, double f) => whole.Spectrum().At(f.Hz).Ranked.Single(p => p.Name == name).Density.Si;
        var r = 47 + (ThermalVolts / 2e-3);
        Assert.Equal(Math.Sqrt(TwoQ * 18e-6) * r, Part("second stage", 1e3), 1e-14);
        var s = 470 / (470 + (ThermalVolts / 2e-3));
        Assert.Equal(Math.Sqrt((TwoQ * 2e-3 / 200 * 2 * (1 + (s * s))) + (2 * TwoQ * 2e-3 / 300)) * r, Part("base currents of mirror and cascode", 1e3), 1e-14);
        Assert.DoesNotContain(before.Spectrum().Sources, p => p.Name is "second stage" or "base currents of mirror and cascode");
        Assert.True(whole.Spectrum().At(1.MHz).Total > before.Spectrum().At(1.MHz).Total);
    }
}
