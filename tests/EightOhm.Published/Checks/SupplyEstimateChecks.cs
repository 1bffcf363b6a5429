using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class SupplyEstimateChecks
{
    private static readonly Source Hammond = Source.Datasheet("Hammond Manufacturing, Design Guide for Rectifier Use", "full-wave bridge, capacitor input");
    private static readonly Source Petra = Source.Datasheet("Petra, toroidal transformers, application notes", "bridge with capacitor");

    [Fact]
    public void A_capacitor_filter_on_sixty_hertz()
    {
        ElectricPotential V_m = 30.V, rms = 1.203.V, mean = 27.92.V;
        var I = 50.mA;
        var f = 60.Hz;
        var C = 100.uF;
        Check.Check(() => ReservoirEstimates.RippleRms(I, f, C), "1.2 V", Boylestad("Ex 15.3"));
        Check.Against(() => ReservoirEstimates.RippleRms(I, f, C), ReservoirEstimates.RippleFullWave(I, f, C), "peak to peak taken for rms", "1.2 V", Boylestad("Ex 15.3"));
        Check.Check(() => ReservoirEstimates.Mean(V_m, I, f, C), "27.9 V", Boylestad("Ex 15.4"));
        Check.Against(() => ReservoirEstimates.Mean(V_m, I, f, C), V_m - ReservoirEstimates.RippleFullWave(I, f, C), "the whole ripple taken off the peak", "27.9 V", Boylestad("Ex 15.4"));
        Check.Check(() => ReservoirEstimates.RippleFactor(rms, mean), "4.3 %", Boylestad("Ex 15.5"));
    }

    [Fact]
    public void Half_wave_centre_tapped_and_bridge()
    {
        ElectricPotential none = 0.V, V = 24.V, half = 12.V, eight = 8.V, two = 1.4.V;
        ElectricCurrent bridge = (33.94 / 5000).A, tapped = (16.97 / 5000).A, small = (9.914 / 500).A;
        ElectricCapacitance C = 100.uF, large = 4700.uF;
        var f = 60.Hz;
        Check.Check(() => ReservoirEstimates.Peak(V, none), "34 V", Malvino("Ex 4-6, p. 108"));
        Check.Check(() => ReservoirEstimates.RippleHalfWave(bridge, f, C), "1.1 V", Malvino("Ex 4-6, p. 108"));
        Check.Against(() => ReservoirEstimates.RippleHalfWave(bridge, f, C), ReservoirEstimates.RippleFullWave(bridge, f, C), "a full wave taken for half", "1.1 V", Malvino("Ex 4-6, p. 108"));
        Check.Check(() => ReservoirEstimates.Peak(half, none), "17 V", Malvino("Ex 4-7, p. 109"));
        Check.Check(() => ReservoirEstimates.RippleFullWave(tapped, f, C), "0.28 V", Malvino("Ex 4-7, p. 109"));
        Check.Check(() => ReservoirEstimates.RippleFullWave(bridge, f, C), "0.57 V", Malvino("Ex 4-8, p. 110"));
        Check.Against(() => ReservoirEstimates.RippleFullWave(bridge, f, C), ReservoirEstimates.RippleHalfWave(bridge, f, C), "half-wave ripple taken for full-wave", "0.57 V", Malvino("Ex 4-8, p. 110"));
        Check.Check(() => ReservoirEstimates.Peak(eight, two), "9.9 V", Malvino("Ex 4-9, p. 111"));
        Check.Against(() => ReservoirEstimates.Peak(eight, two), ReservoirEstimates.Peak(eight, none), "the diodes forgotten", "9.9 V", Malvino("Ex 4-9, p. 111"));
        Check.Check(() => ReservoirEstimates.RippleFullWave(small, f, large), "35 mV", Malvino("Ex 4-9, p. 111"));
    }

    [Fact]
    public void The_peak_rectifier_s_diode()
    {
        ElectricPotential V_p = 100.V, V_r = 2.V;
        var R = 10.kOhm;
        var f = 60.Hz;
        var I = 10.mA;
        var source = Sedra("Ex 3.9, p. 181");
        Check.Check(() => PeakRectifier.HalfWaveReservoir(V_p, R, f, V_r), "83.3 uF", source);
        Check.Check(() => PeakRectifier.ConductionAngle(V_p, V_r).Radians, "0.2", source, "radians");
        Check.Check(() => PeakRectifier.HalfWaveMean(I, V_p, V_r), "324 mA", source);
        Check.Check(() => PeakRectifier.HalfWavePeak(I, V_p, V_r), "638 mA", source);
        Check.Against(() => PeakRectifier.HalfWavePeak(I, V_p, V_r), PeakRectifier.HalfWaveMean(I, V_p, V_r), "the mean while it conducts taken for the peak", "638 mA", source);
    }

    [Fact]
    public void Regulation_and_an_rc_section()
    {
        ElectricPotential V_0 = 60.V, V = 56.V, ripple = 15.V;
        var R = 500.Ohm;
        var C = 10.uF;
        var f = 60.Hz;
        Check.Against(() => Transformer.Regulation(V_0, V), Ratio.FromDecimalFractions(4.0 / 60), "the fall over the voltage without load", "7.1 %", Boylestad("Ex 15.2"));
        Check.Disagrees(() => RailFilter.RippleBehind(ripple, R, C, f), "3.9 V", "3.846 V", Boylestad("Ex 15.7"),
            "The book takes R for the impedance of R and C in series (and X_C = 130 Ω); with 132.63 Ω and the root of the squares it is 3.846 V.");
        var reg = Ratio.FromDecimalFractions(4.0 / 56);
        Check.Check(() => Transformer.NoLoadVoltage(V, reg), "60 V", Boylestad("Ex 15.2"), "the same example backwards");
    }

    [Fact]
    public void Makers_rules_for_the_winding_differ()
    {
        ElectricCurrent one = 1.A, none = 0.A;
        ElectricPotential ten = 10.V, eleven = 11.V;
        var watt = 1.W;
        Check.Check(() => WindingGuides.BridgeLow(one), "1.6 A", Hammond, "I_dc is 0.62 of I_ac");
        Check.Against(() => WindingGuides.BridgeLow(one), one, "the factor of a centre-tapped winding with one rail", "1.6 A", Hammond);
        Check.Check(() => WindingGuides.BridgeHigh(one), "1.8 A", Petra);
        Check.Check(() => WindingGuides.BridgeVoltage(eleven) - WindingGuides.BridgeVoltage(ten), "0.8 V", Petra, "0.8·(V_dc + 2 V): what one volt more of dc asks");
        Check.Check(() => WindingGuides.BridgeRating(watt, none), "1.4 VA", Petra, "1.4·(W + 2·I_dc): what one watt asks");
    }

    [Fact]
    public void The_largest_rail()
    {
        ElectricPotential V_p = 0.9.V, V_od = 0.1.V;
        Ratio reg = 15.percent, x = 10.percent, rigid = 0.percent;
        var source = Source.Datasheet("National Semiconductor, LM3876 datasheet", "application section, eq. 7");
        Check.Check(() => Transformer.GreatestRail(V_p, V_od, rigid, x), "1.1 V", source, "the printed factor of high line, per volt of V_p + V_od");
        Check.TradeFact(() => Transformer.GreatestRail(V_p, V_od, reg, x), "1.265 V");
    }

    [Fact]
    public void The_sawtooth_by_integration()
    {
        var rows = Reference.Read("reservoir-ripple.csv");
        Check.Computed(rows, r => ReservoirEstimates.RippleFullWave(Amperes(r["I"]), Frequency.FromHertz(r["f"]), Farads(r["C"])), "full");
        Check.Computed(rows, r => ReservoirEstimates.RippleHalfWave(Amperes(r["I"]), Frequency.FromHertz(r["f"]), Farads(r["C"])), "half_wave");
        Check.Computed(rows, r => ReservoirEstimates.Mean(Volts(r["V_m"]), Amperes(r["I"]), Frequency.FromHertz(r["f"]), Farads(r["C"])), "mean");
        Check.Computed(rows, r => ReservoirEstimates.RippleRms(Amperes(r["I"]), Frequency.FromHertz(r["f"]), Farads(r["C"])), "rms");
        Check.Computed(rows, r => ReservoirEstimates.RippleFactor(Volts(r["rms"]), Volts(r["mean"])), "factor");
    }

    [Fact]
    public void The_mean_of_that_pulse() => Check.Computed(
        Reference.Read("peak-rectifier.csv"),
        r => PeakRectifier.FullWaveMean(Amperes(r["I"]), Volts(r["V_p"]), Volts(r["V_r"])),
        "mean",
        1e-6);

    [Fact]
    public void The_pulse_of_the_textbook_s_full_wave_rectifier_by_the_slope_of_the_sine() => Check.Computed(
        Reference.Read("peak-rectifier.csv"),
        r => PeakRectifier.FullWavePeak(Amperes(r["I"]), Volts(r["V_p"]), Volts(r["V_r"])),
        "peak",
        1e-6);

    [Fact]
    public void The_rc_section_by_its_node_equation() => Check.Computed(
        Reference.Read("rc-section.csv"),
        r => RailFilter.RippleBehind(Volts(r["V_r"]), Ohms(r["R"]), Farads(r["C"]), Frequency.FromHertz(r["f"])),
        "ripple");

    [Fact]
    public void What_a_nameplate_says_of_the_resistance()
    {
        var rows = Reference.Read("source-resistance.csv");
        Check.Computed(rows, r => Transformer.NoLoadVoltage(Volts(r["V"]), Part(r["reg"])), "V_0");
        Check.Computed(rows, r => SourceResistance.OfRail(Volts(r["V"]), Part(r["reg"]), ElectricApparentPower.FromVoltamperes(r["S"])), "R_s");
        Check.Computed(rows, r => SourceResistance.OfHalfAlone(Ohms(r["R_s"])), "R_half");
        Check.Computed(rows, r => SourceResistance.Shared(Ohms(r["R_s"])), "R_shared");
        Check.Computed(rows, r => SourceResistance.OfWinding(Volts(r["V"]), Part(r["reg"]), ElectricApparentPower.FromVoltamperes(r["S"])), "R_alone");
    }

    private static Ratio Part(double x) => Ratio.FromDecimalFractions(x);
}
