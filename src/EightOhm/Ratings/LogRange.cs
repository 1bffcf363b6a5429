using EightOhm.Quantities;

namespace EightOhm.Ratings;

/// <summary>What a figure can be, as natural logarithms of the ends in SI units; an end may be infinite.</summary>
internal readonly record struct LogRange(double Low, double High)
{
    public LogRange Plus(LogRange other) => new(Low + other.Low, High + other.High);

    public LogRange Plus(double shift) => new(Low + shift, High + shift);

    public LogRange Times(double factor) => factor >= 0 ? new(Low * factor, High * factor) : new(High * factor, Low * factor);

    /// <summary>The range in words; a gain in decibels, as sheets print it.</summary>
    public string Say(QuantityKind kind, int digits = Engineering.Digits)
    {
        string low = double.IsInfinity(Low) ? "" : One(kind, Low, digits), high = double.IsInfinity(High) ? "" : One(kind, High, digits);
        return (low, high) switch
        {
            ("", _) => $"at most {high}",
            (_, "") => $"at least {low}",
            _ when low == high => $"about {low}",
            _ when low[low.LastIndexOf(' ')..] is var unit && high.EndsWith(unit, StringComparison.Ordinal) => $"{low[..^unit.Length]} to {high}",
            _ => $"{low} to {high}",
        };
    }

    private static string One(QuantityKind kind, double log, int digits) => kind switch
    {
        { Style: FormatStyle.Gain } => $"{Engineering.Number(20 / Math.Log(10) * log, digits)} dB",
        { Spoken: var (factor, symbol) } => Engineering.Text(Math.Exp(log) / factor, symbol, 0, 0, digits),
        _ => Engineering.Text(Math.Exp(log), kind.Symbol, kind.Least, kind.Most, digits),
    };
}
