using EightOhm.OutputStage;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class OutputStageChecks
{
    [Fact]
    public void Heat_of_one_device_of_a_pair()
    {
        ElectricPotential rail = 23.V, thirty = 30.V;
        ElectricResistance eight = 8.Ohm, sixteen = 16.Ohm;
        Check.Check(() => ClassBDissipation.Worst(rail, eight, 1) / 2, "6.7 W", Sedra("Ex 14.1, p. 1239"));
        Check.Against(() => ClassBDissipation.Worst(rail, eight, 1) / 2, ClassBDissipation.Worst(rail, eight, 1), "the pair's heat taken for one device's", "6.7 W", Sedra("Ex 14.1, p. 1239"));
        Check.Check(() => ClassBDissipation.Worst(thirty, sixteen, 1) / 2, "5.7 W", new Source(BoylestadTitle, "Ex 12.8, p. 699", Seen.Page));
        var half = 10.V;
        Check.Disagrees(() => ClassBDissipation.Worst(half, eight, 1) / 2, "1.25 W", "1.2665 W", Malvino("Ex 12-8, p. 397"),
            "The book's MPP²/(40·R_L) rounds 4π² = 39.48 to 40; with a single supply of 20 V the rail is 10 V and V²/(π²·R_L) is 1.2665 W.");
    }

    [Fact]
    public void Four_channels_on_a_car_s_battery()
    {
        ElectricPotential half = 7.2.V, whole = 14.4.V;
        ElectricResistance four = 4.Ohm, two = 2.Ohm;
        Check.Check(() => 4 * ClassBDissipation.Worst(half, four, 1), "10.5 W", Sta540);
        Check.Check(() => ClassBDissipation.Worst(half, two, 1), "5.25 W", Sta540);
        Check.Check(() => (2 * ClassBDissipation.Worst(half, two, 1)) + ClassBDissipation.Worst(whole, four, 1), "21 W", Sta540, "two channels and a bridge");
        Check.Disagrees(() => ClassBDissipation.Worst(half, four, 1), "2.62 W", "2.626 W", Sta540, "The sheet cuts 2.6262 W off after two decimals; its sum, 10.5 W, is right.");
        Check.Against(() => 4 * ClassBDissipation.Worst(half, four, 1), 4 * ClassBDissipation.Worst(whole, four, 1), "the whole single supply taken for one rail", "10.5 W", Sta540);
    }

    [Fact]
    public void Bridges_on_small_supplies()
    {
        ElectricPotential five = 5.V, three = 3.3.V;
        ElectricResistance eight = 8.Ohm, sixteen = 16.Ohm;
        Check.Check(() => ClassBDissipation.Worst(five, eight, 1), "633 mW", Source.Datasheet("STMicroelectronics, TS4995 datasheet", "eq. 3-5, p. 19"));
        Check.Check(() => ClassBDissipation.Worst(five, eight, 1), "633 mW", Source.Datasheet("National Semiconductor, application note AN-1192, training page", "5 V bridge into 8 Ω, calculated"));
        Check.Check(() => ClassBDissipation.Worst(three, sixteen, 1), "138 mW", Source.Datasheet("Texas Instruments, LM4818 datasheet, SNAS163B", "p. 12"));
    }

    [Fact]
    public void Heat_that_others_take_for_the_worst_or_measure()
    {
        ElectricPotential twentyEight = 28.V, twelve = 12.V;
        ElectricResistance four = 4.Ohm, eight = 8.Ohm;
        Check.Disagrees(() => ClassBDissipation.Worst(twentyEight, four, 1), "35.94 W", "39.72 W", Source.Secondhand("A hobby page on heat sinks for amplifier ICs, no document number", "28 V rails, 68 W into 4 Ω"),
            "The page takes the heat at full output, 103.94 W − 68 W, for the worst; the worst, 2V²/(π²·R_L), comes at 2/π of full swing.");
        Check.Disagrees(() => 2 * ClassBDissipation.Worst(twelve, eight, 1), "7.8 W", "7.30 W", Source.Datasheet("Philips, TDA1521A datasheet", "heat sink example, ±12 V, 8 Ω, two channels"),
            "The sheet's figure is measured and includes the quiescent heat, which the ideal formula leaves out.");
    }

    [Fact]
    public void Worst_heat_by_integration_over_the_period_for_loads_with_a_phase()
    {
        var (V, Z) = (1.V, 1.Ohm);
        Check.Computed(Reference.Read("class-b.csv"), r => ClassBDissipation.Worst(V, Z, Math.Cos(r["phase_deg"] * Math.PI / 180)), "heat_over_V2_per_Z");
    }

    [Fact]
    public void Junctions_of_a_biased_pair()
    {
        ElectricPotential V_T = 25.mV, any = 0.6.V;
        ElectricResistance none = 0.Ohm;
        ElectricCurrent quiescent = 2.mA, large = 0.1.pA, multiplier = 2.5.mA, small = 10.fA;
        var source = Sedra("Ex 14.3, p. 1248");
        Check.Check(() => 2 * EmitterBias.Loop(quiescent, any, none, large, V_T).Right, "1.19 V", source);
        Check.Check(() => EmitterBias.Loop(multiplier, any, none, small, V_T).Right, "0.66 V", source);
    }

    [Fact]
    public void A_transistor_as_a_diode_with_a_resistor()
    {
        ElectricPotential V = 0.9.V, V_T = 25.7025.mV;
        ElectricResistance R = 249.3.Ohm;
        ElectricCurrent I_s = 25.fA;
        var T = Temperature.FromKelvins(298);
        var source = Source.Datasheet("Boost Math, example lambert_w_diode.cpp (after Banwell & Jayakumar, Electronics Letters 36(4), 2000)", "printed output");
        Check.Check(() => EmitterBias.Current(V, R, I_s, V_T), "0.00108485 A", source);
        Check.Disagrees(() => EmitterBias.ThermalVoltage(T), "0.0257025 V", "25.67965 mV", source,
            "The example rounds k to 1.38e-23 J/K and q to 1.6e-19 C; the exact constants at 298 K give 25.67965 mV.");
    }

    [Fact]
    public void Thermal_voltage()
    {
        Temperature T = Temperature.FromKelvins(1), twenty = 20.degC, room = 27.degC;
        Check.Check(() => EmitterBias.ThermalVoltage(T), "8.617333262e-5 V", Source.Companion("CODATA 2018, Boltzmann constant in eV/K", "as scipy.constants 1.10.1 copies the table"));
        Check.Check(() => EmitterBias.ThermalVoltage(twenty), "25.3 mV", Source.FromMemory("A. S. Sedra & K. C. Smith, Microelectronic Circuits, 6th ed.", "ch. 4"));
        Check.TradeFact(() => EmitterBias.ThermalVoltage(room), "26 mV");
        Check.Computed(Reference.Read("thermal-voltage.csv"), r => EmitterBias.ThermalVoltage(Temperature.FromKelvins(r["t_C"] + 273.15)), "V_T");
    }

    [Fact]
    public void Current_of_a_junction_with_a_resistor_from_femtoamperes_to_a_fault() => Check.Computed(
        Reference.Read("junction.csv"),
        r => EmitterBias.Current(ElectricPotential.FromVolts(r["V"]), ElectricResistance.FromOhms(r["R"]), ElectricCurrent.FromAmperes(r["I_s"]), ElectricPotential.FromVolts(r["V_T"])),
        "I");
}
