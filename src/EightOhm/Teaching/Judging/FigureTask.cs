using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>A question with one figure for an answer.</summary>
internal sealed class FigureTask(object answer, Explanation? working) : ExerciseTask
{
    private readonly QuantityKind _kind = QuantityKinds.Of(answer.GetType());
    private readonly List<(object Value, string Says)> _slips = [];

    public Tolerance Within { get; set; } = EightOhm.Teaching.Tolerance.TwoDigits;

    /// <summary>Whether the answer is spoken of in decibels.</summary>
    public bool InDecibels => Within.SpeaksDecibels;

    public object Value => answer;

    public QuantityKind Kind => _kind;

    public override string AnswerWith => $"Answer with Check(…): {AskedKind.Typed(_kind.Type)}.";

    public override string Answer => InDecibels ? ExerciseText.Decibels(Si(answer)) : QuantityFormat.Long(answer);

    public override string Tolerance => Within.Words;

    public override IReadOnlyList<Misconception> Misconceptions => [.. _slips.Select(s => new Misconception(QuantityFormat.Long(s.Value), s.Says))];

    public override IReadOnlyList<SolutionStep> OwnSteps => working is null ? [] : [new SolutionStep("", working)];

    public override bool Separated => _slips.All(s => !Near(s.Value, answer) && !Near(answer, s.Value))
        && !_slips.Where((s, i) => _slips.Take(i).Any(e => e.Says != s.Says && (Near(s.Value, e.Value) || Near(e.Value, s.Value)))).Any();

    public IReadOnlyList<(object Value, string Says)> Slips => _slips;

    public void Slip(object wrong, string says) => _slips.Add((wrong, says));

    public Explanation? Working => working;

    public override Verdict Judge(string question, object?[] given)
    {
        if (given.Length > 1)
            return Wrong(question, given, $"One value is asked and {given.Length} were given. {AnswerWith}");
        var (si, why) = AskedKind.Read(given[0], _kind.Type);
        if (why is not null)
            return Wrong(question, given, why);
        var right = Si(answer);
        if (Within.Holds(_kind, si, right))
            return new Verdict(question, AskedKind.Said(given[0]), VerdictKind.Right, $"Right: {Answer}.");
        var slip = _slips.FirstOrDefault(s => Within.Holds(_kind, si, Si(s.Value))).Says;
        return Wrong(question, given, slip ?? Feedback.Of(_kind, Within, si, right));
    }

    private bool Near(object given, object target) => Within.Holds(_kind, Si(given), Si(target));

    // A slip may be of another kind without a unit: an answer in percent, a slip as a plain ratio.
    private static double Si(object value) => QuantityKinds.Of(value.GetType()).ToSi(value);
}
