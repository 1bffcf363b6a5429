using EightOhm.Protection;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>The limiter against the worked examples of a maker whose driver for output transistors has this network, and against node equations.</summary>
[Checks]
public class LimiterChecks
{
    private static readonly Source First = Source.Datasheet("National Semiconductor, LM391 datasheet, TL/H/7146", "p. 9: 20 W/8 Ω, 30 W/4 Ω");
    private static readonly Source Second = Source.Datasheet("National Semiconductor, LM391 datasheet, TL/H/7146", "p. 11: 40 W/8 Ω, 60 W/4 Ω");
    private readonly ElectricPotential sense = 0.65.V;
    private readonly ElectricResistance none = 1e9.Ohm;
    private readonly ElectricResistance R_E = 0.22.Ohm;
    private readonly ElectricResistance kilo = 1.kOhm;

    [Fact]
    public void Resistors_of_a_maker_s_two_slopes()
    {
        var three = 3.A;
        ElectricPotential zeroAt = 60.V, bank = 47.V;
        var eleven = 11.A;
        ElectricPotential drop = (11 * 0.22).V;
        var flat = (0.65 / 0.22).A;
        Check.Check(() => LimiterDesign.EmitterResistor(sense, three), "0.22 Ohm", First);
        Check.Check(() => LimiterDesign.SlopeWithoutShunt(kilo, zeroAt, sense), "91 kOhm", First);
        Check.Against(() => LimiterDesign.SlopeWithoutShunt(kilo, zeroAt, sense), 1e3 * 60 / 0.65 * 1.Ohm, "the sense voltage left out of the sum", "91 kOhm", First);
        Check.Check(() => LimiterDesign.SecondSlopeResistor(kilo, R_E, bank, sense, drop, eleven, flat), "25.55 kOhm", Second, "no voltage left across the transistor: the drop of R_E alone");
        Check.Against(() => LimiterDesign.SecondSlopeResistor(kilo, R_E, bank, sense, drop, eleven, flat), 1e3 * (47 + 0.65) / ((11 * 0.22) - 0.65) * 1.Ohm, "the drop of the emitter resistor forgotten", "25.55 kOhm", Second);
    }

    [Fact]
    public void A_maker_s_short_circuit_on_one_slope_and_on_two()
    {
        ElectricResistance ninetyOne = 91.kOhm, big = 120.kOhm, parallel = (62e3 * 47e3 / (62e3 + 47e3)).Ohm, twentyFour = 24.kOhm;
        ElectricPotential shorted = 23.V, sagged = 28.V, span = (28 + 17).V, rail = 23.V, own = (7 * 0.22).V;
        Check.Check(() => LimiterLocus.SingleSlope(sense, kilo, none, ninetyOne, R_E, shorted), "1.8 A", First, "output at ground: the diode of the second slope does not conduct");
        Check.Against(() => LimiterLocus.SingleSlope(sense, kilo, none, ninetyOne, R_E, shorted), 0.65 / 0.22 * 1.A, "V_BE/R_E alone", "1.8 A", First);
        Check.Check(() => LimiterLocus.DoubleSlope(sense, kilo, none, ninetyOne, twentyFour, R_E, rail, own), "7 A", First, "output at the rail");
        Check.Check(() => LimiterLocus.DoubleSlope(sense, kilo, none, big, parallel, R_E, span, sagged), "5 A", Second, "output at ground, the far end at −17 V by a divider of 62 kΩ and 47 kΩ");
    }

    [Fact]
    public void Locus_by_node_equations()
    {
        var rows = Reference.Read("limiter.csv");
        Check.Computed(rows, r => LimiterLocus.SingleSlope(Volts(r["V_BE"]), Ohms(r["R_1"]), Ohms(r["R_2"]), Ohms(r["R_3"]), Ohms(r["R_E"]), Volts(r["V"])), "single");
        Check.Computed(rows, r => LimiterLocus.DoubleSlope(Volts(r["V_BE"]), Ohms(r["R_1"]), Ohms(r["R_2"]), Ohms(r["R_3"]), Ohms(r["R_4"]), Ohms(r["R_E"]), Volts(r["V_S"]), Volts(r["V"])), "double");
        Check.Computed(rows, r => LimiterLocus.ZeroAt(Volts(r["V_BE"]), Ohms(r["R_1"]), Ohms(r["R_2"]), Ohms(r["R_3"])), "zero");
    }

    [Fact]
    public void Resistors_back_from_the_locus_by_solving_its_equations()
    {
        var rows = Reference.Read("limiter.csv");
        Check.Computed(rows, r => LimiterDesign.SlopeResistor(Ohms(r["R_1"]), Ohms(r["R_E"]), Volts(r["V_a"]), Amperes(r["I_a"]), Volts(r["V_b"]), Amperes(r["I_b"])), "back_3");
        // Where R_2 is hardly there its conductance is the small difference of large ones.
        Check.Computed(rows, r => LimiterDesign.Shunt(Volts(r["V_BE"]), Ohms(r["R_1"]), Ohms(r["R_3"]), Ohms(r["R_E"]), Volts(r["V_a"]), Amperes(r["I_a"])), "back_2", 1e-6);
        Check.Computed(rows, r => LimiterDesign.SecondSlopeResistor(Ohms(r["R_1"]), Ohms(r["R_E"]), Volts(r["V_S"]), Volts(r["V_BE"]), Volts(r["low"]), Amperes(r["wanted"]), Amperes(r["at_low"])), "back_4");
        Check.Computed(rows, r => LimiterDesign.EmitterResistor(Volts(r["V_BE"]), Amperes(r["plain"])), "R_E");
        Check.Computed(rows, r => LimiterDesign.SlopeWithoutShunt(Ohms(r["R_1"]), Volts(r["zero"]), Volts(r["V_BE"])), "alone");
    }

    [Fact]
    public void A_warm_sense_junction()
    {
        Temperature room = 25.degC, hot = 85.degC;
        var tc = (-2.0).mV_per_K;
        var drift = (-2.1).mV_per_K;
        Check.Computed(Reference.Read("limiter.csv"), r => LimiterLocus.SenseVoltage(Volts(r["V_BE"]), drift, Temperature.FromDegreesCelsius(r["T"]), room), "sense");
        var barrier = 0.7.V;
        Temperature boiling = 100.degC, freezing = 0.degC;
        Check.Check(() => LimiterLocus.SenseVoltage(barrier, tc, boiling, room), "0.55 V", Malvino("Ex 2-5"));
        Check.Check(() => LimiterLocus.SenseVoltage(barrier, tc, freezing, room), "0.75 V", Malvino("Ex 2-5"));
        Check.TradeFact(() => LimiterLocus.SenseVoltage(sense, tc, hot, room), "0.53 V");
    }
}
