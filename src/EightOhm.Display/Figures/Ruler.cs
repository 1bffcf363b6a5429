namespace EightOhm.Display.Figures;

/// <summary>A labelled place on an axis.</summary>
internal sealed record Tick(double Value, string Text);

/// <summary>An axis with its ends and ticks settled. Both pictures of a figure read the same one.</summary>
internal sealed record Ruler(AxisScale Scale, double Min, double Max, IReadOnlyList<Tick> Ticks, IReadOnlyList<double> Minor)
{
    /// <summary>Where a value lies: 0 at the beginning of the axis, 1 at its end.</summary>
    public double Fraction(double value) => (Along(value) - Along(Min)) / (Along(Max) - Along(Min));

    /// <summary>The value as the axis counts it: itself, or its decimal logarithm.</summary>
    public double Along(double value) => Scale == AxisScale.Log ? Math.Log10(value) : value;

    /// <summary>The value that lies at a place of an axis drawn from <paramref name="start"/> over <paramref name="length"/> pixels.</summary>
    public double Value(double place, double start, double length)
    {
        var along = Along(Min) + (place - start) / length * (Along(Max) - Along(Min));
        return Scale == AxisScale.Log ? Math.Pow(10, along) : along;
    }

    public bool Holds(double value) => Fraction(value) is > -1e-9 and < 1 + 1e-9;

    /// <summary>The ticks whose labels have room: all, else the decades, else every second, third …</summary>
    public IReadOnlyList<Tick> Readable(double length, Func<string, double> extent)
    {
        if (Fits(Ticks)) return Ticks;
        if (Scale == AxisScale.Log)
        {
            var decades = Ticks.Where(t => Math.Abs(Math.Log10(t.Value) - Math.Round(Math.Log10(t.Value))) < 1e-9).ToArray();
            if (decades.Length >= 2 && Fits(decades)) return decades;
        }
        // Every second, third …, counted from zero where the axis has it.
        var origin = Math.Max(0, Ticks.ToList().FindIndex(t => t.Value == 0));
        for (var every = 2; every < Ticks.Count; every++)
        {
            var some = Ticks.Where((_, i) => (i - origin) % every == 0).ToArray();
            if (Fits(some)) return some;
        }
        return [Ticks[origin]];

        bool Fits(IReadOnlyList<Tick> ticks) => !ticks.Zip(ticks.Skip(1)).Any(pair =>
            (Fraction(pair.Second.Value) - Fraction(pair.First.Value)) * length < (extent(pair.First.Text) + extent(pair.Second.Text)) / 2);
    }
}
