using EightOhm.Display.Figures;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.Display;

public static partial class Charts
{
    /// <summary>A gain over frequency: its magnitude in decibels and, below it, its phase.</summary>
    /// <param name="response">The response.</param>
    [Shows]
    public static StackedFigures Response(Response<Gain> response) => Responses("Gain over frequency", ("", response));

    /// <summary>An impedance over frequency: its magnitude and, below it, its phase.</summary>
    /// <param name="response">The response.</param>
    [Shows]
    public static StackedFigures Impedance(Response<ElectricResistance> response)
    {
        ArgumentNullException.ThrowIfNull(response);
        return new(
            Figure.Line("Impedance over frequency", Axis.LogOf<Frequency>("frequency"), Axis.LogOf<ElectricResistance>("magnitude"), LineSeries.Of("", response.Magnitude)),
            PhaseFigure([("", response.Phase)]));
    }

    /// <summary>Gains side by side over one range of frequency: their magnitudes in decibels and, below, their phases.</summary>
    /// <param name="title">What the figure says.</param>
    /// <param name="responses">Each with its name.</param>
    /// <exception cref="ArgumentException">There is none, or a magnitude is zero, which has no decibels.</exception>
    public static StackedFigures Responses(string title, params IReadOnlyList<(string Name, Response<Gain> Of)> responses) => new(
        MagnitudeFigure(title, responses),
        PhaseFigure([.. responses.Select(r => (r.Name, r.Of.Phase))]));

    private static Figure MagnitudeFigure(string title, IReadOnlyList<(string Name, Response<Gain> Of)> responses) =>
        Figure.Line(title, Axis.LogOf<Frequency>("frequency"), Axis.Of<Gain>("magnitude"), [.. responses.Select(r => LineSeries.Of(r.Name, r.Of.Magnitude))]);

    private static Figure PhaseFigure(IReadOnlyList<(string Name, Curve<Frequency, Angle> Phase)> phases) =>
        Figure.Line("Phase", Axis.LogOf<Frequency>("frequency"), Axis.Of<Angle>("phase"), [.. phases.Select(p => LineSeries.Of(p.Name, p.Phase))]);
}
