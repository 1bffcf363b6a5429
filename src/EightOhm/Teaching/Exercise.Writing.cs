using System.Linq.Expressions;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Teaching;

// What the writer of an exercise adds to the question.
public sealed partial class Exercise
{
    private FigureTask Figure => _task as FigureTask
        ?? throw new InvalidOperationException("An open design task is judged by its limits; it takes a Pitfall, not a slip or a tolerance.");

    private ChoiceTask Choice => _task as ChoiceTask
        ?? throw new InvalidOperationException("A question with one answer takes a Slip; an example and pitfalls belong to an open design task.");

    /// <summary>Adds a usual wrong answer and the sentence that helps.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="wrong">What a student gets by that slip.</param>
    /// <param name="says">A sentence on the slip, which must not hold the answer.</param>
    /// <returns>The same exercise.</returns>
    /// <exception cref="ArgumentException">The slip cannot be told from the answer.</exception>
    public Exercise Slip<T>(T wrong, ExerciseText says)
        where T : struct
    {
        var (si, why) = AskedKind.Read(wrong, Figure.Kind.Type);
        if (why is not null)
            throw new ArgumentException($"A slip is of the answer's kind. {why}", nameof(wrong));
        if (!_drawn && Figure.Within.Holds(Figure.Kind, si, Figure.Kind.ToSi(Figure.Value)))
            throw new ArgumentException($"The slip {QuantityFormat.Short(wrong)} cannot be told from the answer {Figure.Answer}, {Figure.Tolerance}. Set a narrower tolerance before it, or leave it out.", nameof(wrong));
        Figure.Slip(wrong, says.ToString());
        return this;
    }

    /// <summary>Sets how near an answer must be; two digits otherwise. Written before the slips.</summary>
    /// <param name="share">A share of the answer: <c>5.percent</c>.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Within(Ratio share) => WithinAny(share);

    /// <summary>Sets how near an answer in decibels must be, and speaks of it in decibels. Written before the slips.</summary>
    /// <param name="decibels">So many decibels up or down: <c>0.5.dB</c>.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Within(Gain decibels) => WithinAny(decibels);

    /// <summary>Sets how near a temperature must be. Written before the slips.</summary>
    /// <param name="difference">So many kelvins up or down.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Within(TemperatureDelta difference) => WithinAny(difference);

    /// <summary>Adds hints, from a nudge to nearly there; none may hold the answer.</summary>
    /// <param name="hints">Two or three.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Hints(params ExerciseText[] hints)
    {
        ArgumentNullException.ThrowIfNull(hints);
        _hints.AddRange(hints.Select(h => h.ToString()));
        return this;
    }

    /// <summary>Adds a step in words to the solution.</summary>
    /// <param name="words">The words, with computed values.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Step(ExerciseText words)
    {
        _steps.Add(new SolutionStep(words.ToString()));
        return this;
    }

    /// <summary>Adds the working of an expression to the solution.</summary>
    /// <typeparam name="T">Its result.</typeparam>
    /// <param name="working">The expression, in named values.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Step<T>(Expression<Func<T>> working)
    {
        _steps.Add(new SolutionStep("", Worked(working)));
        return this;
    }

    /// <summary>Gives a choice that keeps all limits of a design task, for the solution.</summary>
    /// <param name="choice">The values in the order asked.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Example(params object[] choice)
    {
        Choice.Example = choice;
        return this;
    }

    /// <summary>Gives a usual choice that breaks a limit of a design task, for a teacher's key.</summary>
    /// <param name="fails">The name of the criterion that it fails.</param>
    /// <param name="choice">The values in the order asked.</param>
    /// <returns>The same exercise.</returns>
    public Exercise Pitfall(string fails, params object[] choice)
    {
        Choice.Pitfall(fails, choice);
        return this;
    }

    /// <summary>Gives the exercise a name, under which the progress keeps it: the chapter and a word, "05-mine".</summary>
    /// <param name="id">Two digits, a dash, and words with dashes.</param>
    /// <param name="level">How much it asks.</param>
    /// <returns>The same exercise.</returns>
    /// <exception cref="ArgumentException">The name is of another form.</exception>
    public Exercise As(string id, ExerciseLevel level = ExerciseLevel.Steps)
    {
        (Id, Level) = (ExerciseId.Checked(id), level);
        NumbersOfSeed = Seed;
        return this;
    }

    private Exercise WithinAny(object within)
    {
        Figure.Within = Tolerance.Of(within, Figure.Kind);
        return this;
    }
}
