using EightOhm.Loads;
using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class LoadChecks
{
    [Fact]
    public void A_driver_s_network_beside_its_maker_s()
    {
        var maker = Source.Datasheet("Kicker, Thiele/Small parameters of 49ST9MR8", "Res, Lces, Qts");
        ElectricResistance R_vc = 6.18.Ohm;
        var f_s = 110.3.Hz;
        Check.Check(() => DriverNetwork.Resistance(R_vc, 4.537, 1.297), "21.62 Ohm", maker);
        Check.Check(() => DriverNetwork.Inductance(R_vc, f_s, 1.297), "6.88 mH", maker);
        Check.Check(() => DriverNetwork.TotalQ(4.537, 1.297), "1.009", maker);
        Check.Against(() => DriverNetwork.Resistance(R_vc, 4.537, 1.297), R_vc + DriverNetwork.Resistance(R_vc, 4.537, 1.297), "the peak of the impedance taken for the motional resistance", "21.62 Ohm", maker);
        Check.Disagrees(() => DriverNetwork.Capacitance(R_vc, f_s, 1.297), "302.84 uF", "302.83 uF", maker, "From the sheet's own rounded Q and resonance; the last digit is theirs.");
    }

    [Fact]
    public void A_worked_example_of_a_driver_s_network()
    {
        var page = Source.Secondhand("Modelling a woofer's impedance, integracoustics.com", "R, C and L from published parameters");
        ElectricResistance R_vc = 6.Ohm;
        var f_s = 70.7.Hz;
        Check.Check(() => DriverNetwork.Resistance(R_vc, 4.27, 0.34), "75.35 Ohm", page);
        Check.Check(() => DriverNetwork.Capacitance(R_vc, f_s, 0.34), "127.56 uF", page);
        Check.Check(() => DriverNetwork.Inductance(R_vc, f_s, 0.34), "39.73 mH", page);
    }

    [Fact]
    public void Equivalent_resistors_by_integration_and_dense_scan()
    {
        var one = 1.Ohm;
        var rows = Reference.Read("load-equivalents.csv");
        Check.Computed(rows, r => EquivalentResistor.Average(one, Angle.FromDegrees(r["phase_deg"])), "average");
        Check.Computed(rows, r => EquivalentResistor.Peak(one, Angle.FromDegrees(r["phase_deg"])), "peak");
    }

    [Fact]
    public void A_driver_by_node_equations()
    {
        var rows = Reference.Read("driver-impedance.csv");
        Check.Computed(rows, r => DriverNetwork.Resistance(Ohms(r["R_vc"]), r["Q_ms"], r["Q_es"]), "R_es");
        Check.Computed(rows, r => DriverNetwork.Capacitance(Ohms(r["R_vc"]), Frequency.FromHertz(r["f_s"]), r["Q_es"]), "C_mes");
        Check.Computed(rows, r => DriverNetwork.Inductance(Ohms(r["R_vc"]), Frequency.FromHertz(r["f_s"]), r["Q_es"]), "L_ces");
        foreach (var r in rows.Rows)
        {
            var f = r["f"].Hz;
            Near(r["Z"], Driver(r).Magnitude(f).Ohms, 1e-10);
            Assert.Equal(r["phase_deg"], Driver(r).Phase(f).Degrees, 1e-8);
        }

        Check.Computed(rows, r => EquivalentResistor.Average(Driver(r).Magnitude(Frequency.FromHertz(r["f"])), Driver(r).Phase(Frequency.FromHertz(r["f"]))), "average");
        Check.Computed(rows, r => EquivalentResistor.Peak(Driver(r).Magnitude(Frequency.FromHertz(r["f"])), Driver(r).Phase(Frequency.FromHertz(r["f"]))), "peak");
    }

    [Fact]
    public void The_least_of_a_band_and_where()
    {
        foreach (var r in Reference.Read("driver-minima.csv").Rows)
        {
            var least = Driver(r).Least();
            Near(r["Z"], least.Impedance.Ohms, 1e-9);
            Near(r["average"], least.AverageEquivalent.Ohms, 1e-9);
            Near(r["peak"], least.PeakEquivalent.Ohms, 1e-9);
            Near(r["f_Z"], least.ImpedanceAt.Hertz, 1e-4);
            Near(r["f_average"], least.AverageEquivalentAt.Hertz, 1e-4);
            Near(r["f_peak"], least.PeakEquivalentAt.Hertz, 1e-4);
        }
    }

    [Fact]
    public void Worst_programme_current_by_state_space()
    {
        var volt = 1.V;
        Check.Computed(Reference.Read("programme-current.csv"), r => OutputCurrent.WorstProgramme(volt, Driver(r).AbsoluteArea), "per_volt", 1e-9);
        Check.Computed(Reference.Read("programme-current-no-coil.csv"), r => OutputCurrent.WorstProgramme(volt, new BoxedDriver(Ohms(r["R_vc"]), default, Frequency.FromHertz(r["f_s"]), r["Q_ms"], r["Q_es"]).AbsoluteArea), "per_volt", 1e-9);
    }

    [Fact]
    public void Current_after_a_step_by_the_matrix_exponential()
    {
        foreach (var r in Reference.Read("step-current.csv").Rows)
            Near(r["per_volt"], Driver(r).StepCurrent(1.V, r["t"].s).Amperes, 1e-8);
    }

    [Fact]
    public void The_hottest_instant_of_one_side()
    {
        var rows = Reference.Read("load-ellipse.csv");
        Check.Computed(rows, r => OutputCurrent.Sine(ElectricPotential.FromVolts(r["V_p"]), Ohms(r["Z"])), "peak_current");
        foreach (var r in rows.Rows)
            Near(r["peak_heat"], (double)new LoadEllipse(r["V"].V, r["V_p"].V, r["Z"].Ohm, r["phase_deg"].deg, 0.Ohm, 1).PeakDissipation.Watts, 1e-9);
        foreach (var r in Reference.Read("load-ellipse-of-one.csv").Rows)
        {
            var path = new LoadEllipse(r["V"].V, r["V_p"].V, r["Z"].Ohm, r["phase_deg"].deg, r["R_E"].Ohm, (int)r["n"]);
            Near(r["peak_heat"], (double)path.PeakDissipation.Watts, 1e-9);
            Near(r["hottest_V"], path.VoltageAtPeak.Volts, 1e-4);
            Near(r["hottest_I"], path.CurrentAtPeak.Amperes, 1e-4);
        }
    }

    [Fact]
    public void An_8_ohm_box_is_2_9_ohm_to_a_transistor()
    {
        var box = new BoxedDriver(5.8.Ohm, 0.5.mH, 45.Hz, 3, 0.6);
        var least = box.Least();
        Assert.Equal(5.84, least.Impedance.Ohms, 0.005);
        Assert.Equal(2.90, least.PeakEquivalent.Ohms, 0.005);
        Assert.InRange(least.PeakEquivalentAt.Hertz, 1800, 2200);
        Assert.Equal(14.09, box.WorstProgrammeCurrent(40.V).Amperes, 0.005);
        Assert.Equal(6.85, box.SineCurrent(40.V, least.ImpedanceAt).Amperes, 0.005);
    }

    [Fact]
    public void Two_equivalents_and_the_mistakes_beside_them()
    {
        Assert.Equal(0.7071, EquivalentResistor.Average(1.Ohm, 45.deg).Ohms, 5e-5);
        Assert.Equal(0.3536, EquivalentResistor.Peak(1.Ohm, 45.deg).Ohms, 5e-5);
        Assert.Equal(0.2781, EquivalentResistor.Peak(1.Ohm, 60.deg).Ohms, 5e-5);
        // |Z|·cos φ past 50.46° would give 0.5: the worst level would be above the rail.
        Assert.Equal(0.5241, EquivalentResistor.Average(1.Ohm, 60.deg).Ohms, 5e-5);
        foreach (var phase in new[] { 0.0, 20, 45, 50, 55, 70, 90 })
        {
            var heat = (double)ClassB.Worst(46.V, 4.Ohm, phase.deg).Watts;
            Near(heat, (double)ClassB.Worst(46.V, EquivalentResistor.Average(4.Ohm, phase.deg), 0.deg).Watts, 1e-12);
        }
    }

    [Fact]
    public void A_damping_factor_of_1000_moves_the_Q_by_3_percent_against_40()
    {
        var eight = 8.Ohm;
        double Q(double df) => DriverNetwork.ElectricalQ(0.6, 5.8.Ohm, DampingFactor.OutputResistance(eight, df));
        Assert.Equal(0.033, (Q(40) / Q(1000)) - 1, 0.0005);
    }

    private static BoxedDriver Driver(ReferenceRow r) => new(Ohms(r["R_vc"]), ElectricInductance.FromHenries(r["L"]), Frequency.FromHertz(r["f_s"]), r["Q_ms"], r["Q_es"]);

    private static void Near(double theirs, double ours, double relative) =>
        Assert.True(Math.Abs((ours / theirs) - 1) <= relative, FormattableString.Invariant($"{theirs:R} there, ours is {ours:R}."));
}
