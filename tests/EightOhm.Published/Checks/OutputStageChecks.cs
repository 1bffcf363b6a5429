using EightOhm.Devices;
using EightOhm.OutputStages;
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
        Check.Disagrees(() => Junction.ThermalVoltage(T), "0.0257025 V", "25.67965 mV", source,
            "The example rounds k to 1.38e-23 J/K and q to 1.6e-19 C; the exact constants at 298 K give 25.67965 mV.");
    }

    [Fact]
    public void Thermal_voltage()
    {
        Temperature T = Temperature.FromKelvins(1), twenty = 20.degC, room = 27.degC;
        Check.Check(() => Junction.ThermalVoltage(T), "8.617333262e-5 V", Source.Companion("CODATA 2018, Boltzmann constant in eV/K", "as scipy.constants 1.10.1 copies the table"));
        Check.Check(() => Junction.ThermalVoltage(twenty), "25.3 mV", Source.FromMemory("A. S. Sedra & K. C. Smith, Microelectronic Circuits, 6th ed.", "ch. 4"));
        Check.TradeFact(() => Junction.ThermalVoltage(room), "26 mV");
        Check.Computed(Reference.Read("thermal-voltage.csv"), r => Junction.ThermalVoltage(Temperature.FromKelvins(r["t_C"] + 273.15)), "V_T");
    }

    [Fact]
    public void Current_of_a_junction_with_a_resistor_from_femtoamperes_to_a_fault() => Check.Computed(
        Reference.Read("junction.csv"),
        r => EmitterBias.Current(ElectricPotential.FromVolts(r["V"]), ElectricResistance.FromOhms(r["R"]), ElectricCurrent.FromAmperes(r["I_s"]), ElectricPotential.FromVolts(r["V_T"])),
        "I");
}
