namespace EightOhm.Supply;

/// <summary>A solved rail that can be looked at again.</summary>
internal interface IRailSolution
{
    /// <summary>The rail at equal steps over one cycle of the mains, or over the shared period when that is longer.</summary>
    RailWaveform Waveform(int points);
}
