using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Samples;
using UnitsNet;

namespace EightOhm.OutputStages;

/// <summary>Static distortion of a follower stage over its bias: one value for each bias, told over the idle current of one output device.</summary>
public sealed class DistortionOverBias
{
    private readonly double[][] shares;

    internal DistortionOverBias(int biases) =>
        (BiasVoltages, IdleCurrents, InputPeaks, Fundamentals, Distortions, shares) = (new double[biases], new double[biases], new double[biases], new double[biases], new double[biases], new double[biases][]);

    /// <summary>Static total harmonic distortion over the fundamental: root of the sum of squares from the second harmonic up.</summary>
    public Curve<ElectricCurrent, Ratio> Thd => new(IdleCurrents, Distortions);

    /// <summary>Between the bases of the first stage.</summary>
    public Curve<ElectricCurrent, ElectricPotential> BiasVoltage => new(IdleCurrents, BiasVoltages);

    /// <summary>Peak of the sine at the input.</summary>
    public Curve<ElectricCurrent, ElectricPotential> InputPeak => new(IdleCurrents, InputPeaks);

    /// <summary>Peak of the output's fundamental.</summary>
    public Curve<ElectricCurrent, ElectricPotential> Fundamental => new(IdleCurrents, Fundamentals);

    /// <summary>One harmonic over the fundamental, signed.</summary>
    /// <param name="n">Its number; 2 up to the highest asked for.</param>
    /// <exception cref="ArgumentOutOfRangeException">That harmonic was not asked for.</exception>
    [Worked("that harmonic of each idle current")]
    public Curve<ElectricCurrent, Ratio> Harmonic(int n)
    {
        Guard.Between(n, 2, Each[0].Length + 1);
        return new(IdleCurrents, [.. Each.Select(h => h[n - 2])]);
    }

    internal double[] BiasVoltages { get; }

    internal double[] IdleCurrents { get; }

    internal double[] InputPeaks { get; }

    internal double[] Fundamentals { get; }

    internal double[] Distortions { get; }

    internal double[][] Each => shares;
}
