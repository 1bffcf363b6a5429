using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>A figure asked over conditions: a lambda with each of its parameters bound to a condition, or to an entry of the record.</summary>
internal sealed class WorstQuestion
{
    private readonly Conditions over;
    private readonly IReadOnlyList<Condition> used;
    private readonly IReadOnlyList<Func<double[], object>> arguments;
    private readonly Func<object[], object> body;
    private readonly QuantityKind kind;

    /// <summary>Binds the parameters by their names.</summary>
    /// <param name="over">The conditions.</param>
    /// <param name="lambda">The figure.</param>
    /// <param name="entry">An entry's value by name, or null; null where there is no record.</param>
    /// <param name="entries">The names of the entries, for the refusal.</param>
    /// <exception cref="RecordException">A parameter is neither a condition nor an entry, or is of another type; or the value is no quantity or number.</exception>
    public WorstQuestion(Conditions over, Lambda lambda, Func<string, object?>? entry = null, IReadOnlyList<string>? entries = null)
    {
        (this.over, body) = (over, lambda.Call);
        kind = QuantityKinds.Find(lambda.Result) ?? throw new RecordException($"The worst of {lambda.Result.Name} cannot be told: the lambda must give a quantity or a number.");
        List<Condition> conditions = [];
        List<string> sources = [];
        List<Func<double[], object>> bound = [];
        // A compiled expression has its closure as a first parameter.
        foreach (var (parameter, type) in lambda.Itself.Method.GetParameters().TakeLast(lambda.Types.Count).Zip(lambda.Types))
        {
            var name = parameter.Name?.Normalize() ?? "";
            var (condition, known) = (over.Find(name), entry?.Invoke(name));
            if (condition is null && known is null)
                throw new RecordException(Unknown(name, entries));
            var argument = new LambdaArgument(name, type, condition, known);
            if (condition is not null)
                conditions.Add(condition);
            if (argument.UsesEntry)
                sources.Add(name);
            var place = conditions.Count - 1;
            bound.Add(condition is null ? _ => argument.At(0) : point => argument.At(point[place]));
        }

        (used, arguments, Entries) = (conditions, bound, sources);
    }

    /// <summary>The entries that parameters are bound to.</summary>
    public IReadOnlyList<string> Entries { get; }

    /// <summary>Finds the highest value.</summary>
    public WorstCase Highest() => Ask(true, false).Highest!;

    /// <summary>Finds the lowest value.</summary>
    public WorstCase Lowest() => Ask(false, true).Lowest!;

    /// <summary>Finds the highest, the lowest, or both with one set of looks.</summary>
    public (WorstCase? Highest, WorstCase? Lowest) Ask(bool highest, bool lowest)
    {
        var looks = new WorstLooks(Evaluate);
        var search = new WorstSearch(used, looks, over.Seed);
        try
        {
            search.Run(highest, lowest);
            // The looks for the relief of one sense may still move the other's worst.
            var (reliefOfHighest, reliefOfLowest) = (highest ? search.LeastAlong(1) : [], lowest ? search.LeastAlong(-1) : []);
            return (highest ? Case(looks.Highest, reliefOfHighest) : null, lowest ? Case(looks.Lowest, reliefOfLowest) : null);
        }
        catch (RefusedPointException refused)
        {
            var at = ConditionWords.Where(used, refused.Point);
            var untold = new WorstCase(null, at.Length == 0 ? $": {refused.Message}" : $"at {at}: {refused.Message}", Where(refused.Point), at, Bounds, search.Method, looks.Count, over.Seed, []);
            return (highest ? untold : null, lowest ? untold : null);
        }

        WorstCase Case((double[] Point, Look Look) worst, IReadOnlyList<(double Place, double Number)> relief) =>
            new(worst.Look.Value, null, Where(worst.Point), ConditionWords.Where(used, worst.Point), Bounds, search.Method, looks.Count, over.Seed,
                [.. used.Select((c, i) => new ConditionRelief(c.Name, c.At(relief[i].Place), ConditionWords.Change(c, used, worst.Point[i], relief[i].Place), kind.FromSi(relief[i].Number)))]);
    }

    private string Bounds => ConditionWords.Bounds(used);

    private IReadOnlyList<ConditionAt> Where(double[] point) => [.. used.Select((c, i) => new ConditionAt(c.Name, c.At(point[i]), c.Text(point[i])))];

    private Look Evaluate(double[] point)
    {
        var values = new object[arguments.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = arguments[i](point);
        var value = body(values);
        return new(kind.ToSi(value), value);
    }

    private string Unknown(string name, IReadOnlyList<string>? entries)
    {
        var there = over.Names.Count == 0 ? "no conditions" : $"the conditions {string.Join(", ", over.Names)}";
        return entries is null
            ? $"The lambda asks for {name}, which is no condition: there are {there}. Add it with Range, Cases or Spread, or name the parameter after one of them."
            : $"The lambda asks for {name}, which is neither a condition nor an entry: there are {there}{(entries.Count == 0 ? " and no entries" : $" and the entries {string.Join(", ", entries)}")}. Add it to the conditions, or name the parameter after one of these.";
    }
}
