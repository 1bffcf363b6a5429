using EightOhm.Quantities;

namespace EightOhm.Teaching;

/// <summary>The values given in an exercise: those of the book for seed 0, drawn by the seed otherwise.</summary>
/// <remarks>The same exercise and seed give the same numbers on every machine, now and later: a key stays true.</remarks>
public sealed class Numbers
{
    private ulong _state;

    internal Numbers(string id, int seed, int redraw)
    {
        Seed = Guard.NotNegative(seed);
        // FNV-1a of the exercise's name, so that two exercises of one seed do not move together; GetHashCode differs from run to run.
        _state = 14695981039346656037;
        foreach (var letter in id)
            _state = (_state ^ letter) * 1099511628211;
        _state ^= ((ulong)seed << 20) + (ulong)redraw;
    }

    /// <summary>The seed: 0 for the book's own numbers.</summary>
    public int Seed { get; }

    /// <summary>One of several values, the book's own first.</summary>
    /// <typeparam name="T">A quantity or a number.</typeparam>
    /// <param name="values">The values, preferred ones of a series; the first is given for seed 0.</param>
    /// <returns>One of them.</returns>
    /// <exception cref="ArgumentException">There is none.</exception>
    public T Pick<T>(params ReadOnlySpan<T> values)
    {
        if (values.IsEmpty)
            throw new ArgumentException("There is nothing to pick from; give the book's value first, then the others.", nameof(values));
        var drawn = Next();
        return Seed == 0 ? values[0] : values[(int)(drawn % (ulong)values.Length)];
    }

    // SplitMix64 (Steele, Lea, Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014).
    private ulong Next()
    {
        var z = _state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
