using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Record;

/// <summary>One condition: the values it may have, each reached by a number from 0 to 1 (a range) or by its place in a list.</summary>
internal abstract class Condition(string name, string? word)
{
    /// <summary>The name by which a lambda asks for it.</summary>
    public string Name { get; } = name;

    /// <summary>What stands before its value in a sentence, or null.</summary>
    public string? Word { get; } = word;

    /// <summary>The type that a lambda's parameter must be able to take.</summary>
    public abstract Type Type { get; }

    /// <summary>The places that every combination tries, the one to start from first.</summary>
    public abstract IReadOnlyList<double> Places { get; }

    /// <summary>Whether values lie between the places too.</summary>
    public virtual bool IsContinuous => false;

    /// <summary>The value at a place.</summary>
    public abstract object At(double place);

    /// <summary>The value at a place in words, without name or word.</summary>
    public abstract string Text(double place);

    /// <summary>All that it may be, in words, without name or word.</summary>
    public abstract string Bounds { get; }

    /// <summary>Whether its values, of a kind that no other condition has, are understood without a name before them.</summary>
    public virtual bool SpeaksForItself => false;
}

/// <summary>Every value from one end to the other; over a decade or more of a quantity that has no sign, in equal ratios.</summary>
internal sealed class RangeCondition : Condition
{
    private const double Decade = 10;
    private readonly QuantityKind kind;
    private readonly object low, high;
    private readonly double from, to;
    private readonly bool inRatios, signed;

    public RangeCondition(string name, object low, object high, string? word)
        : base(name, word)
    {
        kind = QuantityKinds.Of(low.GetType());
        (this.low, this.high) = (low, high);
        (from, to) = (kind.ToSi(low), kind.ToSi(high));
        signed = ConditionWords.IsSigned(low);
        inRatios = kind.NeverNegative && kind.Style != FormatStyle.Celsius && from > 0 && to >= Decade * from;
        Places = from == to ? [0] : [0.5, 0, 1];
    }

    public override Type Type => kind.Type;

    public override IReadOnlyList<double> Places { get; }

    public override bool IsContinuous => from < to;

    public override bool SpeaksForItself => ConditionWords.SpeakForThemselves(low);

    // The ends are the designer's own values, to the last bit.
    public override object At(double place) => place switch
    {
        0 => low,
        1 => high,
        _ => kind.FromSi(inRatios ? from * Math.Pow(to / from, place) : from + ((to - from) * place)),
    };

    public override string Text(double place) => ConditionWords.Value(At(place), signed);

    public override string Bounds => from == to ? Text(0) : $"{Text(0)} to {Text(1)}";
}

/// <summary>One of a few values, each tried as it is.</summary>
internal sealed class CaseCondition : Condition
{
    private readonly object[] values;
    private readonly bool signed;

    public CaseCondition(string name, Type type, object[] values, string? word)
        : base(name, word)
    {
        this.values = values;
        Type = type;
        signed = values.Any(ConditionWords.IsSigned);
        Places = [.. Enumerable.Range(0, values.Length).Select(i => (double)i)];
    }

    public override Type Type { get; }

    public override IReadOnlyList<double> Places { get; }

    public override bool SpeaksForItself => ConditionWords.SpeakForThemselves(values[0]);

    public override object At(double place) => values[(int)place];

    public override string Text(double place) => ConditionWords.Value(At(place), signed);

    public override string Bounds => string.Join(" or ", Places.Select(Text));
}

/// <summary>A factor on something that varies from part to part, judged at its two ends.</summary>
internal sealed class SpreadCondition(string name, Ratio by, string? word) : Condition(name, word)
{
    public override Type Type => typeof(double);

    public override IReadOnlyList<double> Places { get; } = by.DecimalFractions == 0 ? [0] : [0, 1];

    public override object At(double place) => place == 0 ? 1 - by.DecimalFractions : 1 + by.DecimalFractions;

    public override string Text(double place) => ConditionWords.Value(place == 0 ? -by : by, true);

    public override string Bounds => by.DecimalFractions == 0 ? Text(0) : $"±{QuantityFormat.Short(by)}";
}
