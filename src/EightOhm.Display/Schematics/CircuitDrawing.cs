using EightOhm.Circuits;
using EightOhm.Display.Schematics;

namespace EightOhm.Display;

/// <summary>Draws circuits.</summary>
public static class CircuitDrawing
{
    /// <summary>The circuit as a schematic, laid out by its plan.</summary>
    /// <param name="circuit">The circuit, with a plan: <c>c.Plan("""…""")</c>, or places: <c>.At(2, 1)</c>.</param>
    /// <param name="title">Words above the drawing.</param>
    /// <param name="annotate">Currents, voltages or shares beside the elements.</param>
    /// <param name="values">Whether the elements' values stand beside them; without, the drawing shows a topology.</param>
    /// <example><code>c.Draw("The input pair", annotate: Annotations.Of(c.Noise("out", from: "in").Budget(1.kHz)))</code></example>
    /// <returns>The drawing; a cell shows it as a picture, a console as a list of parts.</returns>
    public static Schematic Draw(this Circuit circuit, string title = "", Annotations? annotate = null, bool values = true)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        ArgumentNullException.ThrowIfNull(title);
        var notes = annotate ?? Annotations.None;
        return new(circuit, title, values ? notes : notes with { Values = false });
    }

    /// <summary>The circuit at an operating point, with its currents and voltages.</summary>
    /// <param name="point">The point; its circuit has a plan.</param>
    /// <param name="title">Words above the drawing.</param>
    /// <returns>The drawing.</returns>
    /// <example><code>c.OperatingPoint().Draw()</code></example>
    public static Schematic Draw(this OperatingPoint point, string title = "")
    {
        ArgumentNullException.ThrowIfNull(point);
        return new(point.Circuit, title, Annotations.Of(point));
    }

    /// <summary>A circuit by itself is shown as its drawing.</summary>
    /// <param name="circuit">The circuit.</param>
    [Shows]
    public static Schematic Shown(Circuit circuit) => circuit.Draw();

    /// <summary>A drawing is shown as itself.</summary>
    /// <param name="schematic">The drawing.</param>
    [Shows]
    public static Schematic Shown(Schematic schematic) => schematic;
}
