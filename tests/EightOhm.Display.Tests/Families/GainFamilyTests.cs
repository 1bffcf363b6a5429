using EightOhm.Display.Figures;
using EightOhm.Display.Tables;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tests.Families;

public class GainFamilyTests
{
    private static readonly EmitterFollowerStage Stage = new(load: 8.Ohm, pairs: 3, R_E: 0.22.Ohm) { InternalResistance = 52.5.mOhm, Junction = 55.degC };

    [Fact]
    public void The_family_has_a_line_and_a_step_for_each_idle_current()
    {
        var family = Stage.GainFamily([25.mA, 50.mA, 103.8.mA, 200.mA, 400.mA], over: 20.V, points: 101);
        var figure = Charts.GainFamily(family);
        Assert.Equal(["25 mA", "50 mA", "103.8 mA", "200 mA", "400 mA"], figure.Series.Select(s => s.Name));
        Assert.Equal(figure.Series.Select(s => s.Name), figure.Slider!.Steps);
        Assert.Equal(2, figure.Slider.Start);
        Assert.Equal(4, Charts.GainFamily(family, start: 4).Slider!.Start);
        Assert.Contains(">103.8 mA<", SvgWriter.Write(figure));
        Assert.InRange(FigureHtml.Render(figure).Length, 1000, 80_000);
    }

    [Fact]
    public void One_curve_has_no_slider_and_none_is_refused()
    {
        Assert.Null(Charts.GainFamily(Stage.EqualGainBias().Transfer(20.V, 51)).Slider);
        Assert.Throws<ArgumentException>(() => Charts.GainFamily([]));
    }

    [Fact]
    public void Distortion_over_the_bias_marks_the_best()
    {
        var over = Stage.DistortionAt([30.mA, 60.mA, 100.mA, 200.mA], 40.V);
        var best = Stage.LeastDistortionBias(40.V);
        Assert.Contains("109.9 mA, 81.15 ppm", Assert.Single(Charts.DistortionOverBias(over, best).Marks).Label);
        Assert.Equal(4, FollowerTables.Distortion(over).Rows.Count);
    }

    [Fact]
    public void Distortion_of_several_levels_has_a_line_for_each()
    {
        ElectricCurrent[] idle = [30.mA, 60.mA, 100.mA, 200.mA];
        var figure = Charts.DistortionOverBias(("full", Stage.DistortionAt(idle, 40.V)), ("1 W", Stage.DistortionAt(idle, 4.V)));
        Assert.Equal(["full", "1 W"], figure.Series.Select(s => s.Name));
        Assert.Empty(figure.Marks);
        Assert.Throws<ArgumentException>(() => Charts.DistortionOverBias());
    }

    [Fact]
    public void The_facts_of_a_bias_name_the_drivers_only_where_there_are_any()
    {
        var drivers = Stage with { Drivers = new(47.Ohm) };
        Assert.Contains("driver current", Facts.Of(drivers.EqualGainBias()).ToString());
        Assert.DoesNotContain("driver current", Facts.Of(Stage.EqualGainBias()).ToString());
        Assert.Contains("22.8", Facts.Of(Stage.EqualGainBias()).ToString());
        Assert.Contains("static THD", Facts.Of(Stage.EqualGainBias().Harmonics(40.V)).ToString());
        Assert.Equal(2, FollowerTables.Gains(Stage.GainFamily([50.mA, 100.mA], 10.V, 11)).Rows.Count);
    }
}
