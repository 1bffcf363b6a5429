using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

/// <summary>Networks at rest and over time, and what cannot be a network.</summary>
public class ThermalNetworkTests
{
    private readonly ThermalNetwork _net = new(35.degC);
    private readonly HeatNode _sink, _case, _junction;

    public ThermalNetworkTests()
    {
        (_sink, _case, _junction) = (_net.Node("sink", 1250.J_per_K), _net.Node("case", 6.J_per_K), _net.Node("junction", 0.05.J_per_K));
        _net.Link(_junction, _case, 0.83.K_per_W);
        _net.Link(_case, _sink, 0.35.K_per_W);
        _net.Link(_sink, _net.Ambient, 0.40.K_per_W);
    }

    [Fact]
    public void A_chain_at_rest_is_the_plain_sum()
    {
        var rest = _net.Steady(new Heat(_junction, 20.W));
        Assert.Equal(HeatPath.Junction(35.degC, 20.W, [0.83.K_per_W, 0.35.K_per_W, 0.40.K_per_W]).Kelvins, rest["junction"].Kelvins, 1e-9);
        Assert.Equal(43, rest[_sink].DegreesCelsius, 1e-9);
        Assert.Equal(35, rest["ambient"].DegreesCelsius, 1e-9);
        Assert.Equal(rest["junction"], rest.Hottest);
    }

    [Fact]
    public void Six_devices_on_a_sink_as_a_network_are_the_shared_sink()
    {
        var net = new ThermalNetwork(40.degC);
        var sink = net.Node("sink", 1250.J_per_K);
        net.Link(sink, net.Ambient, 0.40.K_per_W);
        var heats = Enumerable.Range(1, 6).Select(i =>
        {
            var junction = net.Node($"junction {i}", 0.05.J_per_K);
            net.Link(junction, sink, (0.83 + 0.35).K_per_W);
            return new Heat(junction, 20.W);
        }).ToArray();
        Assert.Equal(111.6, net.Steady(heats)["junction 4"].DegreesCelsius, 1e-9);
    }

    [Fact]
    public void Given_time_the_transient_comes_to_rest_and_starts_where_it_is_told()
    {
        var rest = _net.Steady(new Heat(_junction, 20.W));
        var run = _net.Transient(2e4.s, [HeatProfile.Constant(_junction, 20.W)], points: 10);
        Assert.Equal(rest["junction"].DegreesCelsius, run.Last["junction"].DegreesCelsius, 1e-9);
        var on = _net.Transient(100.s, [HeatProfile.Constant(_junction, 20.W)], rest);
        Assert.All(on.Of("case").Y, t => Assert.Equal(rest["case"].DegreesCelsius, t, 1e-9));
    }

    [Fact]
    public void The_answer_does_not_depend_on_how_finely_it_is_told_and_a_step_between_two_instants_is_kept()
    {
        var heat = HeatProfile.Burst(_junction, 60.W, 33.3.s, 71.7.s, rest: 2.W);
        var coarse = _net.Transient(100.s, [heat], points: 2);
        var fine = _net.Transient(100.s, [heat], points: 5000);
        Assert.Equal(fine.Last["junction"].Kelvins, coarse.Last["junction"].Kelvins, 1e-9);
        Assert.Contains(71.7, coarse.Of("case").Seconds);
        var chosen = _net.Transient([50.s, 100.s], [heat]);
        Assert.Equal(fine.Last["sink"].Kelvins, chosen.Last["sink"].Kelvins, 1e-9);
    }

    [Fact]
    public void The_junction_is_hot_before_the_sink_knows()
    {
        var run = _net.Transient(1.s, [HeatProfile.Constant(_junction, 40.W)], points: 100);
        Assert.True(run.Of("junction").Y[20] - 35 > 30);
        Assert.True(run.Peak("sink").DegreesCelsius - 35 < 0.05);
        Assert.Equal(run.Peak("junction"), run.Hottest);
    }

    [Fact]
    public void A_network_of_very_different_time_constants_keeps_its_digits()
    {
        var net = new ThermalNetwork(25.degC);
        HeatNode junction = net.Node("junction", 1e-4.J_per_K), sink = net.Node("sink", 5000.J_per_K);
        net.Link(junction, sink, 0.5.K_per_W);
        net.Link(sink, net.Ambient, 1.K_per_W);
        var z = net.Impedance(junction);
        Assert.Equal(1.5, z.Steady.Si, 1e-11);
        Assert.Equal(5000, z.Terms[^1].Tau.Seconds, 1e-3);
        Assert.Equal(2, z.Terms.Count);
    }

    [Fact]
    public void What_is_no_network_is_refused_by_name()
    {
        var lone = _net.Node("lone", 1.J_per_K);
        var other = _net.Node("other", 1.J_per_K);
        _net.Link(lone, other, 1.K_per_W);
        var floating = Assert.Throws<InvalidOperationException>(() => _net.Steady());
        Assert.Contains("\"lone\", \"other\" to the ambient", floating.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => _net.Transient(1.s, []));
        Assert.Contains("the resistance from \"case\" to \"sink\" must be greater than 0 K/W", Assert.Throws<RefusedValueException>(() => _net.Link(_case, _sink, 0.K_per_W)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => _net.Link(_case, _sink, (-1).K_per_W));
        Assert.Contains("the heat capacity of \"film\"", Assert.Throws<RefusedValueException>(() => _net.Node("film", 0.J_per_K)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => _net.Node("sink", 1.J_per_K));
        Assert.Throws<ArgumentException>(() => _net.Link(_sink, _sink, 1.K_per_W));
        var elsewhere = new ThermalNetwork(25.degC).Node("sink", 1.J_per_K);
        Assert.Contains("another network", Assert.Throws<ArgumentException>(() => _net.Link(_sink, elsewhere, 1.K_per_W)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_that_cannot_be_is_refused()
    {
        Assert.Throws<RefusedValueException>(() => _net.Steady(new Heat(_junction, (-1).W)));
        Assert.Throws<ArgumentException>(() => _net.Steady(new Heat(_net.Ambient, 1.W)));
        Assert.Throws<ArgumentException>(() => _net.Transient(1.s, [HeatProfile.Constant(_net.Ambient, 1.W)]));
        Assert.Throws<RefusedValueException>(() => new HeatProfile(_junction, new HeatStep(2.s, 1.W), new HeatStep(1.s, 1.W)));
        Assert.Throws<RefusedValueException>(() => _net.Transient([2.s, 1.s], []));
        Assert.Contains("there are \"sink\", \"case\", \"junction\"", Assert.Throws<ArgumentException>(() => _net.Steady()["jnction"]).Message, StringComparison.Ordinal);
    }
}
