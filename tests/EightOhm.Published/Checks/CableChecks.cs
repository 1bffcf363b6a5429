using EightOhm.Loads;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class CableChecks
{
    private static readonly Source Wires = Source.Secondhand("HyperPhysics, American wire gauge table (NBS values at 20 °C)", "table");
    private static readonly Source Standard = Source.Secondhand("IEC 60228, Conductors of insulated cables, as three cable makers' pages reprint it", "maximum dc resistance at 20 °C");
    private static readonly Source Chart = Source.Datasheet("MISUMI, AWG chart", "resistance columns");
    private static readonly Source Code = Source.Secondhand("NFPA 70 (NEC), chapter 9, table 8, as sfasoft.com reprints it", "dc resistance at 75 °C, solid, uncoated copper");
    private static readonly Source Hifi = Source.Secondhand("ohmicaudio.com, damping factor reference", "worked example");
    private static readonly Source Qubix = Source.Secondhand("qubixhifi.com, damping factor and cable", "worked example");
    private static readonly Source Das = Source.Datasheet("D.A.S. Audio, Energy series manual", "p. 21, cable table");

    [Fact]
    public void American_gauges()
    {
        (int Gauge, string Diameter, string Resistance)[] rows =
        [
            (10, "2.588 mm", "0.9989 Ohm"), (12, "2.053 mm", "1.588 Ohm"), (14, "1.628 mm", "2.525 Ohm"), (16, "1.291 mm", "4.016 Ohm"), (18, "1.024 mm", "6.385 Ohm"),
            (20, "0.812 mm", "10.15 Ohm"), (22, "0.644 mm", "16.14 Ohm"), (24, "0.511 mm", "25.67 Ohm"),
        ];
        Check.Table(rows, r => CopperWire.Diameter(r.Gauge), r => r.Diameter, Wires);
        const double thousandFeet = 0.3048;
        // Copper of 0.017241 Ω·mm²/m, the rounded figure, would miss two of these rows by their last digit; 1/58 makes them all.
        Check.Table(rows, r => CopperWire.PerKilometre(CopperWire.Diameter(r.Gauge)) * thousandFeet, r => r.Resistance, Wires, "per 1000 ft");
    }

    [Fact]
    public void A_warm_wire()
    {
        Temperature hot = 65.degC, room = 25.degC;
        ElectricResistance cold = 1.588.Ohm;
        Check.Disagrees(() => CopperWire.WarmFactor(hot) * cold, "1.868 Ohm", "1.8688 Ohm", Chart,
            "The chart calls its first column 25 °C, but the ratio of its columns, 1.1763, is that from 20 to 65 °C (0.00392 per kelvin; 0.00393 gives 1.1768); from 25 °C it would be 1.154.");
        Assert.NotEqual(1.868, 1.588 * CopperWire.WarmFactor(hot) / CopperWire.WarmFactor(room), 0.03);

        // Solid and uncoated; the table's 16 and 18 AWG are of circular mils rounded down.
        const double thousandFeet = 0.3048;
        var installed = 75.degC;
        Check.Check(() => CopperWire.PerKilometre(CopperWire.Diameter(8)) * thousandFeet * CopperWire.WarmFactor(installed), "0.764 Ohm", Code, "8 AWG, 1000 ft");
        Check.Check(() => CopperWire.PerKilometre(CopperWire.Diameter(10)) * thousandFeet * CopperWire.WarmFactor(installed), "1.21 Ohm", Code, "10 AWG, 1000 ft");
        Check.Check(() => CopperWire.PerKilometre(CopperWire.Diameter(12)) * thousandFeet * CopperWire.WarmFactor(installed), "1.93 Ohm", Code, "12 AWG, 1000 ft");
        Check.Against(() => CopperWire.PerKilometre(CopperWire.Diameter(14)) * thousandFeet * CopperWire.WarmFactor(installed),
            CopperWire.PerKilometre(CopperWire.Diameter(14)) * thousandFeet * CopperWire.WarmFactor(installed) / CopperWire.WarmFactor(room), "the table of 20 °C taken for one of 25 °C", "3.07 Ohm", Code);
        Check.Disagrees(() => CopperWire.PerKilometre(CopperWire.Diameter(18)) * thousandFeet * CopperWire.WarmFactor(installed), "7.77 Ohm", "7.765 Ohm", Code, "The table's wire has 1620 circular mils, where the gauge's formula gives 1624.");
    }

    [Fact]
    public void Conductors_of_the_cable_standard()
    {
        (double Area, string Fixed, string Flexible)[] rows =
        [
            (0.5, "36.0 Ohm", "39.0 Ohm"), (0.75, "24.5 Ohm", "26.0 Ohm"), (1, "18.1 Ohm", "19.5 Ohm"), (1.5, "12.1 Ohm", "13.3 Ohm"), (2.5, "7.41 Ohm", "7.98 Ohm"),
            (4, "4.61 Ohm", "4.95 Ohm"), (6, "3.08 Ohm", "3.30 Ohm"), (10, "1.83 Ohm", "1.91 Ohm"), (16, "1.15 Ohm", "1.21 Ohm"),
        ];
        Assert.Equal(rows.Length, Iec60228.CrossSections.Count);
        // Half a kilometre of cable is a kilometre of conductor.
        Length half = 500.m;
        Temperature cold = 20.degC;
        Check.Table(rows, r => CopperWire.LoopResistance(half, Iec60228.PerKilometre(Area.FromSquareMillimeters(r.Area), ConductorClass.Fixed), cold), r => r.Fixed, Standard, "classes 1 and 2, per kilometre");
        Check.Table(rows, r => CopperWire.LoopResistance(half, Iec60228.PerKilometre(Area.FromSquareMillimeters(r.Area), ConductorClass.Flexible), cold), r => r.Flexible, Standard, "classes 5 and 6, per kilometre");
    }

    [Fact]
    public void Temperature_factors_of_the_cable_standard()
    {
        (double Celsius, string Factor)[] rows = [(5, "1.064"), (10, "1.042"), (25, "0.980"), (50, "0.893"), (75, "0.820"), (100, "0.758")];
        Check.Table(rows, r => CopperWire.StandardFactor(Temperature.FromDegreesCelsius(r.Celsius)), r => r.Factor, Standard, "temperature correction factors");
        // Copper's own coefficient gives another third digit in each.
        Assert.Equal(6, rows.Count(r => $"{1 / CopperWire.WarmFactor(r.Celsius.degC):0.000}" != r.Factor));
    }

    [Fact]
    public void Damping_with_a_cable()
    {
        ElectricResistance four = 4.Ohm, eight = 8.Ohm, two = 2.Ohm, none = 0.Ohm, amplifier = 0.008.Ohm;
        ElectricResistance wire12 = 1.588.Ohm / 0.3048, wire16 = 4.016.Ohm / 0.3048;
        Length twelveFeet = 3.6576.m, tenFeet = 3.048.m;
        Temperature cold = 20.degC;
        Check.Check(() => DampingFactor.OutputResistance(four, 500), "0.008 Ohm", Hifi);
        Check.Check(() => CopperWire.LoopResistance(twelveFeet, wire16, cold), "0.096 Ohm", Hifi, "12 ft of 16 AWG, 24 ft of wire");
        Check.Check(() => CopperWire.LoopResistance(twelveFeet, wire12, cold), "0.038 Ohm", Hifi, "12 ft of 12 AWG");
        Check.Check(() => DampingFactor.WithCable(four, amplifier, CopperWire.LoopResistance(twelveFeet, wire16, cold)), "38", Hifi);
        Check.Check(() => DampingFactor.WithCable(four, amplifier, CopperWire.LoopResistance(twelveFeet, wire12, cold)), "87", Hifi);
        var oneWay = DampingFactor.WithCable(four, amplifier, CopperWire.LoopResistance(twelveFeet, wire16, cold) / 2);
        Check.Against(() => DampingFactor.WithCable(four, amplifier, CopperWire.LoopResistance(twelveFeet, wire16, cold)), oneWay, "the cable counted one way", "38", Hifi);
        Check.Check(() => DampingFactor.OutputResistance(two, 400), "0.005 Ohm", Source.Secondhand("prosoundweb.com, on damping factor", "DF 400 at 2 Ω"));

        Check.Check(() => CopperWire.LoopResistance(tenFeet, CopperWire.PerKilometre(CopperWire.Diameter(12)), cold), "0.0318 Ohm", Qubix, "10 ft of 12 AWG");
        Check.Check(() => CopperWire.LoopResistance(tenFeet, CopperWire.PerKilometre(CopperWire.Diameter(11)), cold), "0.0252 Ohm", Qubix, "10 ft of 11 AWG");
        ElectricResistance loop12 = 0.0318.Ohm, loop11 = 0.0252.Ohm;
        Check.Check(() => DampingFactor.WithCable(eight, none, loop11), "317", Qubix);
        Check.Check(() => DampingFactor.Of(eight, loop11), "317", Qubix);
        Check.Disagrees(() => DampingFactor.Of(eight, loop12), "200", "252", Qubix, "8 Ω over the page's own 0.0318 Ω is 252; its next line, 317, is right.");
    }

    [Fact]
    public void A_maker_s_table_of_cable_loss()
    {
        Length near = 2.5.m, far = 20.m;
        Temperature cold = 20.degC;
        ElectricResistance eight = 8.Ohm, four = 4.Ohm, printed = 0.103.Ohm, long18 = 0.827.Ohm;
        (int Gauge, string Printed)[] rows = [(16, "0.066 Ohm"), (14, "0.041 Ohm"), (12, "0.026 Ohm"), (10, "0.016 Ohm")];
        Check.Table(rows, r => CopperWire.LoopResistance(near, CopperWire.PerKilometre(CopperWire.Diameter(r.Gauge)), cold), r => r.Printed, Das, "2.5 m, there and back; 18 AWG stands below");
        Check.Disagrees(() => CopperWire.LoopResistance(near, CopperWire.PerKilometre(CopperWire.Diameter(18)), cold), "0.103 Ohm", "0.1047 Ohm", Das, "The table's 18 AWG is 1.7 % low: its wire would be 1.03 mm thick.");
        Check.Disagrees(() => CopperWire.LoopResistance(far, CopperWire.PerKilometre(CopperWire.Diameter(18)), cold), "0.827 Ohm", "0.8379 Ohm", Das, "The same 18 AWG.");
        Check.Check(() => CableLoss.Nominal(printed, eight), "1.3 %", Das);
        Check.Check(() => CableLoss.Nominal(printed, four), "2.6 %", Das);
        Check.Check(() => CableLoss.Nominal(long18, eight), "10.3 %", Das);
        Check.Disagrees(() => CableLoss.Share(long18, eight), "10.3 %", "9.37 %", Das, "The table's loss is R/Z, the cable's power over the load's; of the amplifier's power the cable takes R/(R + Z).");
    }

    [Fact]
    public void Computed_inductance_and_dividers()
    {
        var metre = 1.m;
        Check.Computed(Reference.Read("two-wire-inductance.csv"), r => CopperWire.LoopInductance(metre, Length.FromMeters(r["d"]), Length.FromMeters(r["D"])), "L_per_m", 1e-8);
        var rows = Reference.Read("cable-and-damping.csv");
        Check.Computed(rows, r => CableLoss.Level(Ohms(r["R_c"]), Ohms(r["R_L"])), "level");
        Check.Computed(rows, r => CableLoss.Share(Ohms(r["R_c"]), Ohms(r["R_L"])), "share");
        Check.Computed(rows, r => DampingFactor.WithCable(Ohms(r["R_L"]), Ohms(r["R_o"]), Ohms(r["R_c"])), "DF");
        Check.Computed(rows, r => DriverNetwork.ElectricalQ(r["Q_es"], Ohms(r["R_vc"]), Ohms(r["R_o"])), "Q");
    }
}
