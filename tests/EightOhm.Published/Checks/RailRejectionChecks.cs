using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Supply;
using EightOhm.SupplyPaths;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>What the rails leave at the output.</summary>
[Checks]
public class RailRejectionChecks
{
    [Fact]
    public void Half_waves_by_Fourier_integrals() =>
        Check.Computed(Reference.Read("half-waves.csv"), r => HalfWaveCurrent.Harmonic(Amperes(r["I_p"]), (int)r["h"]), "I_h");

    [Fact]
    public void A_harmonic_of_the_rail_s_own_current_comes_out()
    {
        var reference = Reference.Read("rail-harmonics.csv");
        Check.Computed(reference, r => HalfWaveCurrent.OnRail(Amperes(r["I"]), Cycles(r["f"]), Ohms(r["R"]), ElectricInductance.FromHenries(r["L"])), "V");
        Check.Computed(reference, r => RailRejection.OfMillerRail(Cycles(r["f"]), Cycles(r["f_x"])), "rejection");
        Check.Computed(reference, r => RailRejection.ShareOfOutput(Volts(r["V"]), RailRejection.OfMillerRail(Cycles(r["f"]), Cycles(r["f_x"])), Volts(r["V_p"])), "share");
        double Ppm(int h)
        {
            var rail = HalfWaveCurrent.OnRail(HalfWaveCurrent.Harmonic(5.A, h), h * 20.kHz, 20.mOhm, 0.25.uH);
            return RailRejection.ShareOfOutput(rail, RailRejection.OfMillerRail(h * 20.kHz, 1.11.MHz), 40.V).PartsPerMillion;
        }

        Assert.Equal(62.99, Ppm(2), 5e-3);
        Assert.Equal(49, Ppm(4), 0.5);
        Assert.Equal(0, Ppm(3)); // half-waves have no odd harmonics but their first
    }

    [Fact]
    public void A_supply_s_ripple_at_the_output_of_a_high_gain()
    {
        ElectricPotential ripple = 0.1.V;
        var G = 1001.ratio;
        Gain typical = Gain.FromRatio(1 / 30e-6), worst = Gain.FromRatio(1 / 150e-6);
        var source = Franco("Ex 5.5, p. 229");
        Check.Check(() => Rejection.LeftAtOutput(ripple, Rejection.OutputReferred(typical, G)), "3.0 mV", source);
        Check.Check(() => Ripple.AtOutputByInputReferred(ripple, worst, G), "15 mV", source);
    }

    [Fact]
    public void Hum_of_a_sawtooth_line_by_line()
    {
        Check.Solved("HumSpectrum.OfSawtooth", Reference.Read("sawtooth-hum.csv"), r => HumSpectrum.OfSawtooth(Volts(r["V_pp"]), Cycles(r["mains"]), f => RailRejection.OfMillerRail(f, Cycles(r["f_x"]))).Total.Volts, "hum", 1e-9);
        // Each line is as strong as the first: the loop gives away what the sawtooth's harmonics lose. One figure at twice the mains tells less than a quarter of the voltage.
        var hum = HumSpectrum.OfSawtooth(3.V, 50.Hz, f => RailRejection.OfMillerRail(f, 1.11.MHz));
        Assert.Equal(Math.Sqrt(20), hum.Total / hum.Lines[0].AtOutput, 1e-3);
    }

    [Fact]
    public void A_wire_with_a_capacitor_at_its_end()
    {
        var reference = Reference.Read("decoupling.csv");
        Check.Solved("Decoupling.Impedance", reference, r => Decoupling.Impedance(Cycles(r["f"]), Ohms(r["R"]), ElectricInductance.FromHenries(r["L"]), Farads(r["C"]), Ohms(r["ESR"])).Ohms, "Z", 1e-9);
        Check.Computed(reference, r => Decoupling.Resonance(ElectricInductance.FromHenries(r["L"]), Farads(r["C"])), "f_0");
        Check.Computed(reference, r => Decoupling.Damping(ElectricInductance.FromHenries(r["L"]), Farads(r["C"])) * Amperes(1), "swing", 1e-5);
        Check.Computed(reference, r => Decoupling.CapacitorForStep(Amperes(1), Volts(r["swing"]), ElectricInductance.FromHenries(r["L"])), "C", 1e-5);
    }

    [Fact]
    public void Leaks_into_a_pair_within_its_loop()
    {
        Check.Computed(Reference.Read("rail-leak.csv"), r => RailRejection.OfLeak(Ohms(r["R_o"]), Ohms(r["r_e"]), Ohms(r["R_deg"]), Gain.FromRatio(r["G"])), "rejection", 1e-5);
        Check.Computed(
            Reference.Read("rail-tail.csv"),
            r => RailRejection.LeftByTail(Amperes(r["I_r"]), Ratio.FromDecimalFractions(r["s"]), Ratio.FromDecimalFractions(r["m"]), Ohms(r["r_e"]), Ohms(r["R_deg"]), Gain.FromRatio(r["G"])),
            "left",
            1e-5);
    }

    [Fact]
    public void A_filter_s_corner_by_the_solved_circuit() =>
        Check.Computed(Reference.Read("corners.csv"), r => RailFilter.Corner(Ohms(r["R"]), Farads(r["C"])), "behind");
}
