namespace EightOhm.Record;

/// <summary>A lambda of one to eight parameters, each asked for by its name.</summary>
internal static class Lambdas
{
    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, TR>(Func<T1, TR> f) => new(f, [typeof(T1)], typeof(TR), a => f((T1)a[0])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, TR>(Func<T1, T2, TR> f) => new(f, [typeof(T1), typeof(T2)], typeof(TR), a => f((T1)a[0], (T2)a[1])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, TR>(Func<T1, T2, T3, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, T4, TR>(Func<T1, T2, T3, T4, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3), typeof(T4)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2], (T4)a[3])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, T4, T5, TR>(Func<T1, T2, T3, T4, T5, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2], (T4)a[3], (T5)a[4])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, T4, T5, T6, TR>(Func<T1, T2, T3, T4, T5, T6, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5), typeof(T6)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2], (T4)a[3], (T5)a[4], (T6)a[5])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, T4, T5, T6, T7, TR>(Func<T1, T2, T3, T4, T5, T6, T7, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5), typeof(T6), typeof(T7)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2], (T4)a[3], (T5)a[4], (T6)a[5], (T7)a[6])!);

    /// <inheritdoc cref="Lambda"/>
    public static Lambda Of<T1, T2, T3, T4, T5, T6, T7, T8, TR>(Func<T1, T2, T3, T4, T5, T6, T7, T8, TR> f) => new(f, [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5), typeof(T6), typeof(T7), typeof(T8)], typeof(TR), a => f((T1)a[0], (T2)a[1], (T3)a[2], (T4)a[3], (T5)a[4], (T6)a[5], (T7)a[6], (T8)a[7])!);
}

/// <summary>A lambda that is called with boxed values.</summary>
/// <param name="Itself">The lambda, whose parameter names count.</param>
/// <param name="Types">The parameters' types.</param>
/// <param name="Result">The type of its value.</param>
/// <param name="Call">Calls it.</param>
internal sealed record Lambda(Delegate Itself, IReadOnlyList<Type> Types, Type Result, Func<object[], object> Call);
