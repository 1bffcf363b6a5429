using System.Globalization;
using System.Text.RegularExpressions;
using EightOhm.Quantities;

namespace EightOhm.Ratings;

/// <summary>A figure as a sheet prints it, and what it claims: every value that rounds to it, half a unit of the last printed digit either way.</summary>
/// <remarks>A printed zero is a printed digit: "100 kHz" claims 99.5 to 100.5 kHz. Where it is not, write the fewer digits: "0.1 MHz" or "1e2 kHz".</remarks>
public sealed partial class PrintedFigure
{
    // Rounding errors of the logarithms themselves must not decide a tie.
    private const double Tie = 1e-12;

    internal PrintedFigure(SheetForm form, string text, SheetForm? also = null)
    {
        Form = also is null ? form : form with { What = $"{form.What} and {also.Load!.Value.Text()}" };
        Same = also is null ? null : form.SameAs(also);
        Says = also is null ? [form.What] : [form.What, also.What];
        Kind = QuantityKinds.Of(form.Type);
        Text = text;
        var read = Parts().Match(text.Replace('−', '-').Trim());
        if (!read.Success)
            throw new FormatException($"\"{text}\" cannot be read as {form.What}. {Example(Kind, text)}");
        var number = decimal.Parse(read.Groups["number"].Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        var half = 0.5m;
        for (var i = 0; i < read.Groups["decimals"].Length; i++)
            half /= 10;
        QuantityText.Parse(text, Kind); // its refusal quotes the text as printed
        double low = Si(number - half), printed = Si(number), high = Si(number + half);
        if (!(printed > 0 && low > 0))
            throw new RefusedValueException(form.What, $"{form.What} must be greater than zero (was {text}). Leave a figure out that the sheet does not give.");
        if (form.What.Contains("SNR", StringComparison.Ordinal) && printed < 1)
            throw new RefusedValueException(form.What, $"{form.What} must be above 0 dB (was {text}). Write a noise of −110 dB as an SNR of 110 dB.");
        (Low, High) = (Math.Log(low) - Tie, Math.Log(high) + Tie);

        // Both ends are read as texts, so that decibels and prefixes keep their own meaning.
        double Si(decimal end) => Kind.ToSi(QuantityText.Parse(end.ToString(CultureInfo.InvariantCulture) + read.Groups["rest"].Value, Kind));
    }

    /// <summary>What it is, in words: "rated power into 8 Ω".</summary>
    public string What => Form.What;

    /// <summary>The text as printed: "100 W".</summary>
    public string Text { get; }

    internal SheetForm Form { get; }

    // The form whose value must be one, where the figure is said to hold for two loads.
    internal SheetForm? Same { get; }

    // What it prints, one form a load.
    internal IReadOnlyList<string> Says { get; }

    internal QuantityKind Kind { get; }

    // Natural logarithms of the ends in SI units.
    internal double Low { get; }

    internal double High { get; }

    /// <summary>The figure in words: "rated power into 8 Ω 100 W".</summary>
    public override string ToString() => $"{What} {Text}";

    private static string Example(QuantityKind kind, string text)
    {
        try
        {
            QuantityText.Parse(text, kind);
        }
        catch (FormatException e)
        {
            return e.Message;
        }

        return "Write the number with a point and its unit: 4.7 kHz.";
    }

    [GeneratedRegex(@"^(?<number>[+-]?\d{1,15}(\.(?<decimals>\d{1,12}))?)(?<rest>([eE][+-]?\d{1,3})?\s*([^\d.eE\s].*)?)$")]
    private static partial Regex Parts();
}
