using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>A figure asked over conditions: a lambda with each of its parameters bound to a condition, or to an entry of the record as it stands now.</summary>
internal sealed class WorstQuestion
{
    private readonly Conditions over;
    private readonly List<Condition> used = [];
    private readonly List<string> entries = [];
    private readonly List<Func<double[], object>> arguments = [];
    private readonly Func<object[], object> body;
    private readonly string? unanswered;

    /// <summary>Binds the parameters by their names.</summary>
    /// <param name="over">The conditions, with the entries beside them.</param>
    /// <param name="lambda">The figure.</param>
    /// <exception cref="RecordException">A parameter is neither a condition nor an entry, or is of another type; or the value is no quantity or number.</exception>
    public WorstQuestion(Conditions over, Lambda lambda)
    {
        (this.over, body) = (over, lambda.Call);
        Kind = QuantityKinds.Find(lambda.Result) ?? throw new RecordException($"The worst of {lambda.Result.Name} cannot be told: the lambda must give a quantity or a number.");
        // A compiled expression has its closure as a first parameter.
        foreach (var (parameter, type) in lambda.Itself.Method.GetParameters().TakeLast(lambda.Types.Count).Zip(lambda.Types))
        {
            var name = parameter.Name?.Normalize() ?? "";
            var (condition, entry) = (over.Find(name), over.Entries?.Find(name));
            if (condition is null && entry is null)
                throw new RecordException(Unknown(name));
            var argument = new LambdaArgument(name, type, condition, entry);
            if (argument.UsesEntry)
            {
                entries.Add(name);
                if (entry is { Value: null })
                    unanswered ??= $"because {name} has no answer: {entry.Value.Reason}";
            }

            if (condition is not null)
                used.Add(condition);
            var place = used.Count - 1;
            arguments.Add(condition is null ? _ => argument.At(0) : point => argument.At(point[place]));
        }
    }

    /// <summary>The kind of the figure.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The entries that parameters are bound to.</summary>
    public IReadOnlyList<string> Entries => entries;

    /// <summary>Finds the highest value.</summary>
    public WorstCase Highest() => Ask(true, false).Highest!;

    /// <summary>Finds the lowest value.</summary>
    public WorstCase Lowest() => Ask(false, true).Lowest!;

    /// <summary>Finds the highest, the lowest, or both with one set of looks.</summary>
    public (WorstCase? Highest, WorstCase? Lowest) Ask(bool highest, bool lowest)
    {
        var looks = new WorstLooks(Evaluate);
        var search = new WorstSearch(used, looks, over.Seed);
        if (unanswered is not null)
            return Untold(unanswered, null, null);
        try
        {
            search.Run(highest, lowest);
            // The looks along the conditions may find something worse still, for either.
            var (reliefOfHighest, reliefOfLowest) = (highest ? search.LeastAlong(1) : [], lowest ? search.LeastAlong(-1) : []);
            if (highest && lowest)
                reliefOfHighest = search.LeastAlong(1);
            return (highest ? Told(looks.Highest, reliefOfHighest) : null, lowest ? Told(looks.Lowest, reliefOfLowest) : null);
        }
        catch (RefusedPointException refused)
        {
            var at = ConditionWords.Where(used, refused.Point);
            return Untold(at.Length == 0 ? $"because {refused.Message}" : $"at {at}: {refused.Message}", refused.Point, refused.InnerException);
        }

        WorstCase Told((double[] Point, Look Look) worst, IReadOnlyList<(double Place, double Number)> relief) => new()
        {
            Value = Normal(worst.Look.Value),
            Where = Where(worst.Point),
            At = ConditionWords.Where(used, worst.Point),
            Over = Bounds,
            Method = search.Method,
            Evaluations = looks.Count,
            Seed = over.Seed,
            Relief = [.. used.Select((c, i) => new ConditionRelief(At(c, relief[i].Place), ConditionWords.Change(c, used, worst.Point[i], relief[i].Place), Normal(Kind.FromSi(relief[i].Number))))],
            Entries = entries,
            Conditions = over.Names,
        };

        (WorstCase?, WorstCase?) Untold(string reason, double[]? point, Exception? cause)
        {
            var untold = new WorstCase
            {
                Reason = Words.Clean(reason),
                Where = point is null ? [] : Where(point),
                At = point is null ? "" : ConditionWords.Where(used, point),
                Over = Bounds,
                Method = search.Method,
                Evaluations = looks.Count,
                Seed = over.Seed,
                Entries = entries,
                Conditions = over.Names,
                Cause = cause,
            };
            return (highest ? untold : null, lowest ? untold : null);
        }
    }

    private string Bounds => ConditionWords.Bounds(used);

    private IReadOnlyList<ConditionAt> Where(double[] point) => [.. used.Select((c, i) => At(c, point[i]))];

    private static ConditionAt At(Condition condition, double place)
    {
        var value = condition.At(place);
        return new(condition.Name, QuantityKinds.Find(value.GetType()) is { } kind ? KeptValue.Normal(condition.Name, kind, value) : value, condition.Text(place));
    }

    private object Normal(object value) => KeptValue.Normal("the worst", Kind, value);

    private Look Evaluate(double[] point)
    {
        var values = new object[arguments.Count];
        for (var i = 0; i < values.Length; i++)
            values[i] = arguments[i](point);
        var value = body(values);
        return new(Kind.ToSi(value), value);
    }

    private string Unknown(string name)
    {
        var there = over.Names.Count == 0 ? "no conditions" : $"the conditions {string.Join(", ", over.Names)}";
        return over.Entries?.Names is not { } known
            ? $"The lambda asks for {name}, which is no condition: there are {there}. Add it with Range, Cases or Spread, or name the parameter after one of them."
            : $"The lambda asks for {name}, which is neither a condition nor an entry: there are {there}, and {(known.Count == 0 ? "no entries" : $"the entries {string.Join(", ", known)}")}. Add it to the conditions, or name the parameter after one of these.";
    }
}
