using EightOhm.Explaining;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Ratings;

/// <summary>An amplifier's data sheet as printed: each figure is the printed text, so that its rounding is known.</summary>
/// <example><code>SpecSheet.Named("Rival A").RatedPower("100 W", "8 Ω").Sensitivity("1.2 V", "8 Ω").Gain("27.4 dB").Audit()</code></example>
/// <remarks>A sheet is not changed: each method returns a new one with the figure added. Loads and references are conditions, taken as exact.
/// A text that is no such quantity is refused with a <see cref="FormatException"/>, a figure of zero or less with an <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed class SpecSheet
{
    private const int MostFigures = 20;

    private SpecSheet(string name, IReadOnlyList<PrintedFigure> figures) => (Name, Figures) = (name, figures);

    /// <summary>The sheet's name.</summary>
    public string Name { get; }

    /// <summary>The figures, in the order given.</summary>
    public IReadOnlyList<PrintedFigure> Figures { get; }

    /// <summary>An empty sheet.</summary>
    /// <param name="name">Its name, to stand in the audit.</param>
    public static SpecSheet Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(name, []);
    }

    /// <summary>Rated power, the average of a sine of one channel.</summary>
    /// <param name="text">As printed: "100 W".</param>
    /// <param name="into">The load: "8 Ω".</param>
    public SpecSheet RatedPower(string text, string into) => With(SheetForm.RatedPower(Load(into)), text);

    /// <summary>Sensitivity: the rms input voltage for rated power into a load.</summary>
    /// <param name="text">As printed: "1.2 V".</param>
    /// <param name="into">The load whose rated power it gives: another load usually needs another voltage.</param>
    public SpecSheet Sensitivity(string text, string into) => With(SheetForm.Sensitivity(Load(into)), text);

    /// <summary>One sensitivity said to hold for two loads: both reach rated power from the very same voltage.</summary>
    /// <remarks>Two figures that only round to the same text are two calls of the other method, and are not held to be equal.</remarks>
    /// <param name="text">As printed: "1.2 V".</param>
    /// <param name="into">One load: "8 Ω".</param>
    /// <param name="andInto">The other: "4 Ω".</param>
    public SpecSheet Sensitivity(string text, string into, string andInto)
    {
        var (one, other) = (Load(into), Load(andInto));
        if (one.Ohms == other.Ohms)
            Guard.Refuse(nameof(andInto), other, "another load than the first", "For one load give one.");
        return With(SheetForm.Sensitivity(one), text, SheetForm.Sensitivity(other));
    }

    /// <summary>Voltage gain.</summary>
    /// <param name="text">As printed: "27.4 dB" or "23.6".</param>
    public SpecSheet Gain(string text) => With(SheetForm.VoltageGain(), text);

    /// <summary>Slew rate at the output.</summary>
    /// <param name="text">As printed: "40 V/µs".</param>
    public SpecSheet SlewRate(string text) => With(SheetForm.SlewRate(), text);

    /// <summary>Full-power bandwidth: the highest frequency of a sine of rated power. The slew rate allows at most SR/(2π·V_pk); less is no contradiction.</summary>
    /// <param name="text">As printed: "100 kHz".</param>
    /// <param name="into">The load whose rated power it is for.</param>
    public SpecSheet FullPowerBandwidth(string text, string into) => With(SheetForm.FullPowerBandwidth(Load(into)), text);

    /// <summary>Noise voltage density, referred to the input, taken as white over the noise bandwidth.</summary>
    /// <param name="text">As printed: "3.3 nV/√Hz".</param>
    public SpecSheet NoiseDensity(string text) => With(SheetForm.NoiseDensity(), text);

    /// <summary>Noise bandwidth, in which total noise and unweighted SNR are stated.</summary>
    /// <param name="text">As printed: "20 kHz".</param>
    public SpecSheet NoiseBandwidth(string text) => With(SheetForm.NoiseBandwidth(), text);

    /// <summary>The −3 dB corner of the one pole that limits the noise: its noise bandwidth is π/2 times this.</summary>
    /// <param name="text">As printed: "585 kHz".</param>
    public SpecSheet OnePoleCorner(string text) => With(SheetForm.OnePoleCorner(), text);

    /// <summary>Total unweighted noise referred to the input, rms.</summary>
    /// <param name="text">As printed: "3.2 µV".</param>
    public SpecSheet NoiseAtInput(string text) => With(SheetForm.NoiseAtInput(), text);

    /// <summary>Total unweighted noise at the output, rms.</summary>
    /// <param name="text">As printed: "75 µV".</param>
    public SpecSheet NoiseAtOutput(string text) => With(SheetForm.NoiseAtOutput(), text);

    /// <summary>Signal-to-noise ratio against a voltage at the input.</summary>
    /// <param name="text">As printed: "110 dB".</param>
    /// <param name="reference">The rms voltage: "1 V".</param>
    /// <param name="weighting">"A" for A-weighted; empty for none. Only ratios of the same weighting are compared.</param>
    public SpecSheet Snr(string text, string reference, string weighting = "") =>
        With(SheetForm.Snr(Guard.Positive(QuantityText.Parse<ElectricPotential>(reference), nameof(reference)), weighting), text);

    /// <summary>Signal-to-noise ratio against a power of its own, such as 1 W.</summary>
    /// <param name="text">As printed: "90 dB".</param>
    /// <param name="power">The power: "1 W".</param>
    /// <param name="into">The load.</param>
    /// <param name="weighting">"A" for A-weighted; empty for none.</param>
    public SpecSheet SnrAtPower(string text, string power, string into, string weighting = "") =>
        With(SheetForm.SnrAt(Guard.Positive(QuantityText.Parse<Power>(power), nameof(power)), Load(into), weighting), text);

    /// <summary>Signal-to-noise ratio against rated power.</summary>
    /// <param name="text">As printed: "112 dB".</param>
    /// <param name="into">The load whose rated power it is against.</param>
    /// <param name="weighting">"A" for A-weighted; empty for none.</param>
    public SpecSheet SnrAtRatedPower(string text, string into, string weighting = "") => With(SheetForm.SnrAtRated(Load(into), weighting), text);

    /// <summary>Dynamic headroom: burst over rated power.</summary>
    /// <param name="text">As printed: "2 dB".</param>
    /// <param name="into">The load.</param>
    public SpecSheet DynamicHeadroom(string text, string into) => With(SheetForm.DynamicHeadroom(Load(into)), text);

    /// <summary>Burst power, the average of a short burst of a sine.</summary>
    /// <param name="text">As printed: "160 W".</param>
    /// <param name="into">The load.</param>
    public SpecSheet BurstPower(string text, string into) => With(SheetForm.BurstPower(Load(into)), text);

    /// <summary>Reads the sheet critically: which figures cannot all be true, or what would be needed to tell.</summary>
    [Worked("each relation between printed figures, checked within the rounding of their digits")]
    public SheetAudit Audit() => SheetAudit.Of(this);

    /// <summary>Sheets side by side in common figures: printed where a sheet prints one, else what its other figures make it.</summary>
    /// <param name="sheets">The sheets; at least one.</param>
    [Worked("the figures of each sheet in common units")]
    public static SheetComparison Compare(params SpecSheet[] sheets) => SheetComparison.Of(sheets);

    private static ElectricResistance Load(string into) =>
        Guard.Positive(QuantityText.Parse<ElectricResistance>(into), "the load", "Give the load of the figure, for example \"8 Ω\".");

    private SpecSheet With(SheetForm form, string text, SheetForm? also = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Figures.Count == MostFigures)
            throw new InvalidOperationException($"A sheet of more than {MostFigures} figures takes too long to judge. Leave out figures that are printed twice.");
        return new(Name, [.. Figures, new PrintedFigure(form, text, also)]);
    }
}
