using EightOhm.Circuits;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using UnitsNet;
using static EightOhm.Published.Checks.Books;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Textbook circuits put in part by part and solved whole: what the book reaches by rules.</summary>
[Checks]
public class CircuitChecks
{
    // The books' V_T of 25 and 26 mV are junction temperatures.
    private static readonly Temperature At25mV = Temperature.FromKelvins(0.025 * Constants.q.Coulombs / Constants.k.JoulesPerKelvin), At26mV = Temperature.FromKelvins(0.026 * Constants.q.Coulombs / Constants.k.JoulesPerKelvin);

    private static readonly IReadOnlyList<Frequency> VeryWide = [.. Sweep.Log(1e-3, 1e12, 20).Select(f => Frequency.FromHertz(f))];

    [Fact]
    public void Poles_of_a_compensated_amplifier()
    {
        // C = 159 nF, and 31.83 pF from output to input of the second stage (the book's rounded 32 pF).
        var shunt = TwoStages();
        shunt.Capacitor("Cc", "a", "0", 159.nF);
        Check.Solved("Circuit.Poles", shunt.Poles()[0].Frequency, "10 Hz", Franco("Ex 8.8, p. 369"), "the dominant pole with the capacitor chosen there");
        var miller = TwoStages();
        miller.Capacitor("Cc", "a", "b", Farads(31.83e-12));
        Check.Solved("Circuit.Poles", miller.Poles()[0].Frequency, "100 Hz", Franco("Ex 8.9, p. 370"));
        Check.Solved("Circuit.Poles", miller.Poles()[^1].Frequency, "77 MHz", Franco("Ex 8.9, p. 370"), "the pole split off");

        // The aim was 45° with the pole at 10 MHz as second; with the one split off and the zero on the right the finished circuit has less.
        var closed = TwoStages(fed: true);
        closed.Capacitor("Cc", "a", "b", Farads(31.83e-12));
        closed.VoltageControlledVoltage("E3", "d", "0", "b", "0", Gain.FromRatio(1));
        closed.Resistor("R3", "d", "out", 1.kOhm);
        closed.Capacitor("C3", "out", "0", Farads(1 / (Math.Tau * 1e3 * 1e7)));
        closed.VoltageControlledVoltage("E4", "fb", "0", "out", "0", Gain.FromRatio(1));
        Check.SolvedOtherwise("Circuit.ReturnRatio", closed.ReturnRatio("G1").PhaseMargin!.Value, "45 deg", "37.0 deg", Franco("Ex 8.9, p. 370: the margin aimed at"), "The rule takes the second pole alone; the pole split off at 77 MHz and the zero in the right half plane at 50 MHz take another 8°.");
    }

    [Fact]
    public void Three_poles_by_their_phase()
    {
        var c = Poles(3600, 1e6, 4e6, 40e6);
        var r = c.Response("in", "out", VeryWide);
        var there = Frequency.FromHertz(4.772e6);
        Assert.Equal(-135, r.PhaseAt(there).Degrees, 0.01);
        Check.Solved("Circuit.Response", Gain.FromRatio(r.MagnitudeAt(there).Ratio), "471", Franco("Ex 8.6, p. 367"), "where the phase is −135°");
        var loop = Poles(100 * 0.02, 100e3, 100e3, 100e3, loop: true);
        var t = loop.ReturnRatio("G1", VeryWide);
        Check.Solved("Circuit.ReturnRatio", t.PhaseReversals[0].Frequency, "173.2 kHz", Neamen("Ex 12.19, p. 791"));
        Check.Solved("Circuit.ReturnRatio", t.MagnitudeAt(t.PhaseReversals[0].Frequency).Ratio, "0.25", Neamen("Ex 12.19, p. 791"), "with the fraction 0.02");
        var high = Poles(100 * 0.2, 100e3, 100e3, 100e3, loop: true).ReturnRatio("G1", VeryWide);
        Assert.False(high.IsStable);
        Check.Solved("Circuit.ReturnRatio", high.MagnitudeAt(high.PhaseReversals[0].Frequency).Ratio, "2.5", Neamen("Ex 12.19, p. 791"), "with the fraction 0.2: unstable, and said so");
    }

    [Fact]
    public void Loop_gain_of_a_stage_with_feedback_to_its_base()
    {
        var c = new Circuit();
        c.Resistor("Rs", "b", "0", 10.kOhm);
        c.Resistor("R1", "b", "0", 51.kOhm);
        c.Resistor("R2", "b", "0", 5.5.kOhm);
        c.Resistor("r_pi", "b", "0", 5.28.kOhm);
        c.VoltageControlledCurrent("G1", "c", "0", "b", "0", 18.9.mS);
        c.Resistor("RC", "c", "0", 10.kOhm);
        c.Resistor("RF", "c", "b", 82.kOhm);
        Check.Solved("Circuit.ReturnRatio", c.ReturnRatio("G1").MagnitudeAt(1.kHz).Ratio, "4.09", Neamen("Ex 12.15, p. 777"));
    }

    [Fact]
    public void Op_amps_of_finite_gain_and_bandwidth()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.OpAmp("U1", "in", "fb", "out", 120.dB, 10.MHz);
        c.Resistor("Rf", "out", "fb", 99.kOhm);
        c.Resistor("Rg", "fb", "0", 1.kOhm);
        var r = c.Response("in", "out");
        Check.Solved("Circuit.Response", r.MagnitudeAt(1.Hz).Ratio, "99.99", Neamen("Ex 12.22, p. 798"));
        Check.Solved("Circuit.Response", r.UpperCorner(1.Hz), "100.01 kHz", Neamen("Ex 12.22, p. 798"));

        var two = new Circuit();
        two.VoltageSource("V1", "in");
        two.OpAmp("U1", "in", "fb1", "mid", 160.dB, 1.MHz);
        two.Resistor("Rf1", "mid", "fb1", 30.62.kOhm);
        two.Resistor("Rg1", "fb1", "0", 1.kOhm);
        two.OpAmp("U2", "mid", "fb2", "out", 160.dB, 1.MHz);
        two.Resistor("Rf2", "out", "fb2", 30.62.kOhm);
        two.Resistor("Rg2", "fb2", "0", 1.kOhm);
        Check.Solved("Circuit.Response", two.Response("in", "out").UpperCorner(1.Hz), "20.35 kHz", Franco("Ex 6.2, p. 265"), "two of a gain of 31.62: the corner of both");

        var filter = new Circuit();
        filter.VoltageSource("V1", "in");
        filter.Resistor("R1", "in", "a", Ohms(11.254e3));
        filter.Resistor("R2", "a", "b", Ohms(11.254e3));
        filter.Capacitor("C1", "a", "out", 2.nF);
        filter.Capacitor("C2", "b", "0", 1.nF);
        filter.OpAmp("U1", "b", "out", "out", 200.dB, Frequency.FromGigahertz(1000));
        var at20 = filter.Response("in", "out");
        Check.Solved("Circuit.Response", at20.MagnitudeAt(20.kHz).Ratio * 10.V, "2.425 V", Franco("Ex 3.11, p. 137"));
        Check.SolvedOtherwise("Circuit.Response", at20.PhaseAt(20.kHz) + 90.deg, "46.69 deg", "-46.69 deg", Franco("Ex 3.11, p. 137, for an input of +90°"), "The quadrant was lost: at twice the corner the filter turns by −136.69°.");
    }

    [Fact]
    public void Resistors_coils_and_capacitors()
    {
        var rlc = new Circuit();
        rlc.VoltageSource("V1", "in");
        rlc.Inductor("L1", "in", "a", 5.mH);
        rlc.Capacitor("C1", "a", "out", 40.uF);
        rlc.Resistor("R1", "out", "0", 10.Ohm);
        var there = Frequency.FromHertz(1000 / Math.Tau);
        Check.Solved("Circuit.Response", rlc.Response("in", "out").MagnitudeAt(there).Ratio * 10.V, "4.472 V", Franco("Ex 3.3, p. 113"));
        Check.Solved("Circuit.Response", rlc.Response("in", "out").PhaseAt(there) + 45.deg, "108.43 deg", Franco("Ex 3.3, p. 113"));

        var sources = new Circuit();
        sources.VoltageSource("V1", "a");
        sources.VoltageSource("V2", "b");
        sources.Resistor("R1", "a", "m", 2.Ohm);
        sources.Resistor("R2", "b", "m", 3.Ohm);
        sources.Inductor("L1", "m", "n", 235.uH);
        sources.Resistor("R3", "n", "0", 1.5.Ohm);
        var i = ((20 * sources.Response("V1", "n").At(2.kHz)) + (10 * sources.Response("V2", "n").At(2.kHz))) / 1.5;
        Check.Solved("Circuit.Response", ElectricCurrent.FromAmperes(i.Real), "2.70 A", Bird("Ex 33.2, p. 579"), "the real part of the branch's current, by superposition");
        Check.Solved("Circuit.Response", ElectricCurrent.FromAmperes(i.Imaginary), "-2.95 A", Bird("Ex 33.2, p. 579"));

        var divider = new Circuit();
        divider.VoltageSource("V1", "in");
        divider.Resistor("R1", "in", "m", 5.kOhm);
        divider.Resistor("R2", "m", "0", 20.kOhm);
        divider.Capacitor("C1", "m", "n", Farads(1 / (Math.Tau * 1e3 * 120e3)));
        divider.Resistor("R3", "n", "0", 150.kOhm);
        Check.Solved("Circuit.Response", divider.Response("in", "n").MagnitudeAt(1.kHz).Ratio * 200.V, "122.93 V", Bird("Ex 33.1, p. 578"));

        var band = new Circuit();
        band.VoltageSource("V1", "in");
        band.Resistor("RS", "in", "a", 1.kOhm);
        band.Capacitor("CS", "a", "out", 1.uF);
        band.Resistor("RP", "out", "0", 10.kOhm);
        band.Capacitor("CP", "out", "0", 3.pF);
        var r = band.Response("in", "out", VeryWide);
        Check.Solved("Circuit.Response", r.LowerCorner(10.kHz), "14.5 Hz", Neamen("Ex 7.1, p. 393"));
        Check.Solved("Circuit.Response", Gain.FromRatio(r.MagnitudeAt(10.kHz).Ratio), "-0.83 dB", Neamen("Ex 7.1, p. 393"));
        Check.SolvedOtherwise("Circuit.Response", r.UpperCorner(10.kHz), "58.3 MHz", "58.36 MHz", Neamen("Ex 7.1, p. 393: from a time constant rounded to 2.73 ns"), "The book rounds 2.727 ns to 2.73 ns before it divides.");
    }

    [Fact]
    public void Stages_with_their_coupling_and_bypass_capacitors()
    {
        BipolarModel q = new() { CurrentGain = 100, Junction = At26mV };
        var coupled = new Circuit();
        coupled.VoltageSource("V1", "in");
        coupled.Resistor("Rs", "in", "s", 100.Ohm);
        coupled.Capacitor("CC", "s", "b", 10.uF);
        coupled.Resistor("R1", "b", "0", 40.kOhm);
        coupled.Resistor("R2", "b", "0", 5.7.kOhm);
        coupled.Npn("Q1", "out", "b", "e", 0.99.mA, q);
        coupled.Resistor("RE", "e", "0", 500.Ohm);
        coupled.Resistor("RC", "out", "0", 5.kOhm);
        coupled.Resistor("RL", "out", "0", 10.kOhm);
        coupled.Capacitor("CL", "out", "0", 15.pF);
        var r = coupled.Response("in", "out");
        Check.Solved("Circuit.Response", r.MagnitudeAt(3.kHz).Ratio, "6.14", Neamen("Ex 7.7, p. 409"));
        Check.Solved("Circuit.Response", r.LowerCorner(3.kHz), "3.4 Hz", Neamen("Ex 7.7, p. 409"));
        Check.Solved("Circuit.Response", r.UpperCorner(3.kHz), "3.18 MHz", Neamen("Ex 7.7, p. 409"));

        var bypassed = new Circuit();
        bypassed.VoltageSource("V1", "in");
        bypassed.Resistor("RS", "in", "b", 500.Ohm);
        bypassed.Npn("Q1", "out", "b", "e", 1.06.mA, q);
        bypassed.Resistor("RE", "e", "0", 4.kOhm);
        bypassed.Capacitor("CE", "e", "0", 1.uF);
        bypassed.Resistor("RC", "out", "0", 2.kOhm);
        var gain = bypassed.Response("in", "out", VeryWide);
        Check.Solved("Circuit.Response", gain.MagnitudeAt(0.01.Hz).Ratio, "0.49", Neamen("Ex 7.8, p. 412"));
        Check.Solved("Circuit.Response", gain.MagnitudeAt(100.MHz).Ratio, "67.7", Neamen("Ex 7.8, p. 412"));
        Check.Solved("Circuit.Zeros", bypassed.Zeros("in", "out").Single().Frequency, "39.8 Hz", Neamen("Ex 7.8, p. 412"));
        Check.SolvedOtherwise("Circuit.Poles", bypassed.Poles().Single().Frequency, "5.49 kHz", "5.484 kHz", Neamen("Ex 7.8, p. 412: from a time constant rounded to 29 µs"), "The book rounds 29.02 µs to 29 µs before it divides.");
    }

    [Fact]
    public void Common_source_stages()
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.Resistor("Rs", "in", "g", 100.kOhm);
        c.Resistor("Rg", "g", "0", 420.kOhm);
        c.Nmos("M1", "d", "g", "0", new FetModel(4.mS) { GateSourceCapacitance = 1.pF, GateDrainCapacitance = 1.pF });
        c.Resistor("RL", "d", "0", 3.33.kOhm);
        Check.Solved("Circuit.Response", c.Response("in", "d").At(10.Hz).Real, "-10.8", Sedra("Ex 6.6, p. 576"));

        var small = new Circuit();
        small.VoltageSource("V1", "in");
        small.Resistor("Rs", "in", "g", 10.kOhm);
        small.Nmos("M1", "d", "g", "0", new FetModel(1.25.mS) { GateSourceCapacitance = Farads(20e-15), GateDrainCapacitance = Farads(5e-15) });
        small.Resistor("RL", "d", "0", 9.82.kOhm);
        small.Capacitor("CL", "d", "0", Farads(25e-15));
        Check.Solved("Circuit.Zeros", small.Zeros("in", "d").Single().Frequency, "40 GHz", Sedra("Ex 6.9, p. 593"));
        Check.SolvedOtherwise("Circuit.Poles", small.Poles()[0].Frequency, "145.4 MHz", "145.58 MHz", Sedra("Ex 6.9, p. 593"), "The book's denominator is rounded to three digits, 1.16 ns and 0.0712 ns²; from the parts it is 145.58 MHz.");
    }

    [Fact]
    public void Ports_of_a_four_stage_operational_amplifier()
    {
        BipolarModel q = new() { CurrentGain = 100, Junction = At25mV };
        ElectricCurrent Collector(double emitter) => ElectricCurrent.FromMilliamperes(emitter * 100 / 101);
        var c = new Circuit();
        c.Npn("Q1", "c1", "a", "e", Collector(0.25), q);
        c.Npn("Q2", "c2", "b", "e", Collector(0.25), q);
        c.CurrentSource("I1", "e", "0", 0.5.mA);
        c.Resistor("R1", "c1", "0", 20.kOhm);
        c.Resistor("R2", "c2", "0", 20.kOhm);
        c.Npn("Q4", "0", "c1", "f", Collector(1), q);
        c.Npn("Q5", "c5", "c2", "f", Collector(1), q);
        c.CurrentSource("I2", "f", "0", 2.mA);
        c.Resistor("R3", "c5", "0", 3.kOhm);
        c.Pnp("Q7", "c7", "c5", "e7", Collector(1), q);
        c.Resistor("R4", "e7", "0", 2.3.kOhm);
        c.Resistor("R5", "c7", "0", 15.7.kOhm);
        c.Npn("Q8", "0", "c7", "out", Collector(5), q);
        c.Resistor("R6", "out", "0", 3.kOhm);
        c.Resistor("Ra", "a", "0", 1.MOhm);
        c.Resistor("Rb", "b", "0", 1.MOhm);
        var z = c.Impedance("a", minus: "b").MagnitudeAt(1.kHz);
        // The two bias resistors of 1 MΩ, which give the bases their way to ground, are taken out again.
        var alone = 1 / ((1 / z) - (1 / 2.MOhm));
        Check.Solved("Circuit.Impedance", alone, "20.2 kOhm", Sedra("Ex 7.5, p. 760"));
        Check.Solved("Circuit.Impedance", c.Impedance("out").MagnitudeAt(1.kHz), "152 Ohm", Sedra("Ex 7.5, p. 760"));
    }

    [Fact]
    public void Two_stages_at_their_operating_point()
    {
        var v_t = 0.02569;
        BipolarModel q = new() { CurrentGain = 100, SaturationCurrent = ElectricCurrent.FromAmperes(1.2785e-3 * Math.Exp(-0.7 / v_t)) };
        var c = new Circuit();
        c.Rail("V+", 15.V);
        c.Resistor("R1", "V+", "b", 100.kOhm);
        c.Resistor("R2", "b", "0", 50.kOhm);
        c.Npn("Q1", "c", "b", "e", q);
        c.Resistor("RE", "e", "0", 3.kOhm);
        c.Resistor("RC", "V+", "c", 5.kOhm);
        var first = c.OperatingPoint();
        var source = Sedra("Ex 5.10, p. 430");
        Check.Solved("Circuit.OperatingPoint", first.Voltage("b"), "4.57 V", source);
        Check.Solved("Circuit.OperatingPoint", first.Voltage("c"), "8.6 V", source);
        Check.Solved("Circuit.OperatingPoint", first.Devices[0].Current, "1.28 mA", source);
        Check.Solved("Circuit.OperatingPoint", first.Devices[0].BaseCurrent!.Value, "12.8 uA", source);
        c.Pnp("Q2", "c2", "c", "e2", q with { SaturationCurrent = ElectricCurrent.FromAmperes(2.75e-3 * Math.Exp(-0.7 / v_t)) });
        c.Resistor("RE2", "V+", "e2", 2.kOhm);
        c.Resistor("RC2", "c2", "0", 2.7.kOhm);
        Check.SolvedOtherwise("Circuit.OperatingPoint", c.OperatingPoint().Voltage("c2"), "7.6 V", "7.42 V", Sedra("Ex 5.11, p. 432"), "The book leaves the second base's current out: it takes 28 µA from the first collector's resistor.");
    }

    private static ElectricCapacitance Farads(double c) => ElectricCapacitance.FromFarads(c);

    private static ElectricResistance Ohms(double r) => ElectricResistance.FromOhms(r);

    // Franco's amplifier: 2 mS into 100 kΩ, 10 mS into 50 kΩ, poles at 100 kHz and 1 MHz.
    private static Circuit TwoStages(bool fed = false)
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.VoltageControlledCurrent("G1", "a", "0", "in", fed ? "fb" : "0", 2.mS);
        c.Resistor("R1", "a", "0", 100.kOhm);
        c.Capacitor("C1", "a", "0", Farads(15.9155e-12));
        c.VoltageControlledCurrent("G2", "b", "0", "a", "0", 10.mS);
        c.Resistor("R2", "b", "0", 50.kOhm);
        c.Capacitor("C2", "b", "0", Farads(3.1831e-12));
        return c;
    }

    private static Circuit Poles(double gain, double f1, double f2, double f3, bool loop = false)
    {
        var c = new Circuit();
        c.VoltageSource("V1", "in");
        c.VoltageControlledCurrent("G1", "0", "a", "in", loop ? "out" : "0", ElectricConductance.FromSiemens(gain / 1e3));
        c.Resistor("R1", "a", "0", 1.kOhm);
        c.Capacitor("C1", "a", "0", Farads(1 / (Math.Tau * 1e3 * f1)));
        c.VoltageControlledVoltage("E2", "b", "0", "a", "0", Gain.FromRatio(1));
        c.Resistor("R2", "b", "c", 1.kOhm);
        c.Capacitor("C2", "c", "0", Farads(1 / (Math.Tau * 1e3 * f2)));
        c.VoltageControlledVoltage("E3", "d", "0", "c", "0", Gain.FromRatio(1));
        c.Resistor("R3", "d", "out", 1.kOhm);
        c.Capacitor("C3", "out", "0", Farads(1 / (Math.Tau * 1e3 * f3)));
        return c;
    }
}
