using System.Collections;

namespace EightOhm.Finding;

/// <summary>Functions found by words, the best first.</summary>
public sealed class FunctionList : IReadOnlyList<FunctionDescription>
{
    private readonly IReadOnlyList<FunctionDescription> found;

    internal FunctionList(string words, IReadOnlyList<FunctionDescription> found) => (Words, this.found) = (words, found);

    /// <summary>What was looked for.</summary>
    public string Words { get; }

    /// <inheritdoc/>
    public int Count => found.Count;

    /// <inheritdoc/>
    public FunctionDescription this[int index] => found[index];

    /// <inheritdoc/>
    public IEnumerator<FunctionDescription> GetEnumerator() => found.GetEnumerator();

    /// <summary>A line a function.</summary>
    public override string ToString() => found.Count == 0
        ? $"No function speaks of \"{Words}\". Try one word of the trade, such as ripple, sink, noise, bias or fuse, or LookUp(\"\") for all."
        : string.Join('\n', found.Select(f => $"{f.Signature}: {f.Summary}"));

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
