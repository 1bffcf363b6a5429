namespace EightOhm.Numerics;

/// <summary>A small generator of pseudo-random numbers that gives the same numbers from the same seed on every machine and in every version of the framework.</summary>
/// <remarks>G. L. Steele, D. Lea &amp; C. H. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014: SplitMix64.</remarks>
internal struct SplitMix(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>The next number from 0 up to but not 1.</summary>
    public double Fraction() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>The next whole number from 0 up to but not <paramref name="count"/>.</summary>
    /// <param name="count">How many there are; 1 or more, and far below 2³², so that no one of them is noticeably preferred.</param>
    public int Below(int count) => (int)(Fraction() * count);
}
