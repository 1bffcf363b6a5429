using EightOhm.Noise;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using static EightOhm.Quantities.Maths;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class NoiseChecks
{
    private static Temperature Kelvins(double t) => Temperature.FromKelvins(t);

    [Fact]
    public void Ten_kilohms_over_the_audio_band()
    {
        var (R, T, B) = (10.kOhm, Kelvins(298), 19980.Hz);
        var source = Franco("Ex 7.4, p. 323");
        Check.Check(() => ThermalNoise.VoltageDensity(R, T), "12.8 nV/√Hz", source);
        Check.Check(() => ThermalNoise.CurrentDensity(R, T), "1.28 pA/√Hz", source);
        Check.Check(() => ThermalNoise.Voltage(R, T, B), "1.81 uV", source);
        var density = 12.8.nV_rtHz;
        Check.Check(() => ThermalNoise.EquivalentResistance(density, T), "10 kohm", source, "the example read backwards");
        Check.Against(() => ThermalNoise.Voltage(R, T, B), ElectricPotential.FromVolts(ThermalNoise.VoltageDensity(R, T).Si * B.Hertz), "the root of the bandwidth forgotten", "1.81 uV", source);
        Check.Against(() => ThermalNoise.VoltageDensity(R, T), ThermalNoise.VoltageDensity(R, Kelvins(25)), "degrees Celsius put in for kelvins", "12.8 nV/√Hz", source);
    }

    [Fact]
    public void A_hundred_kilohms_over_a_megahertz()
    {
        var (R, T, B) = (100.kOhm, 300.0, 1.MHz);
        Check.Check(() => ThermalNoise.Voltage(R, Kelvins(T), B), "40.7 uV", Source.Secondhand("Understanding Noise Figure, qsl.net/va3iul", "thermal noise example"));
        Check.Disagrees(() => ThermalNoise.Voltage(R, Kelvins(T), B), "40.69 uV", "40.7035 uV", Source.Secondhand("Noise in Electronic Components, tutorialsweb.com", "thermal noise example"),
            "The source uses k = 1.38e-23 J/K; the exact constant gives 40.7035 uV, and 40.7035·√(1.38/1.380649) is 40.694.");
    }

    [Fact]
    public void Resistors_of_communication_receivers()
    {
        Voltage(100.kOhm, 298.15, 20.kHz, "5.74 uV", Source.Companion("L. E. Frenzel, Principles of Electronic Communication Systems", "Ex 9.2, p. 324"));
        Voltage(100.Ohm, 300, 4.MHz, "2.57 uV", Beasley("Ex 1.5, p. 16"));
        Voltage(300.Ohm, 293, 6.MHz, "5.4 uV", Blake("Ex 1.5, p. 20"));
        Voltage(50.Ohm, 290, 1.MHz, "0.89 uV", Roddy("Ex 4.2.1, p. 120"));
        Voltage(20.kOhm, 290, 100.kHz, "5.66 uV", Roddy("Ex 4.2.2, p. 122"));
    }

    [Fact]
    public void The_power_that_a_resistor_makes_available()
    {
        ElectricResistance R = 50.Ohm, wide = 300.Ohm;
        Frequency B = 1.MHz, six = 6.MHz;
        Temperature T = Kelvins(290), warm = Kelvins(293);
        Check.Check(() => ThermalNoise.Voltage(R, T, B) * ThermalNoise.Voltage(R, T, B) / (4 * R), "4.00e-15 W", Roddy("Ex 4.2.1, p. 120"));
        Check.Check(() => ThermalNoise.Voltage(wide, warm, six) * ThermalNoise.Voltage(wide, warm, six) / (4 * wide), "24.3e-15 W", Blake("Ex 1.5, p. 20"),
            "the companion labels it pW; the digits are femtowatts");
    }

    [Fact]
    public void A_resistance_beside_an_amplifier_s_own_noise()
    {
        var e_n = 4.nV_rtHz;
        var i_n = 0.6.pA_rtHz;
        var R = 1090.Ohm;
        var T = Kelvins(300);
        var noiseBandwidth = 157.kHz;
        var source = Fiore("Ex 5.14, p. 167");
        Check.Check(() => Sqrt((e_n * e_n) + (ThermalNoise.VoltageDensity(R, T) * ThermalNoise.VoltageDensity(R, T)) + (i_n * R * (i_n * R))), "5.87 nV/√Hz", source);
        var corner = 100.kHz;
        Check.Against(
            () => Sqrt((e_n * e_n) + (ThermalNoise.VoltageDensity(R, T) * ThermalNoise.VoltageDensity(R, T)) + (i_n * R * (i_n * R))) * Sqrt(noiseBandwidth),
            Sqrt((e_n * e_n) + (ThermalNoise.VoltageDensity(R, T) * ThermalNoise.VoltageDensity(R, T)) + (i_n * R * (i_n * R))) * Sqrt(corner),
            "the corner taken for the noise bandwidth",
            "2.33 uV",
            source);
    }

    [Fact]
    public void A_transistor_amplifier_computed_with_a_low_Boltzmann_constant()
    {
        var (R, B) = (10.kOhm, 39.9.kHz);
        var T = Kelvins(298);
        var divider = Gain.FromRatio(600 * 3.0 / 13);
        Check.Disagrees(() => ThermalNoise.Voltage(R, T, B) * divider, "353.4 uV", "354.81 uV", Source.Companion("D. A. Bell, Electronic Devices and Circuits", "Ex 8.9, p. 330"),
            "The book uses k = 1.37e-23 J/K; its next example uses 354 uV. Exact k gives 354.81 uV.");
    }

    [Fact]
    public void The_trade_s_rules_of_thumb()
    {
        ElectricResistance kilohm = 1.kOhm, fifty = 50.Ohm;
        var T = Kelvins(300);
        Check.TradeFact(() => ThermalNoise.VoltageDensity(kilohm, T), "4 nV/√Hz");
        Check.TradeFact(() => ThermalNoise.VoltageDensity(fifty, T), "0.9 nV/√Hz");
    }

    [Fact]
    public void Thermal_noise_by_Planck_s_law()
    {
        var reference = Reference.Read("thermal-noise.csv");
        Check.Computed(reference, r => ThermalNoise.Voltage(ElectricResistance.FromOhms(r["R"]), Kelvins(r["T"]), Frequency.FromHertz(r["B"])), "E");
        Check.Computed(reference, r => ThermalNoise.VoltageDensity(ElectricResistance.FromOhms(r["R"]), Kelvins(r["T"])), "e");
        Check.Computed(reference, r => ThermalNoise.CurrentDensity(ElectricResistance.FromOhms(r["R"]), Kelvins(r["T"])), "i");
        Check.Computed(reference, r => ThermalNoise.EquivalentResistance(VoltageNoiseDensity.FromSi(r["e"]), Kelvins(r["T"])), "R");
    }

    private static void Voltage(ElectricResistance R, double kelvins, Frequency B, string printed, Source source)
    {
        var T = Kelvins(kelvins);
        Check.Check(() => ThermalNoise.Voltage(R, T, B), printed, source);
    }
}
