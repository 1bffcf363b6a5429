using System.Numerics;
using EightOhm.Display.Figures;
using EightOhm.Feedback;
using EightOhm.Noise;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display.Tests.Recipes;

/// <summary>The figures of docs/figures.md, each as a cell would draw it. The page shows what stands after the arrow.</summary>
internal static class FigureRecipes
{
    [Recipe("A line over a sweep", "Units and labels come from the quantities; a sweep in equal ratios brings its logarithmic axis along.")]
    public static object Line() =>
        Figure.Over("Slew rate of 40 V peak", "frequency", Sweep.Log(20.Hz, 20.kHz), "slew rate",
            ("needed", f => SlewRate.Needed(f, 40.V)));

    [Recipe("Marks and limits", "A mark is a point with a name, a limit a line across. Both take quantities, and say their value when they are given no name. Names keep off the lines; one that has to go far gets a line to its point.")]
    public static object Marks() =>
        Figure.Over("Loop gain of one pole", "frequency", Sweep.Log(10.Hz, 10.MHz), "loop gain",
            ("T", f => Gain.FromRatio(FeedbackLoop.OnePoleLoopGain(20_000, 55.Hz, f)))) with
        {
            Marks = [Mark.At(20.kHz, Gain.FromRatio(FeedbackLoop.OnePoleLoopGain(20_000, 55.Hz, 20.kHz)))],
            Limits = [Limit.Horizontal(0.dB, "crossover"), Limit.Vertical(20.kHz)],
        };

    [Recipe("A band", "What lies between the least and the most of a spread. The upper edge is drawn, in the look of the series.")]
    public static object Band() =>
        Figure.Line("Noise of a resistor of 1 kΩ ± 20 %, from 0 to 100 °C", Axis.Of<Temperature>("temperature"), Axis.Of<VoltageNoiseDensity>("noise density"),
            LineSeries.Band("spread", Sweep.Linear(0.degC, 100.degC), Sweep.Linear(0.degC, 100.degC).Select(t => ThermalNoise.VoltageDensity(800.Ohm, t)), Sweep.Linear(0.degC, 100.degC).Select(t => ThermalNoise.VoltageDensity(1.2.kOhm, t))),
            LineSeries.Of("1 kΩ", Sweep.Linear(0.degC, 100.degC), Sweep.Linear(0.degC, 100.degC).Select(t => ThermalNoise.VoltageDensity(1.kOhm, t))));

    [Recipe("Areas that add up", "What a whole is made of. The parts stand on each other in the order given; the upper edge is the sum.")]
    public static object Areas() =>
        Figure.Stacked("Squares of two noises", Axis.LogOf<Frequency>("frequency"), new Axis("of the white square", "%"),
            LineSeries.Of("white", Sweep.Log(1.Hz, 10.kHz), Sweep.Log(1.Hz, 10.kHz).Select(f => 100.percent)),
            LineSeries.Of("flicker, corner 100 Hz", Sweep.Log(1.Hz, 10.kHz), Sweep.Log(1.Hz, 10.kHz).Select(f => Ratio.FromDecimalFractions(100.Hz / f)))) with
        { Y = new Axis("of the white square", "%") { Max = 500 } };

    [Recipe("A histogram", "How a tolerance spreads. The steps are round numbers, their width by the middle half of the values.")]
    public static object Histogram() =>
        Figure.Histogram("Gain of 1 + 10 kΩ / 470 Ω, resistors of 1 %", "gain",
            Enumerable.Range(0, 4000).Select(i => (A: i * 0.6180339887 % 1, B: i * 0.7548776662 % 1)).Select(u =>
                Gain.FromRatio(1 + (10.kOhm * (0.99 + (0.02 * u.A))) / (470.Ohm * (0.99 + (0.02 * u.B))))));

    [Recipe("Bars", "One bar for each name, from zero; more series stand side by side, told apart by hatches as well as by colour.")]
    public static object Bars() =>
        Figure.Bars("Thermal noise at 25 °C", new Axis("resistor"), Axis.Of<VoltageNoiseDensity>("noise density"),
            new BarSeries("", ["100 Ω", "1 kΩ", "10 kΩ"], ((ElectricResistance[])[100.Ohm, 1.kOhm, 10.kOhm]).Select(R => ThermalNoise.VoltageDensity(R, 25.degC).Si)));

    [Recipe("Margins", "A span is a distance that is read off, with its name. Figures over one axis stand one under another.")]
    public static object Margins() =>
        new StackedFigures(
            Figure.Over("Loop gain, poles at 55 Hz and 3 MHz", "frequency", Sweep.Log(1.kHz, 10.MHz), "loop gain",
                ("T", f => Gain.FromRatio(20_000 / Complex.Abs(new Complex(1, f / 55.Hz) * new Complex(1, f / 3.MHz))))) with
            { Limits = [Limit.Horizontal(0.dB, "one")] },
            Figure.Over("Its phase", "frequency", Sweep.Log(1.kHz, 10.MHz), "phase",
                ("phase", f => -Angle.FromRadians(Math.Atan(f / 55.Hz) + Math.Atan(f / 3.MHz)))) with
            { Spans = [Span.Vertical(1.039.MHz, (-180).deg, (-109.1).deg, "phase margin 70.9°")], Limits = [Limit.Horizontal((-180).deg)] });

    [Recipe("A locus in a plane", "With equal scales a circle is round: the loop gain in its complex plane, with the unit circle.")]
    public static object Locus() =>
        Figure.Line("Loop gain in its plane", new Axis("real part") { Min = -2 }, new Axis("imaginary part") { Min = -2 },
            new LineSeries("T", Sweep.Log(600e3, 50e6).Select(f => (20_000 / (new Complex(1, f / 55) * new Complex(1, f / 3e6))).Real), Sweep.Log(600e3, 50e6).Select(f => (20_000 / (new Complex(1, f / 55) * new Complex(1, f / 3e6))).Imaginary)),
            new LineSeries("unit circle", Sweep.Linear(0.0, 6.2832).Select(Math.Cos), Sweep.Linear(0.0, 6.2832).Select(Math.Sin))) with
        { HasEqualScales = true, Marks = [new(-1, 0, "−1")] };

    [Recipe("A family with a slider", "The slider brings one line at a time to the front; a page without scripts, and paper, show the family.")]
    public static object Family() =>
        Figure.Over("Gain left at a frequency", "frequency", Sweep.Log(1.kHz, 10.MHz), "closed-loop gain",
            ("26 dB", f => FeedbackLoop.ClosedLoopGain(Gain.FromRatio(2e6 / (f / 55.Hz)), 1 / 20.0)),
            ("30 dB", f => FeedbackLoop.ClosedLoopGain(Gain.FromRatio(2e6 / (f / 55.Hz)), 1 / 31.6)),
            ("34 dB", f => FeedbackLoop.ClosedLoopGain(Gain.FromRatio(2e6 / (f / 55.Hz)), 1 / 50.0))) with
        { Slider = new("gain", ["26 dB", "30 dB", "34 dB"]) };
}
