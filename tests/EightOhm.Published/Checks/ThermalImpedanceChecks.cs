using EightOhm.OutputStages;
using EightOhm.Published.Machine;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;
using Check = EightOhm.Published.Machine.Published;

namespace EightOhm.Published.Checks;

/// <summary>Sums of exponentials, ladders and networks against their differential equations integrated in time.</summary>
[Checks]
public class ThermalImpedanceChecks
{
    // The published one is IXYS, M##501-12io1, Issue 3, p. 5, sec. 8.3; the maker prints its terms and no value of the sum.
    private static readonly FosterImpedance[] Sets =
    [
        new((1.37e-3.K_per_W, 7.6e-4.s), (4.86e-3.K_per_W, 8.6e-3.s), (0.0114.K_per_W, 0.101.s), (0.0223.K_per_W, 0.56.s), (0.0221.K_per_W, 3.12.s)),
        new((0.08.K_per_W, 1.2.ms), (0.17.K_per_W, 11.ms), (0.33.K_per_W, 70.ms), (0.25.K_per_W, 500.ms)),
    ];

    [Fact]
    public void A_sum_of_exponentials_is_what_its_ladder_does_in_time()
    {
        var rows = Reference.Read("foster-impedance.csv");
        Check.Computed(rows, r => Sets[(int)r["set"]].At(Duration.FromSeconds(r["t"])), "Z");
        Check.Computed(rows, r => Sets[(int)r["set"]].Steady, "R");
    }

    [Fact]
    public void A_sine_of_power()
    {
        foreach (var r in Reference.Read("foster-sine.csv").Rows)
        {
            var sine = Sets[(int)r["set"]].Sine(r["f"].Hz);
            Near(r["swing"], sine.Swing.Si, 1e-7);
            Near(r["lag_deg"], sine.Lag.Degrees, 1e-7);
        }
    }

    [Fact]
    public void Ladders_are_those_of_the_continued_fraction()
    {
        foreach (var r in Reference.Read("foster-ladder.csv").Rows)
        {
            var rung = Sets[(int)r["set"]].ToLadder().Rungs[(int)r["rung"]];
            Near(r["C"], rung.C.Si, 1e-12);
            Near(r["R"], rung.R.Si, 1e-12);
        }
    }

    [Fact]
    public void Junctions_of_a_class_B_stage_that_plays_a_sine()
    {
        foreach (var r in Reference.Read("periodic-sine.csv").Rows)
        {
            var heat = new StageDissipation(r["V"].V, (int)r["n"], r["R_E"].Ohm).OverPeriod(r["V_p"].V, r["Z"].Ohm, r["phi_deg"].deg, r["f"].Hz, 8000);
            Near(r["peak"], Sets[(int)r["set"]].Under(heat).Peak.Kelvins, 1e-6);
        }

        // Case 15 of the trade: 46 V, 4 Ω, three pairs, 20 Hz, at the worst level.
        var rise = Sets[1].Under(new StageDissipation(46.V, 3, 0.Ohm).OverPeriod((2 * 46 / Math.PI).V, 4.Ohm, 0.deg, 20.Hz));
        Assert.Equal(20.76, rise.Peak.Kelvins, 0.005);
        Assert.Equal(14.83, rise.Mean.Kelvins, 0.005);
        Assert.Equal(36.59, rise.PeakPowerForEver.Kelvins, 0.005);
    }

    [Fact]
    public void Junctions_under_bursts()
    {
        foreach (var r in Reference.Read("periodic-burst.csv").Rows)
            Near(r["peak"], Sets[(int)r["set"]].Under(PeriodicHeat.Bursts(r["P"].W, r["on"].s, Ratio.FromDecimalFractions(r["on"] / (r["on"] + r["off"])), r["rest"].W)).Peak.Kelvins, 1e-9);
    }

    [Fact]
    public void A_network_over_time_and_at_rest()
    {
        var (network, nodes) = TwoTransistors();
        var (a, c) = (nodes[0], nodes[2]);
        var rest = network.Steady(new Heat(a, 20.W), new Heat(c, 10.W));
        var r = Reference.Read("network-steady.csv").Rows[0];
        foreach (var (name, node) in new[] { ("junction_1", 0), ("case_1", 1), ("junction_2", 2), ("case_2", 3), ("sink", 4), ("sensor", 5) })
            Near(r[name], (rest[nodes[node]] - network.AmbientTemperature).Kelvins, 1e-11);

        var rows = Reference.Read("network-transient.csv").Rows;
        var run = network.Transient([.. rows.Select(x => Duration.FromSeconds(x["t"]))],
            [HeatProfile.Burst(a, 40.W, 60.s, 180.s, rest: 5.W), HeatProfile.Burst(c, 20.W, 60.s, 180.s, rest: 2.5.W)]);
        for (var i = 0; i < rows.Count; i++)
            foreach (var name in new[] { "junction 1", "case 1", "junction 2", "sink", "sensor" })
                Assert.Equal(rows[i][name.Replace(' ', '_')] + 35, run.Of(name).Y[i], 1e-8);
    }

    [Fact]
    public void The_networks_own_modes_are_the_rise_of_a_junction()
    {
        // One watt into the first junction: the sum of modes that the network gives against its temperatures over time.
        var (network, nodes) = TwoTransistors();
        var z = network.Impedance(nodes[0]);
        var run = network.Transient(100.s, [HeatProfile.Constant(nodes[0], 1.W)], points: 50);
        for (var i = 1; i < run.Of("junction 1").Count; i++)
            Assert.Equal(run.Of("junction 1").Y[i] - 35, z.At(run.Of("junction 1")[i].X).Si, 1e-11);
    }

    [Fact]
    public void The_idle_current_of_two_transistors_after_a_burst()
    {
        var (network, nodes) = TwoTransistors();
        var tracking = new BiasTracking(network, [nodes[0], nodes[2]], new BiasSensor(nodes[5], 2.1.mV_per_K), 46.V, 103.8.mA, 0.2725.Ohm, 2.1.mV_per_K);
        HeatProfile[] music = [Music(nodes[0]), Music(nodes[2])];
        foreach (var r in Reference.Read("bias-tracking.csv").Rows)
        {
            // Each instant as the end of a run of its own.
            var run = tracking.Follow(Duration.FromSeconds(r["t"]), music, fineness: 0.01);
            var i = run.IdleCurrent.Count - 1;
            Near(r["I"], run.IdleCurrent.Y[i], 5e-5);
            Assert.Equal(r["junction"] + 35, run.Temperatures.Of("junction 1").Y[i], 1e-3);
            Assert.Equal(r["sink"] + 35, run.Temperatures.Of("sink").Y[i], 1e-5);
            Assert.Equal(r["sensor"] + 35, run.Temperatures.Of("sensor").Y[i], 1e-5);
        }

        static HeatProfile Music(HeatNode node) => HeatProfile.Burst(node, 20.W, 60.s, 120.s);
    }

    private static (ThermalNetwork Network, HeatNode[] Nodes) TwoTransistors()
    {
        var network = new ThermalNetwork(35.degC);
        HeatNode[] n =
        [
            network.Node("junction 1", 0.05.J_per_K), network.Node("case 1", 6.J_per_K), network.Node("junction 2", 0.05.J_per_K),
            network.Node("case 2", 6.J_per_K), network.Node("sink", 1250.J_per_K), network.Node("sensor", 3.J_per_K),
        ];
        network.Link(n[0], n[1], 0.83.K_per_W);
        network.Link(n[1], n[4], 0.35.K_per_W);
        network.Link(n[2], n[3], 0.83.K_per_W);
        network.Link(n[3], n[4], 0.35.K_per_W);
        network.Link(n[4], network.Ambient, 0.40.K_per_W);
        network.Link(n[5], n[4], 2.0.K_per_W);
        network.Link(n[5], network.Ambient, 60.K_per_W);
        return (network, n);
    }

    private static void Near(double expected, double actual, double relative) => Assert.Equal(expected, actual, Math.Abs(expected) * relative);
}
