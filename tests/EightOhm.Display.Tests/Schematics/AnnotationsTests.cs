using EightOhm.Circuits;
using EightOhm.Display.Schematics;
using EightOhm.Quantities;

namespace EightOhm.Display.Tests.Schematics;

/// <summary>What stands beside the parts is what was solved.</summary>
public class AnnotationsTests
{
    [Fact]
    public void The_drawn_amplifier_settles_and_its_drawing_says_where()
    {
        var point = Examples.AmplifierInStages().OperatingPoint();
        Assert.True(point.IsStable);
        Assert.Empty(point.Off.Concat(point.Saturated));
        // Equal resistances at both bases: what is left of the base currents' 0.2 V is their difference.
        Assert.InRange(Math.Abs(point.Voltage("out").Volts), 0, 0.05);
        var drawing = point.Draw();
        Assert.Contains($"npn transistor Q_1: collector at d, base at in, emitter at e1, {QuantityFormat.Short(point.Current("Q_1"))}", drawing.AltText, StringComparison.Ordinal);
        Assert.Contains($"node tail, {QuantityFormat.Short(point.Voltage("tail"))}", drawing.AltText, StringComparison.Ordinal);
        Assert.Empty(new DrawnNetlist(drawing.Svg).Faults(point.Circuit).Concat(DrawnLooks.Faults(drawing.Svg)));
    }

    [Fact]
    public void Shares_of_noise_sum_to_one()
    {
        var c = new Circuit();
        c.VoltageSource("V_1", "in", "0");
        c.Resistor("R_1", "in", "out", 3.kOhm);
        c.Resistor("R_2", "out", "0", 1.kOhm);
        var shares = Annotations.Of(c.Noise("out").Budget(1.kHz)).Shares;
        // The squares at the output: 4kT/R of each over the same parallel resistance.
        Assert.Equal(0.25, shares["R_1"].DecimalFractions, 1e-9);
        Assert.Equal(0.75, shares["R_2"].DecimalFractions, 1e-9);
    }

    [Fact]
    public void A_wide_drawing_has_its_stages_for_a_telephone_and_a_picture_for_all_others()
    {
        var html = Show.Html(Examples.AmplifierInStages());
        Assert.Matches("<picture><source media=\"\\(max-width:479px\\)\" srcset=\"data:image/svg\\+xml;base64,[^\"]+\"><img src=\"data:[^>]+></picture>", html);
        Assert.DoesNotContain("<picture>", Show.Html(Examples.InputPair()), StringComparison.Ordinal);
    }
}
