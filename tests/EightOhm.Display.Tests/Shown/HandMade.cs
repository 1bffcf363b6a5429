using EightOhm.Circuits;
using EightOhm.Devices;
using EightOhm.Feedback;
using EightOhm.Loads;
using EightOhm.Noise;
using EightOhm.OutputNetworks;
using EightOhm.OutputStages;
using EightOhm.Protection;
using EightOhm.Quantities;
using EightOhm.Ratings;
using EightOhm.Sizing;
using EightOhm.Supply;
using EightOhm.SupplyPaths;
using EightOhm.Tests.Docs;
using EightOhm.Thermal;

namespace EightOhm.Display.Tests.Shown;

/// <summary>Results that no random draw makes: they come out of solvers, belong to one another, or need figures that fit.</summary>
internal static class HandMade
{
    public static IEnumerable<object> All => [.. OfSupply(), .. OfHeat(), .. OfStage(), .. OfLoads(), .. OfSheets(), .. OfDevices(), .. OfCircuits(), .. OfNoise(), FaultTable.Empty.When("dc at the output", "detector opens the relay", 22.ms, "mains off")];

    private static IEnumerable<object> OfSupply()
    {
        var dual = new DualRailSupply(new DualWinding(35.V, 6.percent, 800.VA), 50.Hz, 0.9.V, 30.mF);
        var steady = new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF).SteadyState(RailCurrent.Constant(1.A));
        var both = dual.SteadyState(RailCurrent.Constant(1.A));
        var mains = MainsTable.Within(10.percent).Row("rail", x => MainsDeviation.Factor(x) * 50.V).Row("capacitors", 50.V, x => MainsDeviation.Factor(x) * 50.V);
        var budget = SwingBudget.For(40.V, 5.A).LessEmitterResistors(0.22.Ohm, 3).Less("drive", 4.4.V, 3.9.V, "stated");
        return [steady, both, both.Positive, steady.OverOneCycle(101), steady.BesideTextbook(), steady.BesideTextbook().Rows[0],
            mains, mains.Rows[0], mains.Rows[0].High, dual.ClipsAt(budget, 2, 50.mA, 1.kHz)];
    }

    // A stage with feedback, and one whose devices find their currents.
    private static IEnumerable<object> OfCircuits()
    {
        var c = new Circuit();
        c.Rail("V+", 15.V);
        c.VoltageSource("V1", "in");
        var r = c.Resistor("RB", "in", "b", 10.kOhm);
        c.Resistor("RF", "out", "b", 100.kOhm);
        c.Resistor("R2", "b", "0", 22.kOhm);
        c.Npn("Q1", "out", "b", "0", new BipolarModel { CollectorCapacitance = 3.pF, TransitionFrequency = 100.MHz });
        c.Resistor("RC", "V+", "out", 4.7.kOhm);
        c.Diode("D1", "out", "0");
        var point = c.OperatingPoint();
        var loop = c.ReturnRatio("Q1");
        return [c, r, r.Terminals[0], point, point.Devices[0], loop, new LoopCrossing(1.MHz, 60.deg, null), c.Noise("out", "in"), c.Sensitivities("in", "out", 1.kHz)[0],
            c.SupplyRejection("out", "in")[0], c.Poles()[0], new FetModel(4.mS), new OpAmpModel(100.dB, 8.MHz), new DiodeModel(), new BipolarModel()];
    }

    private static IEnumerable<object> OfNoise()
    {
        var spectrum = new NoiseSpectrum([new("resistor", 4.nV_rtHz), new("flicker", f => VoltageNoiseDensity.FromSi(1e-8 / Math.Sqrt(f.Hertz)))]);
        var rail = new RectifierSupply(35.V, 50.Hz, 0.5.Ohm, 1.6.V, 10.mF).SteadyState(RailCurrent.Constant(1.A));
        return [spectrum.Sources[0], spectrum.Over(20.Hz, 20.kHz), spectrum.Over(20.Hz, 20.kHz).Largest, HumSpectrum.Of(rail, 50.Hz, _ => 80.dB)];
    }

    private static IEnumerable<object> OfHeat()
    {
        var net = new ThermalNetwork(35.degC);
        HeatNode junction = net.Node("junction", 0.05.J_per_K), sink = net.Node("sink", 400.J_per_K);
        net.Link(junction, sink, 1.18.K_per_W);
        net.Link(sink, net.Ambient, 0.9.K_per_W);
        var burst = HeatProfile.Burst(junction, 30.W, 60.s, 180.s);
        var sensor = new BiasSensor(sink, 2.1.mV_per_K);
        var bias = new BiasTracking(net, [junction], sensor, 46.V, 103.8.mA, 0.2725.Ohm, 2.1.mV_per_K);
        return [net, junction, burst, sensor, new DriverJunction(junction, 2.1.mV_per_K, 2.W), bias, new Heat(junction, 30.W), net.Steady(new Heat(junction, 30.W)), net.Transient(600.s, [burst]), bias.Follow(600.s, [burst])];
    }

    private static IEnumerable<object> OfStage()
    {
        var stage = new EmitterFollowerStage(load: 8.Ohm, pairs: 3, R_E: 0.22.Ohm);
        return [stage.EqualGainBias().Harmonics(40.V), stage.GainFamily([100.mA], over: 20.V, points: 101)[0]];
    }

    private static IEnumerable<object> OfLoads()
    {
        var cable = Cable.Iec(10.m, 2.5.mm2);
        var load = new PhaseLoad(4.Ohm, 45.deg);
        var network = new OutputNetwork { Inductance = 2.uH, DampingResistor = 4.7.Ohm, OpenLoopResistance = 0.2.Ohm, Loop = TransferFunction.Integrator(400.kHz) * TransferFunction.Pole(2.MHz) };
        return [load.Through(cable), new ResistiveLoad(8.Ohm).Through(cable), load.Sweep(10.Hz, 20.kHz, 101), network.WithCapacitors(8.Ohm, [100.nF]).Worst];
    }

    private static IEnumerable<object> OfSheets()
    {
        var wrong = SpecSheet.Named("Rival").RatedPower("100 W", "8 Ω").Sensitivity("1.2 V", "8 Ω").Gain("30 dB").Audit().Contradictions[0];
        return [wrong, wrong.Figures[0]];
    }

    private static IEnumerable<object> OfDevices()
    {
        var set = DeviceSet.Shipped;
        var sizing = FirstSizing.Of(new AmplifierTargets { Power = 100.W, Load = 8.Ohm }, set);
        return [set, sizing, sizing.Choices[0], sizing.Parts[0], set.Of<HeatSinkCard>()[0], DeviceCard.Load<MainsTransformer>(Demo("transformer")), set.Of<RectifierBridge>()[0], set.Of<Relay>()[0], set.Of<ReservoirCapacitor>()[0], set.Of<TransformerSize>()[0]];
    }

    private static string Demo(string role) => Path.Combine(WrittenTable.Root(), "notebooks", "tern-100", "cards", role + ".json");
}
