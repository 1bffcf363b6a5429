using CsCheck;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

/// <summary>Sums of exponentials and ladders: there and back, and why a sink is joined to a ladder only.</summary>
public class LadderTests
{
    private static readonly FosterImpedance Module = new((1.37e-3.K_per_W, 7.6e-4.s), (4.86e-3.K_per_W, 8.6e-3.s), (0.0114.K_per_W, 0.101.s), (0.0223.K_per_W, 0.56.s), (0.0221.K_per_W, 3.12.s));

    private static readonly Gen<FosterImpedance> Impedances =
        from terms in Gen.Select(Gen.Double[-3, 0], Gen.Double[0.35, 1.5]).Array[1, 8]
        from first in Gen.Double[-4, -2]
        select new FosterImpedance([.. terms.Select((t, i) => new FosterTerm(Math.Pow(10, t.Item1).K_per_W, Math.Pow(10, first + terms.Take(i + 1).Sum(x => x.Item2)).s))]);

    private static readonly Gen<CauerLadder> Ladders =
        Gen.Select(Gen.Double[-3, 1], Gen.Double[-2, 1]).Array[1, 8].Select(rungs => new CauerLadder([.. rungs.Select(r => new LadderRung(Math.Pow(10, r.Item1).J_per_K, Math.Pow(10, r.Item2).K_per_W))]));

    [Fact]
    public void From_exponentials_to_a_ladder_and_back() => Impedances.Sample(
        z =>
        {
            var back = z.ToLadder().ToFoster();
            Assert.Equal(z.Terms.Count, back.Terms.Count);
            foreach (var (a, b) in z.Terms.Zip(back.Terms))
            {
                Assert.Equal(a.R.Si, b.R.Si, 1e-8 * z.Steady.Si);
                Assert.Equal(1, b.Tau / a.Tau, 1e-8);
            }
        },
        seed: "0000KOIcNaN2",
        iter: 300);

    // In the ladder of the second seed a mode of the last layer has no share in the junction that a double could hold.
    [Theory]
    [InlineData("0000KOIcNaN2")]
    [InlineData("0i_CrABWjHR2")]
    public void From_a_ladder_to_exponentials_keeps_the_whole_and_the_first_moment(string seed) => Ladders.Sample(
        ladder =>
        {
            var foster = ladder.ToFoster();
            Assert.Equal(ladder.Steady.Si, foster.Steady.Si, 1e-10 * ladder.Steady.Si);
            // At the first instant all heat goes into the first layer: the slope is 1/C.
            Assert.Equal(1 / ladder.Rungs[0].C.Si, foster.Terms.Sum(t => t.R.Si / t.Tau.Seconds), 1e-9 / ladder.Rungs[0].C.Si);
        },
        seed: seed,
        iter: 300);

    [Fact]
    public void A_ladder_in_a_network_held_at_its_end_is_the_sum_of_exponentials()
    {
        var net = new ThermalNetwork(25.degC);
        var junction = net.Add(Module.ToLadder(), "junction", net.Ambient);
        var run = net.Transient(10.s, [HeatProfile.Constant(junction, 1000.W)], points: 200);
        for (var i = 1; i < run.Of("junction").Count; i++)
            Assert.Equal(1000 * Module.At(run.Of("junction").Seconds[i].s).Si, run.Of("junction").Y[i] - 25, 1e-9);
        Assert.Equal(["junction", "junction, layer 2", "junction, layer 3", "junction, layer 4", "junction, layer 5"], net.Nodes.Select(n => n.Name));
    }

    [Fact]
    public void A_sink_joined_to_the_list_as_if_its_terms_were_layers_gives_another_temperature()
    {
        var sink = new CauerLadder((60.J_per_K, 0.05.K_per_W));
        var right = Module.ToLadder().Then(sink).ToFoster();
        // The mistake: τ/r taken as the mass of a layer that r separates from the next.
        var asLayers = new CauerLadder([.. Module.Terms.Select(t => new LadderRung((t.Tau.Seconds / t.R.Si).J_per_K, t.R))]).Then(sink).ToFoster();
        double Rise(FosterImpedance z, double t) => 1000 * z.At(t.s).Si;
        Assert.True(Rise(right, 0.1) > 1.3 * Rise(asLayers, 0.1), $"{Rise(right, 0.1)} K and {Rise(asLayers, 0.1)} K");
        // Both come to the same in the end, which is why the mistake goes unseen.
        Assert.Equal(Rise(right, 1e4), Rise(asLayers, 1e4), 1e-6);
        // Nor do the two simply add: the device keeps heat from the sink for a while.
        var sum = 1000 * (Module.At(1.s).Si + new FosterImpedance((0.05.K_per_W, (60 * 0.05).s)).At(1.s).Si);
        Assert.True(sum - Rise(right, 1) > 0.5, $"{sum} K and {Rise(right, 1)} K");
    }

    [Fact]
    public void Nothing_takes_a_sum_of_exponentials_and_a_sink() =>
        Assert.DoesNotContain(
            typeof(ThermalNetwork).Assembly.GetExportedTypes().Where(t => t.Namespace == "EightOhm.Thermal").SelectMany(t => t.GetMethods()),
            m => m.GetParameters().Any(p => p.ParameterType == typeof(FosterImpedance)));

    [Fact]
    public void Elements_that_are_not_positive_are_refused()
    {
        Assert.Contains("the resistance of term 2 must be greater than 0 K/W", Assert.Throws<RefusedValueException>(() => new FosterImpedance((1.K_per_W, 1.s), ((-0.1).K_per_W, 2.s))).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => new FosterImpedance((1.K_per_W, 0.s)));
        Assert.Throws<RefusedValueException>(() => new FosterImpedance(Array.Empty<FosterTerm>()));
        Assert.Contains("the resistance of rung 2", Assert.Throws<RefusedValueException>(() => new CauerLadder((1.J_per_K, 1.K_per_W), (1.J_per_K, (-1).K_per_W))).Message, StringComparison.Ordinal);
        Assert.Contains("the heat capacity of rung 1", Assert.Throws<RefusedValueException>(() => new CauerLadder(((-1).J_per_K, 1.K_per_W))).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => Module.At((-1).s));
    }

    [Fact]
    public void Terms_of_one_time_constant_become_one_layer()
    {
        var ladder = new FosterImpedance((0.1.K_per_W, 1.s), (0.2.K_per_W, 1.s), (0.3.K_per_W, 5.s)).ToLadder();
        Assert.Equal(2, ladder.Rungs.Count);
        Assert.Equal(0.6, ladder.Steady.Si, 1e-12);
    }
}
