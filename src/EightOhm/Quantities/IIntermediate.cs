using System.Numerics;

namespace EightOhm.Quantities;

/// <summary>A value of the algebra that a user seldom names: a number in SI units with a symbol.</summary>
/// <typeparam name="TSelf">The implementing struct.</typeparam>
public interface IIntermediate<TSelf> : IComparable<TSelf>, IComparisonOperators<TSelf, TSelf, bool>, IAdditionOperators<TSelf, TSelf, TSelf>
    where TSelf : struct, IIntermediate<TSelf>
{
    /// <summary>The value in the SI unit that <see cref="Symbol"/> names.</summary>
    double Si { get; }

    /// <summary>The symbol of the SI unit.</summary>
    static abstract string Symbol { get; }

    /// <summary>Makes a value from a number in the SI unit.</summary>
    /// <param name="si">The number in the SI unit.</param>
    static abstract TSelf FromSi(double si);
}
