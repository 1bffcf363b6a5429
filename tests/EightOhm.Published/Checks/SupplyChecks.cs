using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Supply;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Losses, transformer, filter, ripple: printed values and integrations.</summary>
[Checks]
public class SupplyChecks
{
    [Fact]
    public void The_losses_of_a_swing()
    {
        ElectricPotential nothing = 0.V, V_T = 25.mV;
        ElectricCurrent I = 2.5.mA, I_s = 1e-14.A;
        var r_int = 0.Ohm;
        Check.Check(() => SwingLosses.Junction(nothing, V_T, I, I_s, r_int), "0.66 V", Sedra("Ex 14.3, p. 1248"), "V_BE of the multiplier from its saturation current: 0 V at I_s");
        var rows = Reference.Read("swing.csv");
        Check.Computed(rows, r => SwingLosses.Junction(Volts(r["V_0"]), Volts(r["V_T"]), Amperes(r["I"]), Amperes(r["I_0"]), Ohms(r["r"])), "V_BE");
        Check.Computed(rows, r => SwingLosses.EmitterResistors(Amperes(r["I_p"]), Ohms(r["R_E"]), (int)r["n"]), "drop");
        Check.Computed(rows, r => SwingLosses.DriverCurrent(Amperes(r["I_Q"]), Amperes(r["I_p"]), r["h"]), "driver");
        Check.Computed(rows, r => SwingLosses.QuasiSaturation(Volts(r["V_BE"]), Amperes(r["I"]), Ohms(r["R_C"])), "V_CE");
        Check.Computed(rows, r => Clipping.Peak(Volts(r["V"]), Volts(r["V_loss"]), Ohms(r["R_E"] / r["n"]), Ohms(r["R_L"])), "V_p");
        Check.Computed(rows, r => Clipping.Power(Volts(r["V_p"]), Ohms(r["R_L"])), "P");
    }

    [Fact]
    public void The_clip_power_of_textbooks()
    {
        ElectricPotential full = 30.V, part = 20.V;
        var load = 16.Ohm;
        Check.Check(() => Clipping.Power(full, load), "28.125 W", Source.Datasheet(BoylestadTitle, "Ex 12.8, p. 699"));
        Check.Check(() => Clipping.Power(part, load), "12.5 W", Boylestad("Ex 12.7"));
    }

    [Fact]
    public void Transformers()
    {
        ElectricPotential free = 60.V, loaded = 56.V, ten = 10.V, eleven = 11.V, mains = 240.V;
        var S = 1000.VA;
        Check.Check(() => Transformer.Regulation(free, loaded), "7.1 %", Boylestad("Ex 15.2"));
        var talema = Source.Datasheet("Nuvotem Talema, Regulation (transformer notes)", "example: 10 V winding");
        Check.Against(() => Transformer.Regulation(eleven, ten), Ratio.FromDecimalFractions(1 / 11.0), "the no-load voltage as the base", "10 %", talema);
        var tenth = 10.percent;
        Check.Check(() => Transformer.NoLoadVoltage(ten, tenth), "11 V", talema);
        Check.Check(() => Transformer.PrimaryCurrent(S, mains), "4.17 A", Source.Secondhand("Understanding kVA and current, 365electric.com", "1 kVA at 240 V"));
        var rows = Reference.Read("transformer.csv");
        Check.Computed(rows, r => Transformer.Regulation(Volts(r["V_NL"]), Volts(r["V"])), "r_T", 1e-8);
        Check.Computed(rows, r => Transformer.NoLoadVoltage(Volts(r["V"]), Part(r["r_T"])), "V_NL");
        Check.Computed(rows, r => Transformer.NoLoadRail(Volts(r["V"]), Part(r["r_T"]), Part(r["m"] - 1), Volts(r["V_D"])), "rail");
        Check.Computed(rows, r => Transformer.PrimaryCurrent(ElectricApparentPower.FromVoltamperes(r["S"]), Volts(r["V_m"])), "I");
        Check.Computed(rows, r => Transformer.GreatestRail(Volts(r["V"]), Volts(r["V_od"]), Part(r["r_T"]), Part(r["x"])), "greatest");
    }

    [Fact]
    public void Filters_of_a_rail()
    {
        ElectricResistance R = 500.Ohm, R_x = 5.kOhm, one = 1.kOhm;
        ElectricPotential V = 150.V;
        Check.Check(() => RailFilter.MeanBehind(V, R, R_x), "136.4 V", Boylestad("Ex 15.7"));
        Frequency f = 1.6.MHz;
        var C = ElectricCapacitance.FromFarads(1 / (2 * Math.PI * 150e3 * 1e3));
        Check.Check(() => RailFilter.Rejection(f, one, C), "20.6 dB", Fiore("Ex 1.15"), "a low pass of 150 kHz, printed as −20.6 dB");
        var rows = Reference.Read("rail-filter.csv");
        Check.Computed(rows, r => RailFilter.Rejection(Frequency.FromHertz(r["f"]), Ohms(r["R"]), Farads(r["C"])), "rejection");
        Check.Computed(rows, r => RailFilter.Drop(Amperes(r["I"]), Ohms(r["R"])), "drop");
        Check.Computed(rows, r => RailFilter.MeanBehind(Volts(50), Ohms(r["R"]), Ohms(r["R_x"])), "behind_50V");
    }

    [Fact]
    public void What_a_rejection_leaves_of_ripple()
    {
        ElectricPotential volt = 1.V;
        Gain high = 100.dB, G = 40.dB;
        Check.Against(() => Ripple.AtOutputByInputReferred(volt, high, G), 10.uV, "an input-referred figure taken at the output", "1 mV", Source.Secondhand("Power supply rejection ratio, freebase.com/m/02qqf1w", "100 dB, 40 dB of gain, 1 V of ripple"));
        var rows = Reference.Read("ripple.csv");
        Check.Computed(rows, r => Ripple.SawtoothHarmonic(Volts(r["V_pp"]), (int)r["h"]), "V_h");
        Check.Computed(rows, r => Ripple.AtOutputByInputReferred(Volts(r["V_h"]), Gain.FromRatio(r["R_in"]), Gain.FromRatio(r["G"])), "left");
        Check.Computed(rows, r => Ripple.AtOutputByOutputReferred(Volts(r["V_h"]), Gain.FromRatio(r["R_out"])), "left");
        Check.Computed(rows, r => Ripple.BelowRated(Volts(r["rated"]), Volts(r["left"])), "below");
    }

    [Fact]
    public void Snubbers()
    {
        var L = 500.nH;
        var C = 1.pF;
        Check.Check(() => Snubber.RingFrequency(L, C), "225.1 MHz", Source.Secondhand("Solutions of a course on circuits, coursehero.com/file/8991042", "500 nH and 1 pF"));
        ElectricInductance line = 500.nH;
        ElectricCapacitance lineC = 50.pF, C_s = 330.pF, three = 3.nF;
        Check.Check(() => Snubber.Resistance(line, lineC), "100 Ohm", Source.Secondhand("Microwave communication question 71600, curioustab.com", "500 nH/m and 50 pF/m: the characteristic impedance"));
        var V = 90.V;
        var f_s = 115.kHz;
        Check.Check(() => Snubber.PowerDissipation(C_s, V, f_s), "0.3 W", Source.Secondhand("Question 683682, electronics.stackexchange.com", "10 Ω and 330 pF on a switch node"));
        Frequency before = 10.MHz, after = 5.MHz;
        Check.TradeFact(() => Snubber.WhatRings(three, before, after), "1 nF");
        var rows = Reference.Read("snubber.csv");
        Check.Computed(rows, r => Snubber.RingFrequency(Henries(r["L"]), Farads(r["C"])), "f");
        Check.Computed(rows, r => Snubber.Resistance(Henries(r["L"]), Farads(r["C"])), "R");
        Check.Computed(rows, r => Snubber.WhatRings(Farads(r["C_a"]), Frequency.FromHertz(r["f"]), Frequency.FromHertz(r["f_2"])), "C_found");
        Check.Computed(rows, r => Snubber.PowerDissipation(Farads(r["C_s"]), Volts(r["V"]), Frequency.FromHertz(r["f_r"])), "P");
        foreach (var r in rows.Rows)
            Assert.Equal(r["zeta"], Snubber.Damping(Henries(r["L"]), Farads(r["C"]), Ohms(r["R"]), Farads(r["C_s"])), 1e-9);
    }

    private static ElectricInductance Henries(double l) => ElectricInductance.FromHenries(l);

    private static Ratio Part(double x) => Ratio.FromDecimalFractions(x);
}
