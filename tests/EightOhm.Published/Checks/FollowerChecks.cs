using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

[Checks]
public class FollowerChecks
{
    private static readonly Source Solutions = Source.Secondhand("Solutions to A. S. Sedra & K. C. Smith, Microelectronic Circuits, passeidireto.com/arquivo/194352491", "exercise 12.5, class AB with 100 Ω");

    private static readonly Source Oliver = Source.Secondhand("B. M. Oliver, Hewlett-Packard Journal, Feb. 1971, quoted in audioasylum message 44849", "26 mV on 0.22 Ω");

    [Fact]
    public void Bias_by_two_diodes_with_what_the_output_takes_from_them()
    {
        ElectricCurrent bias = 3.mA, I_s = 100.fA / 3, idle = 9.mA, load = 100.mA;
        var V_T = 25.mV;
        ElectricCurrent atZero = bias - (idle / 51), up = bias - (load / 51), down = bias;
        var source = Sedra("Ex 14.2, p. 1245");
        Check.Check(() => Junction.InSeries(2, atZero, V_T, I_s), "1.26 V", source, "output 0 V");
        Check.Against(() => Junction.InSeries(2, up, V_T, I_s), Junction.InSeries(2, bias, V_T, I_s), "the outputs' base current forgotten", "1.21 V", source);
        Check.Check(() => Junction.InSeries(2, down, V_T, I_s), "1.26 V", source, "output −10 V");
        Check.Against(() => Junction.InSeries(2, atZero, V_T, I_s), Junction.InSeries(2, atZero, V_T, 100.fA), "the diodes taken as large as the outputs", "1.26 V", source);
    }

    [Fact]
    public void Bias_by_two_diodes_of_another_book()
    {
        ElectricCurrent I = 180.uA, I_s = 10.fA;
        var V_T = 26.mV;
        var source = Source.Secondhand("Solutions to D. A. Neamen, Microelectronics: Circuit Analysis and Design, coursehero.com/file/8596/Ch13p", "EX13.3");
        Check.Check(() => Junction.InSeries(1, I, V_T, I_s), "0.6140 V", source);
        Check.Check(() => Junction.InSeries(2, I, V_T, I_s), "1.228 V", source);
    }

    [Fact]
    public void A_multiplied_junction()
    {
        ElectricCurrent idle = 2.mA, large = 100.fA, multiplier = 2.5.mA, small = 10.fA, divider = 0.5.mA;
        ElectricPotential V_T = 25.mV, V_BE = 0.66.V, V_BB = 1.19.V, exact = Junction.InSeries(1, 2.5.mA, 25.mV, 10.fA);
        ElectricResistance R_1 = 1.32.kOhm, R_2 = 1.06.kOhm;
        var source = Sedra("Ex 14.3, p. 1248");
        Check.Check(() => Junction.InSeries(2, idle, V_T, large), "1.19 V", source);
        Check.Check(() => Junction.InSeries(1, multiplier, V_T, small), "0.66 V", source);
        Check.Check(() => VbeMultiplier.LowerResistor(exact, divider), "1.31 kOhm", source, "with V_BE = 0.6561 V; the printed 0.66 V gives 1.32 kΩ");
        Check.Check(() => VbeMultiplier.UpperResistor(V_BB, V_BE, divider), "1.06 kOhm", source);
        Check.Check(() => VbeMultiplier.Voltage(V_BE, R_1, R_2), "1.19 V", source);
    }

    [Fact]
    public void Gain_and_output_resistance_of_a_class_AB_pair_by_the_whole_solver()
    {
        ElectricPotential V_T = 25.mV, zero = 0.V, ten = 10.V;
        ElectricResistance R_L = 100.Ohm, none = 0.Ohm;
        ElectricCurrent low = 2.mA, high = 10.mA;
        var pair = new EmitterFollowerStage(R_L, 1, none) { Device = new() { SaturationCurrent = 100.fA, Junction = Temperature.FromKelvins(V_T.Volts * Constants.q.Coulombs / 1.380649e-23) } };
        FollowerBias two = pair.BiasedAt(low), ten_mA = pair.BiasedAt(high);
        Check.Check(() => Crossover.GainAtZero(R_L, V_T, low, none, 1).Ratio, "0.941", Solutions, "2 mA");
        Check.Check(() => Crossover.GainAtZero(R_L, V_T, high, none, 1).Ratio, "0.988", Solutions, "10 mA");
        Check.Check(() => Crossover.OutputResistance(two.GainAt(zero), R_L), "6.25 Ohm", Solutions, "2 mA, output 0 V");
        Check.Check(() => Crossover.OutputResistance(ten_mA.GainAt(zero), R_L), "1.25 Ohm", Solutions, "10 mA, output 0 V");
        Check.Check(() => Crossover.OutputResistance(two.GainAt(ten), R_L), "0.25 Ohm", Solutions, "2 mA, output 10 V");
        Check.Against(() => Crossover.OutputResistance(two.GainAt(ten), R_L), Crossover.EmitterResistance(V_T, 100.mA + low), "the idle current added to the load's", "0.250 Ohm", Solutions with { Place = "exercise 12.5, 25 mV over 100 mA" });
        Assert.Equal(0.998, two.GainAt(ten).Ratio, 0.0005);
        Assert.Equal(two.GainAtZero.Ratio, Crossover.GainAtZero(R_L, V_T, low, none, 1).Ratio, 1e-12);
    }

    [Fact]
    public void The_rule_of_26_millivolts()
    {
        ElectricPotential V_T = 26.mV, hot = Junction.ThermalVoltage(55.degC);
        ElectricResistance R_E = 0.22.Ohm, none = 0.Ohm, inside = 52.5.mOhm;
        Check.Check(() => Crossover.EqualGainCurrent(V_T, R_E, none, none, 50), "118 mA", Oliver);
        Check.Against(() => Crossover.EqualGainCurrent(V_T, R_E, none, none, 50), Crossover.EqualGainCurrent(V_T, R_E, inside, none, 50), "an inner resistance that the rule's example leaves out", "118 mA", Oliver);
        Check.TradeFact(() => Crossover.EmitterResistorDrop(V_T, R_E, none, none, 50), "26 mV");
        Check.Check(() => Crossover.EqualGainCurrent(V_T, R_E, none), "118 mA", Oliver);
        Check.TradeFact(() => Crossover.EmitterResistorDrop(V_T, R_E, none), "26 mV");
        Check.Against(() => Crossover.EqualGainCurrent(V_T, R_E, none), Crossover.EqualGainCurrent(V_T, R_E, inside), "an inner resistance that the rule's example leaves out", "118 mA", Oliver);
        // At 55 °C and with the resistance inside the device the meter must not show 26 mV.
        Assert.Equal(0.1038, Crossover.EqualGainCurrent(hot, R_E, inside).Amperes, 0.00005);
        Assert.Equal(22.83e-3, Crossover.EmitterResistorDrop(hot, R_E, inside).Volts, 0.005e-3);
        Check.Computed(Reference.Read("equal-gain.csv"), r => Crossover.EqualGainCurrent(V(r["V_T"]), R(r["R_E"]), R(r["r_int"]), R(r["r_b"]), r["h_FE"]), "I_q");
        Check.Computed(Reference.Read("equal-gain.csv"), r => Crossover.EmitterResistorDrop(V(r["V_T"]), R(r["R_E"]), R(r["r_int"]), R(r["r_b"]), r["h_FE"]), "V_RE");
        Check.Computed(Reference.Read("equal-gain.csv"), r => Crossover.EmitterResistorDrop(V(r["V_T"]), R(r["R_E"]), R(r["r_int"] + r["r_b"] / r["h_FE"])), "V_RE");
    }

    [Fact]
    public void Gains_of_the_closed_forms()
    {
        var rows = Reference.Read("crossover-gains.csv");
        Check.Computed(rows, r => Crossover.EmitterResistance(V(r["V_T"]), I(r["I_q"])), "r_e");
        Check.Computed(rows, r => Crossover.GainAtZero(R(r["R_L"]), V(r["V_T"]), I(r["I_q"]), R(r["R"]), (int)r["n"]).Ratio, "A_0");
        Check.Computed(rows, r => Crossover.LargeSignalGain(R(r["R_L"]), R(r["R"]), (int)r["n"]).Ratio, "A_far");
    }

    [Fact]
    public void Charge_of_the_outputs()
    {
        var rows = Reference.Read("charge-control.csv");
        Check.Computed(rows, r => ChargeControl.Current(I(r["I_p"]), Frequency.FromHertz(r["f"]), Frequency.FromHertz(r["f_T"])), "I_Q");
        Check.Computed(rows, r => ChargeControl.LimitFrequency(I(r["I_dr"]), I(r["I_p"]), Frequency.FromHertz(r["f_T"])), "f_Q");
        Assert.Equal(94.2e3, ChargeControl.LimitFrequency(29.8.mA, 9.49.A, 30.MHz).Hertz, 50.0);
    }

    [Fact]
    public void Gain_that_droops()
    {
        var rows = Reference.Read("beta-droop.csv");
        Check.Computed(rows, r => BetaDroop.BaseCurrent(r["h_0"], I(r["I"]), I(r["I_k"])), "I_B");
        Check.Computed(rows, r => BetaDroop.CurrentGain(r["h_0"], I(r["I"]), I(r["I_k"])), "h_FE");
    }

    [Fact]
    public void Followers_solved_at_their_nodes_by_another_method()
    {
        var rows = Reference.Read("followers.csv");
        Check.Computed(rows, r => Crossover.OutputResistance(Stage(r).BiasedAt(I(r["idle"])).GainAt(V(r["v_out"])), R(r["R_L"])), "R_out", 2e-7);
        foreach (var r in rows.Rows)
        {
            var at = Stage(r).BiasedAt(I(r["idle"]));
            Assert.Equal(r["V_b"], at.BiasVoltage.Volts, 1e-12);
            Assert.Equal(r["idle"], Stage(r).BiasedBy(V(r["V_b"])).IdleCurrent.Amperes, 1e-12);
            Assert.Equal(r["v_out"], at.OutputFor(V(r["v_in"])).Volts, 1e-9);
            Assert.Equal(r["v_in"], at.InputFor(V(r["v_out"])).Volts, 1e-9);
            Assert.Equal(r["gain"], at.GainAt(V(r["v_out"])).Ratio, 2e-9);
        }
    }

    [Fact]
    public void Harmonics_by_a_Fourier_transform_of_the_whole_period()
    {
        foreach (var r in Reference.Read("follower-harmonics.csv").Rows)
        {
            var over = Stage(r).DistortionDriven([V(r["V_b"])], V(r["V_in"]), 10, 1024);
            Assert.Equal(r["V_1"], over.Fundamental.Y[0], 1e-9);
            Assert.Equal(1, over.Thd.Y[0] / r["THD"], 1e-8);
            for (var h = 2; h <= 10; h++)
                Assert.Equal(r[$"H{h}"], Math.Abs(over.Harmonic(h).Y[0]), 1e-11);
        }
    }

    [Fact]
    public void Least_distortion_by_another_minimiser()
    {
        foreach (var r in Reference.Read("follower-least-thd.csv").Rows)
        {
            var best = (Stage(0, r["R_L"])).LeastDistortionBias(V(r["level"]));
            // A minimum is flat: its place has half the digits. 4096 samples here, 1024 there.
            Assert.Equal(1, best.IdleCurrent.Amperes / r["idle"], 1e-3);
            Assert.Equal(1, best.StaticThd.DecimalFractions / r["THD"], 1e-3);
        }
    }

    private static EmitterFollowerStage Stage(ReferenceRow r) => Stage((int)r["stage"], r["R_L"]);

    // The stages of tests/references/followers.py, by their numbers.
    private static EmitterFollowerStage Stage(int number, double load)
    {
        LargeSignalModel plain = new() { Junction = 55.degC, InternalResistance = 52.5.mOhm };
        var droop = plain with { CurrentGain = 100, KneeCurrent = 5.A };
        LargeSignalModel driver = new() { SaturationCurrent = 200.fA, Junction = 50.degC, InternalResistance = 0.3.Ohm, CurrentGain = 100, KneeCurrent = 1.A };
        LargeSignalModel pre = new() { SaturationCurrent = 50.fA, Junction = 40.degC, CurrentGain = 150 };
        var three = new EmitterFollowerStage(load.Ohm, 3, 0.22.Ohm);
        return number switch
        {
            0 => three with { Device = plain },
            1 => three with { Device = droop, Source = 10.Ohm },
            2 => new EmitterFollowerStage(load.Ohm, 1, 0.22.Ohm) { Device = new() { SaturationCurrent = 100.pA }, Complement = new() { SaturationCurrent = 130.pA } },
            3 => three with { Device = droop, Drivers = new(47.Ohm) { Device = driver }, Source = 100.Ohm },
            _ => three with
            {
                Device = droop,
                Complement = droop with { CurrentGain = 70, SaturationCurrent = 3.pA },
                Drivers = new(47.Ohm) { Device = driver, Complement = driver with { CurrentGain = 60 } },
                PreDrivers = new(150.Ohm) { Device = pre },
                Source = 2.kOhm,
            },
        };
    }

    private static ElectricPotential V(double v) => ElectricPotential.FromVolts(v);

    private static ElectricResistance R(double r) => ElectricResistance.FromOhms(r);

    private static ElectricCurrent I(double i) => ElectricCurrent.FromAmperes(i);
}
