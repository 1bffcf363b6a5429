using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Teaching;

public sealed partial class Exercise
{
    private static int _seed;

    /// <summary>The seed of the numbers in the exercises that are asked from now on: 0 for the book's own; any other gives each student numbers of their own, the same on every machine.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public static int Seed
    {
        get => _seed;
        set => _seed = Guard.NotNegative(value, nameof(Seed), "A seed is a whole number such as 42, one for each student or class.");
    }

    /// <summary>An exercise of the course.</summary>
    /// <param name="id">Its name: the chapter and a word, "05-ripple".</param>
    /// <param name="seed">The seed of its numbers, 0 or more; null for <see cref="Seed"/>.</param>
    /// <exception cref="ArgumentException">There is no such exercise; the message names those of its chapter.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The seed is negative.</exception>
    public static Exercise Of(string id, int? seed = null) =>
        CourseExercises.Find(id).Make(Guard.NotNegative(seed ?? Seed, nameof(seed), "A seed is a whole number such as 42; 0 gives the book's own numbers."));

    /// <summary>Numbers by seed for an exercise of a teacher's own: <c>var n = Exercise.Numbers("05-mine"); var I = n.Pick(3.A, 2.A);</c></summary>
    /// <param name="id">The exercise's name.</param>
    public static Numbers Numbers(string id)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        return new Numbers(id, Seed, 0);
    }

    /// <summary>How far a student is, chapter by chapter, as the file beside the notebooks says.</summary>
    public static CourseProgress Progress() => ProgressFile.Here.Read();

    /// <summary>The same of another folder.</summary>
    /// <param name="folder">The folder of the notebooks.</param>
    public static CourseProgress Progress(string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        return ProgressFile.In(folder).Read();
    }

    /// <summary>Asks for a figure.</summary>
    /// <typeparam name="T">The quantity asked for.</typeparam>
    /// <param name="question">The question.</param>
    /// <param name="answer">The right answer, computed rather than typed.</param>
    public static Exercise Ask<T>(ExerciseText question, T answer)
        where T : struct => new(question, new FigureTask(answer, null));

    /// <summary>Asks for a figure whose working is the first step of the solution.</summary>
    /// <typeparam name="T">The quantity asked for.</typeparam>
    /// <param name="question">The question.</param>
    /// <param name="answer">The expression that gives the right answer, in named values.</param>
    public static Exercise Ask<T>(ExerciseText question, Expression<Func<T>> answer)
        where T : struct
    {
        var working = Worked(answer);
        return new(question, new FigureTask(working.Value, working));
    }

    /// <summary>An open design task: one value is to be chosen.</summary>
    /// <typeparam name="T">The quantity to choose.</typeparam>
    /// <param name="question">The task, with its limits.</param>
    /// <param name="name">The value's symbol.</param>
    /// <param name="limits">What the choice comes to, each against its limit.</param>
    public static Exercise Choose<T>(ExerciseText question, string name, Func<T, IReadOnlyList<Criterion>> limits)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(limits);
        return Choosing(question, [(name, typeof(T))], v => limits((T)v[0]));
    }

    /// <summary>An open design task: two values are to be chosen.</summary>
    /// <typeparam name="T1">The first quantity.</typeparam>
    /// <typeparam name="T2">The second quantity.</typeparam>
    /// <param name="question">The task, with its limits.</param>
    /// <param name="first">The first value's symbol.</param>
    /// <param name="second">The second value's symbol.</param>
    /// <param name="limits">What the choice comes to, each against its limit.</param>
    public static Exercise Choose<T1, T2>(ExerciseText question, string first, string second, Func<T1, T2, IReadOnlyList<Criterion>> limits)
        where T1 : struct
        where T2 : struct
    {
        ArgumentNullException.ThrowIfNull(limits);
        return Choosing(question, [(first, typeof(T1)), (second, typeof(T2))], v => limits((T1)v[0], (T2)v[1]));
    }

    /// <summary>An open design task: three values are to be chosen.</summary>
    /// <typeparam name="T1">The first quantity.</typeparam>
    /// <typeparam name="T2">The second quantity.</typeparam>
    /// <typeparam name="T3">The third quantity.</typeparam>
    /// <param name="question">The task, with its limits.</param>
    /// <param name="first">The first value's symbol.</param>
    /// <param name="second">The second value's symbol.</param>
    /// <param name="third">The third value's symbol.</param>
    /// <param name="limits">What the choice comes to, each against its limit.</param>
    public static Exercise Choose<T1, T2, T3>(ExerciseText question, string first, string second, string third, Func<T1, T2, T3, IReadOnlyList<Criterion>> limits)
        where T1 : struct
        where T2 : struct
        where T3 : struct
    {
        ArgumentNullException.ThrowIfNull(limits);
        return Choosing(question, [(first, typeof(T1)), (second, typeof(T2)), (third, typeof(T3))], v => limits((T1)v[0], (T2)v[1], (T3)v[2]));
    }

    private static Exercise Choosing(ExerciseText question, (string, Type)[] asked, Func<object[], IReadOnlyList<Criterion>> limits) =>
        new(question, new ChoiceTask(asked, limits)) { Level = ExerciseLevel.Design };
}
