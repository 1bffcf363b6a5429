namespace EightOhm.Quantities;

/// <summary>A unit that somebody chose for a kind: how the kept number becomes the one shown, and the symbol as it is written.</summary>
/// <param name="Symbol">The symbol, in the house's spelling: mV, µV, kΩ.</param>
/// <param name="FromSi">From the number in the kind's own unit to the number shown.</param>
internal sealed record UnitChoice(string Symbol, Func<double, double> FromSi)
{
    private const string Prefixes = "yzafpnµm kMGT"; // steps of 1000; the space is the unit itself
    private const int UnitIndex = 8;

    /// <summary>The choice that a text names, or null where the kind has no such unit.</summary>
    public static UnitChoice? Find(QuantityKind kind, string unit)
    {
        var text = unit.Trim().Replace('μ', 'µ').Replace('\u2126', 'Ω');
        if (Special(kind).FirstOrDefault(s => s.Symbol == text) is { } special)
            return special;
        foreach (var (spelling, factor) in kind.Spellings.Prepend((kind.Symbol, 1.0)).Where(s => s.Item1.Length > 0))
        {
            if (!text.EndsWith(spelling, StringComparison.Ordinal))
                continue;
            var prefix = text[..^spelling.Length].Replace('u', 'µ');
            // Ohm and ohms are Ω; V/us is V/µs.
            var symbol = factor == 1 ? kind.Symbol : spelling.Replace("/us", "/µs", StringComparison.Ordinal).Replace("m2", "m²", StringComparison.Ordinal);
            if (prefix.Length == 0)
                return new(symbol, si => factor < 1 ? si * Math.Round(1 / factor) : si / factor);
            if (prefix.Length == 1 && Prefixed(kind) && factor == 1 && Prefixes.IndexOf(prefix[0], StringComparison.Ordinal) is var at and >= 0 and not UnitIndex)
                return new(prefix + symbol, Scaled(at - UnitIndex));
        }

        return null;
    }

    /// <summary>The units that the kind is shown in, in words' order.</summary>
    public static IReadOnlyList<string> Allowed(QuantityKind kind)
    {
        var own = kind.Symbol.Length == 0 ? []
            : Prefixed(kind) ? Enumerable.Range(kind.Least / 3, ((kind.Most - kind.Least) / 3) + 1).Select(p => p == 0 ? kind.Symbol : Prefixes[UnitIndex + p] + kind.Symbol)
            : kind.Spoken is { } spoken ? [kind.Symbol, spoken.Symbol] : [kind.Symbol];
        return [.. own.Concat(kind.Spellings.Where(s => s.Factor != 1).Select(s => s.Text)).Concat(Special(kind).Select(s => s.Symbol)).Distinct()];
    }

    private static bool Prefixed(QuantityKind kind) => kind.Style == FormatStyle.Engineering && kind.Spoken is null && kind.Most > kind.Least;

    private static Func<double, double> Scaled(int steps)
    {
        var scale = Math.Pow(10, 3 * Math.Abs(steps));
        return steps > 0 ? si => si / scale : si => si * scale;
    }

    // What is no power of ten of the kind's unit.
    private static IEnumerable<UnitChoice> Special(QuantityKind kind) => kind.Style switch
    {
        FormatStyle.Celsius => [new("K", c => c + Constants.ZeroCelsius)],
        FormatStyle.Angle => [new("rad", d => d * Math.PI / 180)],
        FormatStyle.Gain => [new("dB", r => Gain.FromRatio(r).Decibels), new("V/V", r => r)],
        FormatStyle.Fraction => [new("dB", r => Gain.FromRatio(r).Decibels)],
        _ when kind.Type == typeof(UnitsNet.ElectricPotential) => [Level<DbuLevel>(v => DbuLevel.Of(v.V)), Level<DbvLevel>(v => DbvLevel.Of(v.V))],
        _ when kind.Type == typeof(UnitsNet.Power) => [Level<DbwLevel>(p => DbwLevel.Of(p.W)), Level<DbmLevel>(p => DbmLevel.Of(p.W))],
        _ when kind.Type == typeof(UnitsNet.Pressure) => [Level<SoundPressureLevel>(p => SoundPressureLevel.Of(p.Pa))],
        _ when kind.Type == typeof(UnitsNet.Length) => [new("cm", m => m * 100)],
        _ when kind.Type == typeof(UnitsNet.Duration) => [new("min", s => s / 60)],
        _ => [],
    };

    private static UnitChoice Level<T>(Func<double, T> of)
        where T : struct, ILevel<T> => new(T.Symbol, si => of(si).Decibels);
}
