using EightOhm.Circuits;
using EightOhm.Display.Figures;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <content>Return ratios of circuits.</content>
public static partial class Charts
{
    /// <summary>The loop gain over frequency with its margins, if it is stable, and its value at frequencies that matter.</summary>
    /// <param name="loop">The loop, opened at one place.</param>
    /// <param name="at">Frequencies to mark, such as <c>20.kHz</c>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A frequency to mark is outside the response.</exception>
    public static StackedFigures Bode(ReturnRatio loop, params IReadOnlyList<Frequency> at)
    {
        ArgumentNullException.ThrowIfNull(loop);
        var magnitude = MagnitudeFigure($"Loop gain, opened {loop.At}", [("", loop.Response)]);
        var phase = PhaseFigure([("", loop.Response.Phase)]);
        if (loop.IsStable == false)
            magnitude = magnitude with { Subtitle = "The closed loop is unstable: margins are not told." };
        return new(
            magnitude with
            {
                Limits = [Limit.Horizontal(Gain.FromRatio(1), "one")],
                Marks = [.. at.Select(f => Mark.At(f, loop.MagnitudeAt(f)))],
                Spans = [.. loop.PhaseReversals.Where(c => c.GainMargin is not null).Select(c =>
                    Span.Vertical(c.Frequency, loop.MagnitudeAt(c.Frequency), Gain.FromRatio(1), $"gain margin {QuantityFormat.Short(c.GainMargin!.Value.Decibels, 3)} dB"))],
            },
            phase with
            {
                Spans = [.. loop.Crossovers.Where(c => c.PhaseMargin is not null).Select(c =>
                    Span.Vertical(c.Frequency, loop.Response.PhaseAt(c.Frequency) - c.PhaseMargin!.Value, loop.Response.PhaseAt(c.Frequency), $"phase margin {QuantityFormat.Short(c.PhaseMargin!.Value, 3)}"))],
            });
    }

    /// <summary>The loop gain in its complex plane, with the unit circle and the point −1 that it must not go round.</summary>
    /// <param name="loop">The loop, opened at one place.</param>
    /// <remarks>Only what lies within a few units of the circle is shown: far from it the locus tells nothing of stability.</remarks>
    /// <exception cref="InvalidOperationException">The loop gain never comes near to one.</exception>
    public static Figure Nyquist(ReturnRatio loop)
    {
        const double reach = 2.5;
        ArgumentNullException.ThrowIfNull(loop);
        var near = loop.Response.Values.Where(t => Math.Abs(t.Real) < 2 * reach && Math.Abs(t.Imaginary) < 2 * reach).ToArray();
        if (near.Length < 2)
            throw new InvalidOperationException($"The loop gain {loop.At} never comes near to one in this range of frequency. Compute it over a wider range.");
        var turn = Sweep.Linear(0, Math.Tau, 181);
        return Figure.Line($"Loop gain in its plane, opened {loop.At}",
            new Axis("real part") { Min = -reach, Max = reach }, new Axis("imaginary part") { Min = -reach, Max = reach },
            new LineSeries("loop gain", near.Select(t => t.Real), near.Select(t => t.Imaginary)),
            new LineSeries("unit circle", turn.Select(Math.Cos), turn.Select(Math.Sin))) with
        {
            HasEqualScales = true,
            Marks = [new(-1, 0, "−1")],
        };
    }
}
