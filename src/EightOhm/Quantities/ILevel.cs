using System.Numerics;

namespace EightOhm.Quantities;

/// <summary>A level: decibels over a reference that its type names. A ratio of two levels is a <see cref="Gain"/>.</summary>
/// <remarks>A level and a gain add, two levels differ by a gain; two levels do not add. Levels of one reference compare;
/// those of different references only through the voltage or power behind them. <c>default</c> is the reference itself, 0 dB.</remarks>
/// <typeparam name="TSelf">The implementing struct.</typeparam>
public interface ILevel<TSelf> : IComparable<TSelf>, IComparisonOperators<TSelf, TSelf, bool>
    where TSelf : struct, ILevel<TSelf>
{
    /// <summary>Decibels over the reference.</summary>
    double Decibels { get; }

    /// <summary>The symbol, such as dBu.</summary>
    static abstract string Symbol { get; }

    /// <summary>Makes a level.</summary>
    /// <param name="decibels">Decibels over the reference; finite.</param>
    static abstract TSelf FromDecibels(double decibels);
}
