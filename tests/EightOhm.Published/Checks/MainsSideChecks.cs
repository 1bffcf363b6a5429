using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Switch-on, fuse, bleeder: printed values and integrations.</summary>
[Checks]
public class MainsSideChecks
{
    private static readonly Source Ametherm = Source.Datasheet("Ametherm, Selecting an Inrush Current Limiter", "480 V, 2350 µF precharge");

    [Fact]
    public void Limiters_of_makers()
    {
        ElectricPotential crest = 746.59.V, low = 325.V;
        ElectricCurrent most = 30.A;
        var C = 2350.uF;
        Check.Check(() => Inrush.LeastResistance(crest, most), "25 Ohm", Ametherm);
        Check.Disagrees(() => Discharge.StoredEnergy(C, crest), "655.00 J", "654.94 J", Ametherm, "The note rounds: 0.5·2350 µF·(746.59 V)² is 654.94 J.");
        ElectricPotential V_m = ElectricPotential.FromVolts(low.Volts / Math.Sqrt(2)), ideal = 0.V;
        var R = 0.5.Ohm;
        Check.Check(() => Inrush.CapacitorPeak(V_m, ideal, 1, R), "650 A", Source.Secondhand("Inrush current limiter page, rftools.io, after Ametherm AN-1005", "325 V over 0.5 Ω"));
    }

    [Fact]
    public void A_thermistor()
    {
        var R_25 = 10.kOhm;
        var T_n = Temperature.FromKelvins(23.95936358 + 273.15);
        Check.Check(() => InrushLimiter.ThermistorAt(R_25, 3950, T_n), "10475 Ohm", Source.Secondhand("B Equation, esp32.implrust.com", "10 kΩ, B 3950: 10475 Ω is 23.96 °C"));
        Check.Computed(Reference.Read("thermistor.csv"), r => InrushLimiter.ThermistorAt(Ohms(r["R_25"]), r["B"], Temperature.FromKelvins(r["T"])), "R");
    }

    [Fact]
    public void Both_worst_moments_by_the_equations_of_a_transformer()
    {
        var rows = Reference.Read("inrush.csv");
        Check.Computed(rows, r => Inrush.ReflectedHalves(Ohms(r["R_h"]), r["N_r"]), "reflected");
        Check.Computed(rows, r => Inrush.CapacitorPeak(Volts(r["V_m"]), Volts(r["V_D"]), r["N_r"], Ohms(r["R"])), "I_cap");
        Check.Computed(rows, r => Inrush.CoreBound(Volts(r["V_m"]), Ohms(r["R_p"] + r["R_lim"])), "I_core");
        Check.Computed(rows, r => Inrush.LeastResistance(Volts(r["V_m"] * Math.Sqrt(2)), Amperes(r["I_cap"])), "R_least");
        Check.Computed(rows, r => Inrush.FailedBypassDissipation(Amperes(r["I"]), Ohms(r["R_stays"])), "P");
    }

    [Fact]
    public void Switch_on_in_time_as_an_adaptive_solver_follows_it()
    {
        foreach (var r in Reference.Read("soft-start.csv").Rows)
        {
            var limiter = r["R_lim"] > 0 ? InrushLimiter.Resistor(Ohms(r["R_lim"])) : InrushLimiter.None;
            var run = SoftStart.Of(new SwitchOn(Volts(r["V_m"]), Frequency.FromHertz(r["f"]), Volts(r["V_half"]), Farads(r["C"]), Ohms(r["R_p"]), Ohms(r["R_h"]), Volts(r["V_D"]), limiter, Duration.FromSeconds(r["bypass"]), Amperes(r["I_idle"])));
            Near(r["peak"], run.Peak.Amperes, 1e-6);
            Near(r["t90"], run.TimeTo90Percent!.Value.Seconds, 1e-3);
            Near(r["I2t"], run.Pulse.Si, 1e-4);
            Near(r["V_bypass"], run.RailAtBypass.Volts, 1e-4);
            if (r["R_lim"] > 0)
                Near(r["E"], run.LimiterEnergy.Joules, 1e-4);
        }
    }

    [Fact]
    public void Fuses()
    {
        ElectricCurrent sine = 4.8.A, triangle = 1.5.A, load = 1.5.A, seven = 7.5.A;
        Duration pulse = 7.7.us, slow = 3.ms;
        Ratio half = 50.percent, share = 75.percent, full = 100.percent, other = 70.percent, warm = 95.percent;
        var avx = Source.Datasheet("AVX, F1206A Accu-Guard thin-film fuse", "p. 10, designing for current pulse situations");
        Check.Check(() => Fuse.HalfSine(sine, pulse), "8.9e-5 A²s", avx);
        Check.Check(() => Fuse.Triangle(triangle, slow), "2.25e-3 A²s", avx);
        Check.Check(() => Fuse.LeastMelting(new JouleIntegral(8.9e-5), half), "1.8e-4 A²s", avx, "twice the pulse");
        Check.Check(() => Fuse.Rating(seven, share, full), "10 A", Source.Secondhand("How do you calculate the value of a fuse, teacherscollegesj.org, after Littelfuse, Fuseology", "7.5 A at 25 °C"));
        Check.Disagrees(() => Fuse.Rating(load, other, warm), "2.255 A", "2.25564 A", Source.Datasheet("TA-I Technology, Thin Film Chip Fuse, TCP-XXOS006H", "p. 10"), "The maker cuts 2.25564 off after three decimals.");
        var rows = Reference.Read("fuse.csv");
        Check.Computed(rows, r => Fuse.HalfSine(Amperes(r["I_p"]), Duration.FromSeconds(r["t"])), "sine");
        Check.Computed(rows, r => Fuse.Triangle(Amperes(r["I_p"]), Duration.FromSeconds(r["t"])), "triangle");
        Check.Computed(rows, r => Fuse.Decay(Amperes(r["I_p"]), Duration.FromSeconds(r["t"])), "decay");
        Check.Computed(rows, r => Fuse.LeastMelting(new JouleIntegral(r["sine"]), Ratio.FromDecimalFractions(r["share"])), "melting");
        Check.Computed(rows, r => Fuse.Rating(Amperes(r["I_p"]), share, Ratio.FromDecimalFractions(r["k_T"])), "rating");
    }

    [Fact]
    public void Bleeders()
    {
        var physics = Source.Secondhand("OpenStax, College Physics for AP Courses, answers at collegephysicsanswers.com", "ch. 21, problem 71");
        ElectricPotential full = 1.V, left = 0.0025.V, other = 0.0035.V;
        ElectricResistance R = 250.kOhm, R_2 = 260.kOhm;
        ElectricCapacitance C = 80.uF, C_2 = 85.uF;
        Check.Check(() => Discharge.TimeTo(full, left, R, C), "120 s", physics, "250 kΩ, 80 µF to 0.250 %");
        var tau = ElectricPotential.FromVolts(1 / Math.E);
        Check.Check(() => Discharge.TimeTo(full, tau, R, C), "20 s", physics, "one time constant");
        Check.Check(() => Discharge.TimeTo(full, other, R_2, C_2), "125 s", Source.Secondhand("Question 1362970384, jiskha.com", "260 kΩ, 85 µF to 0.350 %"));
        var welwyn = Source.Datasheet("Welwyn Components (TT electronics), Design Tool 4, capacitor discharge", "195 µF, 1500 V to 320 V, 50 Ω");
        ElectricPotential V_0 = 1500.V, V = 320.V;
        var C_3 = 195.uF;
        var R_3 = 50.Ohm;
        Check.Check(() => Discharge.TimeTo(V_0, V, R_3, C_3), "0.015062769 s", welwyn);
        Check.Check(() => Discharge.PowerDissipation(V_0, R_3), "45000 W", welwyn, "the initial power");
        Check.Check(() => Discharge.StoredEnergy(C_3, V_0), "219.375 J", welwyn);
        ElectricPotential rated = 450.V;
        var limit = 0.1.uF;
        Check.Check(() => Discharge.StoredCharge(limit, rated), "45 uC", Source.Secondhand("IEC 60335-1 clause 8.1.4 as quoted on bbs.angui.org", "0.1 µF at 450 V beside 45 µC"));
        ElectricPotential bus = 400.V, fifty = 50.V;
        var R_4 = 10.kOhm;
        var C_4 = 470.uF;
        Check.Check(() => Discharge.TimeTo(bus, fifty, R_4, C_4), "9.8 s", Source.Secondhand("Capacitor safety discharge page, resicalc.com", "10 kΩ, 470 µF, 400 V to 50 V"));
        var rows = Reference.Read("discharge.csv");
        Check.Computed(rows, r => Discharge.TimeTo(Volts(r["V_0"]), Volts(r["V"]), Ohms(r["R"]), Farads(r["C"])), "t");
        Check.Computed(rows, r => Discharge.VoltageAfter(Volts(r["V_0"]), Duration.FromSeconds(r["part"]), Ohms(r["R"]), Farads(r["C"])), "V_part");
        Check.Computed(rows, r => Discharge.Bleeder(Duration.FromSeconds(r["part"]), Farads(r["C"]), Volts(r["V_0"]), Volts(r["V"])), "bleeder");
        Check.Computed(rows, r => Discharge.StoredEnergy(Farads(r["C"]), Volts(r["V_0"])), "E");
        Check.Computed(rows, r => Discharge.StoredCharge(Farads(r["C"]), Volts(r["V_0"])), "Q");
        Check.Computed(rows, r => Discharge.PowerDissipation(Volts(r["V_0"]), Ohms(r["R"])), "P");
    }

    private static void Near(double theirs, double ours, double relative) =>
        Assert.True(Math.Abs((ours / theirs) - 1) <= relative, $"{theirs:R} there, ours {ours:R}");
}
