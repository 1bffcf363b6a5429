using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>An open design task: a choice of the student's, judged against several limits.</summary>
internal sealed class ChoiceTask(IReadOnlyList<(string Name, Type Type)> asked, Func<object[], IReadOnlyList<Criterion>> limits) : ExerciseTask
{
    private readonly List<(object[] Choice, string Fails)> _pitfalls = [];

    public object[]? Example { get; set; }

    public override string AnswerWith =>
        $"Answer with Check({string.Join(", ", asked.Select(a => a.Name))}): {string.Join("; ", asked.Select(a => $"{a.Name} is {AskedKind.Typed(a.Type)}"))}.";

    public override string Answer => Example is null ? "any choice that keeps all limits" : $"for example {Text(Example)}; any choice that keeps all limits is right";

    public override string Tolerance => "all limits kept";

    public IReadOnlyList<(object[] Choice, string Fails)> Pitfalls => _pitfalls;

    public override IReadOnlyList<Misconception> Misconceptions => [.. _pitfalls.Select(p => new Misconception(Text(p.Choice), string.Join(" ", Limits(p.Choice).Where(c => !c.Met))))];

    public override IReadOnlyList<SolutionStep> OwnSteps => Example is null ? [] : [.. Limits(Example).Select(c => new SolutionStep(c.ToString()))];

    public override bool Separated => (Example is null || Limits(Example).All(c => c.Met))
        && _pitfalls.All(p => Limits(p.Choice).Any(c => !c.Met && c.Name == p.Fails));

    public void Pitfall(string fails, object[] choice) => _pitfalls.Add((choice, fails));

    public IReadOnlyList<Criterion> Limits(object[] choice) => limits(choice);

    public override Verdict Judge(string question, object?[] given)
    {
        if (given.Length != asked.Count)
            return Wrong(question, given, $"{Count(asked.Count)} asked and {given.Length} {(given.Length == 1 ? "was" : "were")} given. {AnswerWith}");
        var values = new object[asked.Count];
        for (var i = 0; i < asked.Count; i++)
        {
            var (name, type) = asked[i];
            var (si, why) = AskedKind.Read(given[i], type);
            if (why is null && type == typeof(int) && (si != Math.Round(si) || Math.Abs(si) > int.MaxValue))
                why = "That is not a whole number.";
            if (why is not null)
                return Wrong(question, given, $"{name}: {why}");
            values[i] = QuantityKinds.Of(type).FromSi(si);
        }

        return Judged(question, given, values);
    }

    private Verdict Judged(string question, object?[] given, object[] values)
    {
        IReadOnlyList<Criterion> criteria;
        try
        {
            criteria = Limits(values);
        }
        catch (Exception e) when (e is ArgumentException or ShortfallException or InvalidOperationException or ArithmeticException)
        {
            // The library refuses the choice in words of its own; they are the judgement.
            return Wrong(question, given, $"That choice cannot be calculated. {e.Message}");
        }

        var missed = criteria.Count(c => !c.Met);
        var says = missed == 0
            ? $"Right: it keeps all {criteria.Count} limits."
            : $"Not yet: {missed} of {criteria.Count} limits {(missed == 1 ? "is" : "are")} not kept.";
        return new Verdict(question, Text(values), missed == 0 ? VerdictKind.Right : VerdictKind.Wrong, says) { Criteria = criteria };
    }

    private string Text(object[] choice) => string.Join(", ", choice.Select((v, i) => $"{asked[i].Name} = {QuantityFormat.Short(v)}"));

    private static string Count(int n) => n == 1 ? "One value is" : $"{n} values are";
}
