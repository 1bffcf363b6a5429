using System.Text.Json.Nodes;
using EightOhm.Quantities;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>What a slider for an input can give.</summary>
internal abstract record Slider
{
    /// <summary>The slider for the page.</summary>
    public abstract JsonObject ToJson();

    /// <summary>The text of a place on it, 0 to 1.</summary>
    public abstract string At(double fraction);
}

/// <summary>Single values: preferred values, counts, cards.</summary>
/// <param name="Values">The values as texts that can be set, rising.</param>
/// <param name="Place">Which of them is in force.</param>
internal sealed record SliderOfValues(IReadOnlyList<string> Values, int Place) : Slider
{
    public override JsonObject ToJson() => new()
    {
        ["values"] = new JsonArray([.. Values.Select(v => JsonValue.Create(v))]),
        ["at"] = Place,
    };

    public override string At(double fraction) => Values[(int)Math.Round(Math.Clamp(fraction, 0, 1) * (Values.Count - 1))];
}

/// <summary>Every value between two ends, rounded to three digits.</summary>
/// <param name="Kind">The kind of quantity.</param>
/// <param name="Least">The low end, in the kind's unit.</param>
/// <param name="Most">The high end.</param>
/// <param name="InRatios">Whether equal ways are equal ratios.</param>
/// <param name="Now">The value in force.</param>
internal sealed record SliderOfRange(QuantityKind Kind, double Least, double Most, bool InRatios, double Now) : Slider
{
    /// <summary>As fine as a hand on a slider is.</summary>
    public const int Steps = 200;

    public override JsonObject ToJson() => new()
    {
        ["log"] = InRatios,
        ["least"] = At(0),
        ["most"] = At(1),
        ["steps"] = Steps,
        ["at"] = Math.Clamp(InRatios ? Math.Log(Now / Least) / Math.Log(Most / Least) : (Now - Least) / (Most - Least), 0, 1),
    };

    public override string At(double fraction)
    {
        var place = Math.Clamp(fraction, 0, 1);
        return Text(place switch
        {
            0 => InDecibels ? Decibels(Least, Math.Ceiling) : Least,
            1 => InDecibels ? Decibels(Most, Math.Floor) : Most,
            _ when InDecibels => Decibels(Least * Math.Pow(Most / Least, place), Math.Round),
            _ => Round(InRatios ? Least * Math.Pow(Most / Least, place) : Least + ((Most - Least) * place)),
        });
    }

    // A promise in decibels is moved in tenths of one.
    private bool InDecibels => InRatios && InputText.IsInDecibels(Kind, Now);

    private string Text(double value) => InputText.Of(Kind.FromSi(value), Kind);

    private static double Decibels(double value, Func<double, double> round) => Gain.FromDecibels(round(10 * Gain.FromRatio(value).Decibels) / 10).Ratio;

    // Three digits of the larger end on a straight scale: the way from −40 °C to 60 °C has whole kelvins.
    private double Round(double value)
    {
        var size = InRatios ? Math.Abs(value) : Math.Max(Math.Abs(Least), Math.Abs(Most));
        var digits = 2 - (int)Math.Floor(Math.Log10(size));
        return digits is >= 0 and <= 15 ? Math.Round(value, digits) : digits < 0 ? Math.Round(value * Math.Pow(10, digits)) / Math.Pow(10, digits) : double.Parse(value.ToString("G3", System.Globalization.CultureInfo.InvariantCulture), System.Globalization.CultureInfo.InvariantCulture);
    }
}
