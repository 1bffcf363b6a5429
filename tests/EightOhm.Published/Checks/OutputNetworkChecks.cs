using EightOhm.Feedback;
using EightOhm.OutputNetworks;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class OutputNetworkChecks
{
    [Fact]
    public void A_capacitive_load_behind_a_resistor()
    {
        ElectricResistance r_o = 100.Ohm, R_1 = 10.kOhm, R_2 = 20.kOhm;
        var C_L = 5.nF;
        Check.Check(() => Isolation.Resistor(r_o, R_1, R_2), "50 ohm", Franco("Ex 8.5, p. 364"));
        Check.Check(() => Isolation.Capacitor(r_o, R_1, R_2, C_L), "56 pF", Franco("Ex 8.5, p. 364"));
    }

    [Fact]
    public void Impedance_of_a_woofer_made_level()
    {
        ElectricInductance L_e = 1.87.mH;
        ElectricResistance R = 8.125.Ohm;
        Check.Check(() => Zobel.EqualizerCapacitor(L_e, R), "28.3 uF", Source.Datasheet("Dayton Audio, BR-1 manual", "p. 4"));
    }

    [Fact]
    public void Coils_by_elliptic_integrals()
    {
        var rows = Reference.Read("air-coils.csv");
        Check.Computed(rows, r => AirCoil.Inductance(r["n"], Length.FromMeters(r["D"]), Length.FromMeters(r["l"])), "L", 0.01);
        var wire = Reference.Read("coil-wire.csv");
        Check.Computed(wire, r => AirCoil.WireLength(r["n"], Length.FromMeters(r["D"]), Length.FromMeters(r["leads"])), "l_w");
        Check.Computed(wire, r => AirCoil.Resistance(Length.FromMeters(r["l_w"]), Length.FromMeters(r["d_w"]), Temperature.FromDegreesCelsius(r["T_C"])), "R");
        Check.Computed(wire, r => AirCoil.Heat(ElectricCurrent.FromAmperes(r["I_rms"]), ElectricResistance.FromOhms(r["R"])), "P");
    }

    [Fact]
    public void Coil_and_Zobel_network_by_complex_node_equations()
    {
        var rows = Reference.Read("output-network.csv");
        Check.Computed(rows, r => DampedCoil.SeriesResistance(Frequency.FromHertz(r["f"]), ElectricInductance.FromHenries(r["L"]), ElectricResistance.FromOhms(r["R"])), "R_s");
        Check.Computed(rows, r => DampedCoil.SeriesReactance(Frequency.FromHertz(r["f"]), ElectricInductance.FromHenries(r["L"]), ElectricResistance.FromOhms(r["R"])), "X_s");
        Check.Computed(rows, r => DampedCoil.Level(Frequency.FromHertz(r["f"]), ElectricResistance.FromOhms(r["R_L"]), ElectricInductance.FromHenries(r["L"]), ElectricResistance.FromOhms(r["R"])), "level");
        Check.Computed(rows, r => DampedCoil.DampingFactor(Frequency.FromHertz(r["f"]), ElectricResistance.FromOhms(r["R_L"]), ElectricInductance.FromHenries(r["L"]), ElectricResistance.FromOhms(r["R"])), "DF");
        Check.Computed(rows, r => Zobel.Dissipation(ElectricPotential.FromVolts(r["V"]), Frequency.FromHertz(r["f"]), ElectricResistance.FromOhms(r["R_Z"]), ElectricCapacitance.FromFarads(r["C_Z"])), "P_Z");
        Check.Computed(rows, r => Zobel.Corner(ElectricResistance.FromOhms(r["R_Z"]), ElectricCapacitance.FromFarads(r["C_Z"])), "f_Z");
    }

    [Fact]
    public void Output_impedance_by_complex_node_equations()
    {
        var rows = Reference.Read("output-impedance.csv");
        // A coil of 7 mΩ; the cable's 70 mΩ and 3 µH are put behind it here, since a cable is made of copper and centimetres.
        var network = new OutputNetwork { Inductance = 1.uH, CoilResistance = 7.mOhm, DampingResistor = 10.Ohm, OpenLoopResistance = 0.15.Ohm, Loop = TransferFunction.Integrator(1.1.MHz) * TransferFunction.Pole(8.MHz) };
        Check.Solved("OutputNetwork.ImpedanceAt", rows, r => network.ImpedanceAt(r["f"].Hz, r["R_L"].Ohm).AtTerminals.Ohms, "terminals", 1e-9);
        Check.Solved("OutputNetwork.ImpedanceAt", rows, r => network.ImpedanceAt(r["f"].Hz, r["R_L"].Ohm).DampingAtTerminals, "DF", 1e-9);
    }

    [Fact]
    public void Capacitive_loads_by_maximisation()
    {
        var rows = Reference.Read("capacitive-loads.csv");
        var ideal = new OutputNetwork { Inductance = 1.uH, DampingResistor = 10.Ohm };
        var whole = ideal with { OpenLoopResistance = 0.15.Ohm, Loop = TransferFunction.Integrator(1.1.MHz) * TransferFunction.Pole(8.MHz) * TransferFunction.Pole(40.MHz) };
        CapacitiveLoad With(OutputNetwork network, ReferenceRow r) => network.WithCapacitors(r["R_L"].Ohm, [ElectricCapacitance.FromFarads(r["C"])]).Loads[0];
        const string name = "OutputNetwork.WithCapacitors";
        Check.Solved(name, rows, r => With(ideal, r).Peak!.Value.Ratio, "ideal_peak", 1e-8);
        Check.Solved(name, rows, r => With(ideal, r).PeakFrequency!.Value.Hertz, "ideal_f", 1e-5);
        Check.Solved(name, rows, r => With(whole, r).Peak!.Value.Ratio, "peak", 1e-8);
        Check.Solved(name, rows, r => With(whole, r).PeakFrequency!.Value.Hertz, "f", 1e-5);
        Check.Solved(name, rows, r => With(whole, r).SensitivityPeak!.Value, "M_s", 1e-8);
    }

    [Fact]
    public void Level_error_of_the_whole_output()
    {
        // With no loop and no cable the output is the damped coil's formula.
        var rows = Reference.Read("output-network.csv");
        Check.Solved("OutputNetwork.Level", rows, r => new OutputNetwork { Inductance = r["L"].H, DampingResistor = r["R"].Ohm }.Level(r["f"].Hz, r["R_L"].Ohm).Ratio, "level", 1e-9);
    }
}
