using EightOhm.Quantities;

namespace EightOhm;

/// <summary>A solver could not reach its target: what is missing, by how much, and what to try.</summary>
/// <remarks>Not a wrong input: the inputs are possible, what they ask for is not there. A run goes on past it; what hangs on the result cannot be told.
/// Results that are verdicts carry a figure <c>Short</c> instead.</remarks>
public sealed class ShortfallException : Exception
{
    /// <summary>Reports a shortfall.</summary>
    /// <param name="what">What is missing, as the beginning of a sentence: "The positive rail".</param>
    /// <param name="by">How much of it: a quantity or number greater than 0.</param>
    /// <param name="because">Why, as the rest of the sentence without its full stop: "it falls to 30 V where 33.2 V are needed".</param>
    /// <param name="hint">What to try, full sentences.</param>
    public ShortfallException(string what, object by, string because, string hint)
        : base($"{what} is short by {QuantityFormat.Short(by)}: {because}. {hint}") => (What, By) = (what, by);

    /// <summary>What is missing: "The positive rail".</summary>
    public string What { get; }

    /// <summary>How much of it: a quantity or number.</summary>
    public object By { get; }
}
