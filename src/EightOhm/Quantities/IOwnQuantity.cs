using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>A complete UnitsNet quantity of ours: a value in one of a few units, each a plain factor of the first.</summary>
/// <remarks>UnitsNet asks each quantity for the same dozen explicit members; they stand here once.</remarks>
/// <typeparam name="TSelf">The implementing struct.</typeparam>
/// <typeparam name="TUnit">Its unit enumeration, starting at 1 with the SI unit.</typeparam>
public interface IOwnQuantity<TSelf, TUnit> : IArithmeticQuantity<TSelf, TUnit, double>, IComparable, IComparable<TSelf>
    where TSelf : struct, IOwnQuantity<TSelf, TUnit>
    where TUnit : struct, Enum
{
    /// <summary>The quantity's units.</summary>
    static abstract UnitTable<TUnit> Units { get; }

    /// <summary>Makes a quantity from a number and a unit.</summary>
    /// <param name="value">The number.</param>
    /// <param name="unit">The unit it is in.</param>
    static abstract TSelf From(double value, TUnit unit);

    /// <summary>The number in the unit the quantity was made with.</summary>
    double Number { get; }

    /// <summary>The value in the SI unit.</summary>
    double Si { get; }

    BaseDimensions IQuantity.Dimensions => TSelf.Units.Info.BaseDimensions;

    QuantityInfo IQuantity.QuantityInfo => TSelf.Units.Info;

    QuantityInfo<TUnit> IQuantity<TUnit>.QuantityInfo => TSelf.Units.Info;

    QuantityValue IQuantity.Value => Number;

    double IValueQuantity<double>.Value => Number;

    Enum IQuantity.Unit => ((IQuantity<TUnit>)this).Unit;

    double IQuantity.As(Enum unit) => Si / TSelf.Units.Factor(UnitTable<TUnit>.Cast(unit));

    double IQuantity.As(UnitSystem unitSystem) => Si;

    double IQuantity<TUnit>.As(TUnit unit) => Si / TSelf.Units.Factor(unit);

    double IQuantity<TUnit, double>.As(TUnit unit) => Si / TSelf.Units.Factor(unit);

    double IValueQuantity<double>.As(Enum unit) => Si / TSelf.Units.Factor(UnitTable<TUnit>.Cast(unit));

    double IValueQuantity<double>.As(UnitSystem unitSystem) => Si;

    IQuantity IQuantity.ToUnit(Enum unit) => Converted(UnitTable<TUnit>.Cast(unit));

    IQuantity IQuantity.ToUnit(UnitSystem unitSystem) => Converted(TSelf.Units.Base);

    IQuantity<TUnit> IQuantity<TUnit>.ToUnit(TUnit unit) => Converted(unit);

    IQuantity<TUnit> IQuantity<TUnit>.ToUnit(UnitSystem unitSystem) => Converted(TSelf.Units.Base);

    IValueQuantity<double> IValueQuantity<double>.ToUnit(Enum unit) => Converted(UnitTable<TUnit>.Cast(unit));

    IValueQuantity<double> IValueQuantity<double>.ToUnit(UnitSystem unitSystem) => Converted(TSelf.Units.Base);

    string IQuantity.ToString(IFormatProvider? provider) => ToString()!;

    bool IQuantity.Equals(IQuantity? other, IQuantity tolerance) =>
        other is TSelf o && tolerance is TSelf t && Math.Abs(Si - o.Si) <= t.Si;

    int IComparable.CompareTo(object? obj) => obj switch
    {
        null => 1,
        TSelf other => Si.CompareTo(other.Si),
        _ => throw new ArgumentException($"A {typeof(TSelf).Name} can only be compared with another (was {obj.GetType().Name}).", nameof(obj)),
    };

    int IComparable<TSelf>.CompareTo(TSelf other) => Si.CompareTo(other.Si);

    /// <summary>The same quantity in another unit.</summary>
    /// <param name="unit">The unit wanted.</param>
    TSelf Converted(TUnit unit) => TSelf.From(Si / TSelf.Units.Factor(unit), unit);
}
