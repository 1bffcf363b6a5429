namespace EightOhm.OutputStages;

/// <summary>Static distortion of a follower stage over its bias, in plain numbers for a chart: one value for each bias.</summary>
public sealed class DistortionOverBias
{
    internal DistortionOverBias(int biases) =>
        (BiasVoltages, IdleCurrents, InputPeaks, Fundamentals, Distortions, Each) = (new double[biases], new double[biases], new double[biases], new double[biases], new double[biases], new double[biases][]);

    /// <summary>Between the bases of the first stage, V.</summary>
    public IReadOnlyList<double> BiasVoltage => BiasVoltages;

    /// <summary>Idle current of one output device, A.</summary>
    public IReadOnlyList<double> IdleCurrent => IdleCurrents;

    /// <summary>Peak of the sine at the input, V.</summary>
    public IReadOnlyList<double> InputPeak => InputPeaks;

    /// <summary>Peak of the output's fundamental, V.</summary>
    public IReadOnlyList<double> Fundamental => Fundamentals;

    /// <summary>Static total harmonic distortion over the fundamental: root of the sum of squares from the second harmonic up.</summary>
    public IReadOnlyList<double> Thd => Distortions;

    /// <summary>Each harmonic over the fundamental, signed, from the second up, for each bias.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Harmonics => Each;

    internal double[] BiasVoltages { get; }

    internal double[] IdleCurrents { get; }

    internal double[] InputPeaks { get; }

    internal double[] Fundamentals { get; }

    internal double[] Distortions { get; }

    internal double[][] Each { get; }
}
