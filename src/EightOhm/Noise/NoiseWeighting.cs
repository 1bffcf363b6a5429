namespace EightOhm.Noise;

/// <summary>How a noise over a band is weighted.</summary>
public enum NoiseWeighting
{
    /// <summary>Not at all: each hertz counts alike.</summary>
    None,

    /// <summary>By weighting A of IEC 61672-1, 0 dB at 1 kHz.</summary>
    A,
}
