using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>What a requirement asks of a value; made by <see cref="Limits"/>.</summary>
public sealed record EntryLimit
{
    internal EntryLimit(LimitSense sense, QuantityKind kind, object? low, object? high)
    {
        Sense = sense;
        Kind = kind;
        Low = low is null ? null : KeptValue.Normal("the limit", kind, low);
        High = high is null ? null : KeptValue.Normal("the limit", kind, high);
        if (Low is not null && High is not null && KeptValue.Number(kind, Low) > KeptValue.Number(kind, High))
            throw new RefusedValueException("low", $"low must be at most high, {QuantityFormat.Short(High)} (was {QuantityFormat.Short(Low)}). Change them about.");
    }

    /// <summary>Which side is good.</summary>
    public LimitSense Sense { get; }

    /// <summary>The kind of quantity.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The least value allowed, or null.</summary>
    public object? Low { get; }

    /// <summary>The greatest value allowed, or null.</summary>
    public object? High { get; }

    /// <summary>The limit in words: "at least 100 W", "from 20 V to 30 V".</summary>
    public override string ToString() => Sense switch
    {
        LimitSense.AtLeast => $"at least {QuantityFormat.Long(Low!)}",
        LimitSense.AtMost => $"at most {QuantityFormat.Long(High!)}",
        _ => $"from {QuantityFormat.Long(Low!)} to {QuantityFormat.Long(High!)}",
    };
}
