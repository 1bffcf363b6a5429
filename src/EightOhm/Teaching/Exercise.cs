using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>A question with a figure for an answer, which checks itself and knows the usual wrong answers.</summary>
/// <typeparam name="T">The quantity asked for.</typeparam>
/// <param name="Question">The question.</param>
/// <param name="Answer">The right answer.</param>
public sealed record Exercise<T>(string Question, T Answer)
    where T : struct
{
    /// <summary>How near an answer must be: an answer of two honest digits is mostly within one percent.</summary>
    public const double Tolerance = 0.01;

    private readonly List<(T Value, string Says)> _slips = [];

    /// <summary>Adds a usual wrong answer and the sentence that helps.</summary>
    /// <param name="wrong">What a student gets by that slip.</param>
    /// <param name="says">One sentence on the slip.</param>
    public Exercise<T> Slip(T wrong, string says)
    {
        if (Near(wrong, Answer))
            throw new ArgumentException($"The slip {QuantityFormat.Short(wrong)} cannot be told from the answer {QuantityFormat.Short(Answer)}.", nameof(wrong));
        _slips.Add((wrong, says));
        return this;
    }

    /// <summary>Checks an answer.</summary>
    /// <param name="given">The answer given, in any unit.</param>
    public Verdict Check(T given)
    {
        if (Near(given, Answer))
            return new Verdict(Question, QuantityFormat.Long(given), Right: true, $"Right: {QuantityFormat.Long(Answer)}.");
        var slip = _slips.FirstOrDefault(s => Near(given, s.Value)).Says;
        return new Verdict(Question, QuantityFormat.Long(given), Right: false, slip ?? $"Not yet: {QuantityFormat.Short(given)} is {(Si(given) > Si(Answer) ? "too large" : "too small")}.");
    }

    private static bool Near(T a, T b) => Math.Abs(Si(a) - Si(b)) <= Tolerance * Math.Abs(Si(b));

    private static double Si(T value) => QuantityKinds.Of(typeof(T)).ToSi(value);
}

/// <summary>Starts exercises.</summary>
public static class Exercise
{
    /// <summary>Asks for a figure.</summary>
    /// <typeparam name="T">The quantity asked for.</typeparam>
    /// <param name="question">The question.</param>
    /// <param name="answer">The right answer, computed rather than typed.</param>
    public static Exercise<T> Ask<T>(string question, T answer)
        where T : struct => new(question, answer);
}

/// <summary>What an exercise says of an answer.</summary>
/// <param name="Question">The question.</param>
/// <param name="Given">The answer given.</param>
/// <param name="Right">Whether it is right.</param>
/// <param name="Says">One sentence.</param>
public sealed record Verdict(string Question, string Given, bool Right, string Says)
{
    /// <summary>The verdict as text.</summary>
    public override string ToString() => $"{Question}\n{Given}: {Says}";
}
