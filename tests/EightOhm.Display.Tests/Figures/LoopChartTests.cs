using EightOhm.Circuits;
using EightOhm.Feedback;
using EightOhm.Quantities;
using static EightOhm.Quantities.Constants;

namespace EightOhm.Display.Tests.Figures;

/// <summary>A loop is drawn alike whether it comes from a transfer function or from a circuit, and its margins only where they are one.</summary>
public class LoopChartTests
{
    // 100 dB and 10 MHz, all of it fed back past a pole: at 10 MHz over the load of the op-amp's own output resistance.
    private static ReturnRatio Loop(int poles)
    {
        var c = new Circuit();
        c.VoltageSource("V", "in");
        c.OpAmp("U", "in", "fb", "out", 100.dB, 10.MHz);
        var node = "out";
        for (var i = 1; i <= poles; i++)
        {
            c.Resistor($"R{i}", node, i == poles ? "fb" : $"n{i}", 1.kOhm);
            node = i == poles ? "fb" : $"n{i}";
            c.Capacitor($"C{i}", node, "0", 20.pF);
        }

        return c.ReturnRatio();
    }

    [Fact]
    public void A_circuit_s_loop_has_the_margin_of_its_transfer_function()
    {
        var loop = Loop(1);
        var same = TransferFunction.Integrator(10.MHz) * TransferFunction.Pole(1 / (2 * pi * 1.kOhm * 20.pF));
        var drawn = EightOhm.Display.Charts.Bode(loop, 20.kHz);
        var other = EightOhm.Display.Charts.Bode([("", same)], 1.kHz, 100.MHz, 20.kHz);
        Assert.Equal(drawn.Figures[1].Spans.Select(s => s.Label), other.Figures[1].Spans.Select(s => s.Label));
        Assert.Equal(drawn.Figures[0].Marks.Select(m => m.Label), other.Figures[0].Marks.Select(m => m.Label));
        Assert.Equal(other.Figures[1].Limits, drawn.Figures[1].Limits);
        Assert.Contains("opened", drawn.Figures[0].Title, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unstable_loop_says_so_and_shows_no_margin()
    {
        var loop = Loop(3);
        Assert.False(loop.IsStable);
        var drawn = EightOhm.Display.Charts.Bode(loop);
        Assert.Equal("unstable: the margins say nothing", drawn.Figures[0].Subtitle);
        Assert.All(drawn.Figures, f => Assert.Empty(f.Spans));
    }

    [Fact]
    public void On_the_plane_a_circle_is_round_and_the_crossover_lies_on_it()
    {
        var plane = EightOhm.Display.Charts.Nyquist(Loop(1));
        Assert.True(plane.HasEqualScales);
        var crossover = plane.Marks.Single(m => m.Label.EndsWith("Hz", StringComparison.Ordinal));
        Assert.Equal(1, double.Hypot(crossover.X, crossover.Y), 6);
    }
}
