using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>How far a value stands inside (positive) or outside (negative) a limit, in the unit that the trade compares it in.</summary>
/// <param name="Amount">The number.</param>
/// <param name="Unit">"%" of the limit for most; "dB" for a gain; "K" for a temperature; the kind's own unit when the limit is zero.</param>
/// <param name="Side">For a range, the limit that is nearer: "lower" or "upper"; else null.</param>
public sealed record Margin(double Amount, string Unit, string? Side)
{
    // Two numbers that differ by the rounding of a few operations only are the same figure to a designer.
    private const double Rounding = 1e-12;

    /// <summary>Whether the limit is met.</summary>
    public bool Met => Amount >= 0;

    /// <summary>The margin as it reads: "10 %", "−1.5 dB to the upper limit".</summary>
    public override string ToString() => $"{Engineering.Number(Amount, Engineering.HonestDigits(Amount, 3))} {Unit}".TrimEnd() + (Side is null ? "" : $" to the {Side} limit");

    /// <summary>The margin of a value to the limits that are there, at least one; all as kept numbers.</summary>
    internal static Margin Of(QuantityKind kind, double value, double? lowest, double? highest)
    {
        var low = lowest is { } l ? To(kind, value, l, +1) : null;
        var high = highest is { } h ? To(kind, value, h, -1) : null;
        if (low is null || high is null)
            return (low ?? high)!;
        if (low.Unit != high.Unit)
        {
            // A range that starts or ends at zero: per cent of nothing cannot be compared, the distances can.
            low = Distance(kind, value - lowest!.Value);
            high = Distance(kind, highest!.Value - value);
        }

        return low.Amount <= high.Amount ? low with { Side = "lower" } : high with { Side = "upper" };
    }

    private static Margin To(QuantityKind kind, double value, double limit, int sign)
    {
        var difference = sign * (value - limit);
        if (Math.Abs(difference) <= Rounding * Math.Abs(limit))
            difference = 0;
        if (kind.Style == FormatStyle.Celsius)
            return new(difference, "K", null);
        if (kind.Style == FormatStyle.Gain && value > 0 && limit > 0)
            return new(difference == 0 ? 0 : sign * 20 * Math.Log10(value / limit), "dB", null);
        return limit == 0 ? Distance(kind, difference) : new(difference / Math.Abs(limit) * 100, "%", null);
    }

    private static Margin Distance(QuantityKind kind, double difference) => new(difference, KeptValue.Unit(kind), null);
}
