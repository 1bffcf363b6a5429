namespace EightOhm.Record;

public sealed partial class Conditions
{
    /// <summary>The highest value of a figure under these conditions, and where. The lambda's parameters pick conditions, or entries, by name.</summary>
    /// <param name="figure">The figure; asked some fifty to some hundreds of times, always with values that the conditions allow.</param>
    /// <returns>The worst case; one without a value, with the reason, if the figure cannot be had somewhere under these conditions.</returns>
    /// <exception cref="RecordException">A parameter is neither a condition nor an entry, or of another type; or the figure is no quantity or number.</exception>
    public WorstCase<TR> Highest<T1, TR>(Func<T1, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <summary>The lowest value of a figure under these conditions, and where. The lambda's parameters pick conditions, or entries, by name.</summary>
    /// <param name="figure">The figure; asked some fifty to some hundreds of times, always with values that the conditions allow.</param>
    /// <returns>The worst case; one without a value, with the reason, if the figure cannot be had somewhere under these conditions.</returns>
    /// <exception cref="RecordException">A parameter is neither a condition nor an entry, or of another type; or the figure is no quantity or number.</exception>
    public WorstCase<TR> Lowest<T1, TR>(Func<T1, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, TR>(Func<T1, T2, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, TR>(Func<T1, T2, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, TR>(Func<T1, T2, T3, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, TR>(Func<T1, T2, T3, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, T4, TR>(Func<T1, T2, T3, T4, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, T4, TR>(Func<T1, T2, T3, T4, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, T4, T5, TR>(Func<T1, T2, T3, T4, T5, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, T4, T5, TR>(Func<T1, T2, T3, T4, T5, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, T4, T5, T6, TR>(Func<T1, T2, T3, T4, T5, T6, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, T4, T5, T6, TR>(Func<T1, T2, T3, T4, T5, T6, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, T4, T5, T6, T7, TR>(Func<T1, T2, T3, T4, T5, T6, T7, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, T4, T5, T6, T7, TR>(Func<T1, T2, T3, T4, T5, T6, T7, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());

    /// <inheritdoc cref="Highest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Highest<T1, T2, T3, T4, T5, T6, T7, T8, TR>(Func<T1, T2, T3, T4, T5, T6, T7, T8, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Highest());

    /// <inheritdoc cref="Lowest{T1, TR}(Func{T1, TR})"/>
    public WorstCase<TR> Lowest<T1, T2, T3, T4, T5, T6, T7, T8, TR>(Func<T1, T2, T3, T4, T5, T6, T7, T8, TR> figure)
        where TR : struct => new(new WorstQuestion(this, Lambdas.Of(figure)).Lowest());
}
