using EightOhm.Circuits;
using EightOhm.Display.Figures;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Display;

/// <content>Return ratios of circuits.</content>
public static partial class Charts
{
    /// <summary>Magnitude and phase of a circuit's loop gain, one above the other: crossovers and margins marked where the closed loop is stable, and a frequency of interest.</summary>
    /// <param name="loop">The loop, opened at one place.</param>
    /// <param name="at">A frequency to mark, such as 20 kHz; none when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency to mark is outside the response.</exception>
    public static StackedFigures Bode(ReturnRatio loop, Frequency? at = null)
    {
        ArgumentNullException.ThrowIfNull(loop);
        return LoopFigures(
            $"Loop gain, opened {loop.At}",
            [LineSeries.Of("", loop.Response.Magnitude)],
            [LineSeries.Of("", loop.Response.Phase)],
            loop.IsStable == true,
            [.. loop.Crossovers.Select(c => (c.Frequency, loop.Response.PhaseAt(c.Frequency), c.PhaseMargin))],
            at is { } f ? (f, loop.MagnitudeAt(f)) : null,
            [.. loop.PhaseReversals.Where(c => c.GainMargin is not null).Select(c =>
                Span.Vertical(c.Frequency, loop.MagnitudeAt(c.Frequency), Gain.FromRatio(1), $"gain margin {QuantityFormat.Short(c.GainMargin!.Value.Decibels, 3)} dB"))]);
    }

    /// <summary>A circuit's loop gain on the complex plane, with the point −1 and the circle of gain one.</summary>
    /// <param name="loop">The loop, opened at one place.</param>
    /// <exception cref="InvalidOperationException">The loop gain is nowhere near one in its range of frequency.</exception>
    public static Figure Nyquist(ReturnRatio loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        var near = loop.Response.Values.Where(InPlane).ToArray();
        return near.Length > 1 && loop.Crossovers.Count > 0
            ? LoopPlane($"Loop gain on the complex plane, opened {loop.At}", near, [.. loop.Crossovers.Select(c => Place(loop.Response.At(c.Frequency), c.Frequency))])
            : throw new InvalidOperationException($"The loop gain {loop.At} is nowhere one in this range of frequency: there is nothing to see near −1. Compute it over a wider range.");
    }
}
