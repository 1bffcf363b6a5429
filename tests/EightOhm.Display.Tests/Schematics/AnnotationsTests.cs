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
    public void Each_element_shows_its_strongest_sensitivity_and_a_bar_in_proportion()
    {
        var c = new Circuit();
        c.VoltageSource("V_1", "in", "0");
        c.Resistor("R_1", "in", "out", 3.kOhm);
        c.Resistor("R_2", "out", "0", 1.kOhm);
        c.Npn("Q_1", "out", "0", "0", 10.uA, new BipolarModel());
        c.Plan("""
            .   R_1- .   Q_1
            V_1 .    R_2 .
            """);
        var found = c.Sensitivities("in", "out", 1.kHz);
        var notes = Annotations.Of(found);
        // Without the transistor ±R_1/(R_1 + R_2) = ±0.75; its output resistance is far above both.
        Assert.Equal(-0.75, notes.Sensitivities["R_1"].Magnitude, 1e-3);
        Assert.Equal(0.75, notes.Sensitivities["R_2"].Magnitude, 1e-3);
        Assert.Equal(found.Where(s => s.Name.StartsWith("Q_1 ", StringComparison.Ordinal)).Max(s => Math.Abs(s.Magnitude)), Math.Abs(notes.Sensitivities["Q_1"].Magnitude));
        Assert.Equal(1, notes.Bar(found[0].Name)!.Value, 1e-12);
        Assert.Equal(Math.Abs(notes.Sensitivities["Q_1"].Magnitude / found[0].Magnitude), notes.Bar("Q_1")!.Value, 1e-12);
        Assert.Null(notes.Bar("V_1"));

        var drawing = c.Draw(annotate: notes);
        Assert.Contains("R_1 (3 kΩ) from in to out, S = −0.75", drawing.AltText, StringComparison.Ordinal);
        Assert.Contains($"S = {QuantityFormat.Short(notes.Sensitivities["Q_1"].Magnitude, 3)} ({notes.Sensitivities["Q_1"].Name["Q_1 ".Length..]})", drawing.AltText, StringComparison.Ordinal);
        Assert.Empty(new DrawnNetlist(drawing.Svg).Faults(c).Concat(DrawnLooks.Faults(drawing.Svg)));
    }

    [Fact]
    public void A_wide_drawing_has_its_stages_for_a_telephone_and_a_picture_for_all_others()
    {
        var html = Show.Html(Examples.AmplifierInStages());
        Assert.Matches("<picture><source media=\"\\(max-width:479px\\)\" srcset=\"data:image/svg\\+xml;base64,[^\"]+\"><img src=\"data:[^>]+></picture>", html);
        Assert.DoesNotContain("<picture>", Show.Html(Examples.InputPair()), StringComparison.Ordinal);
    }
}
