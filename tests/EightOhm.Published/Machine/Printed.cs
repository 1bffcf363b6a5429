using System.Globalization;
using System.Text.RegularExpressions;
using EightOhm.Quantities;

namespace EightOhm.Published.Machine;

/// <summary>A printed value and what it claims: every value that rounds to it. Half a unit of its last printed digit, either way.</summary>
internal sealed partial record Printed(string Text, double Low, double High)
{
    /// <summary>Reads a value as a source prints it. A printed zero is a printed digit: "100 kHz" claims 99.5 to 100.5 kHz.</summary>
    /// <param name="text">The text, with its unit; "e-15" after the number is a scale, not a digit.</param>
    /// <param name="type">The type of the value it is compared with.</param>
    public static Printed Of(string text, Type type)
    {
        var form = NumberForm().Match(text.Replace('−', '-').Trim());
        if (!form.Success)
            throw new FormatException($"\"{text}\" is not a number as a source prints it, with its unit: 12.8 nV/√Hz, 316, 1.4 degC/W.");
        var kind = QuantityKinds.Of(type);
        var number = decimal.Parse(form.Groups["number"].Value, CultureInfo.InvariantCulture);
        var half = 0.5m;
        for (var i = 0; i < form.Groups["decimals"].Length; i++)
            half /= 10;
        // Both ends are read as texts, so that decibels, degrees and prefixes keep their own meaning.
        var tail = form.Groups["scale"].Value + form.Groups["unit"].Value;
        double End(decimal end) => kind.ToSi(QuantityText.Parse(end.ToString(CultureInfo.InvariantCulture) + tail, kind));
        double a = End(number - half), b = End(number + half);
        return new Printed(text, Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>Whether the value rounds to what is printed. A tie passes either way: binary numbers cannot tell it.</summary>
    public bool Covers(double si)
    {
        var rounding = 1e-12 * Math.Max(Math.Abs(Low), Math.Abs(High));
        return si >= Low - rounding && si <= High + rounding;
    }

    [GeneratedRegex(@"^(?<number>[+-]?\d+(\.(?<decimals>\d+))?)(?<scale>[eE][+-]?\d+)?(?<unit>[^\d.eE].*)?$")]
    private static partial Regex NumberForm();
}
