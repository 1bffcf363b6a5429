using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>The units of a quantity of ours: symbol and factor, the SI unit first.</summary>
/// <typeparam name="TUnit">The unit enumeration.</typeparam>
public sealed class UnitTable<TUnit>
    where TUnit : struct, Enum
{
    private readonly double[] _factors;

    /// <summary>Makes the table and tells UnitsNet the abbreviations.</summary>
    /// <param name="name">The quantity's name.</param>
    /// <param name="zero">Its zero, in the SI unit.</param>
    /// <param name="dimensions">Its base dimensions.</param>
    /// <param name="units">Its units: enumeration value, plural name, abbreviation, factor to the SI unit.</param>
    internal UnitTable(string name, IQuantity zero, BaseDimensions dimensions, params (TUnit Unit, string Plural, string Symbol, double Factor)[] units)
    {
        Base = units[0].Unit;
        _factors = [.. units.Select(u => u.Factor)];
        Info = new QuantityInfo<TUnit>(
            name,
            [.. units.Select(u => new UnitInfo<TUnit>(u.Unit, u.Plural, BaseUnits.Undefined, name))],
            Base,
            (IQuantity<TUnit>)zero,
            dimensions);
        foreach (var u in units)
            UnitsNetSetup.Default.UnitAbbreviations.MapUnitToDefaultAbbreviation(u.Unit, u.Symbol);
    }

    /// <summary>The SI unit.</summary>
    public TUnit Base { get; }

    /// <summary>What UnitsNet knows of the quantity.</summary>
    public QuantityInfo<TUnit> Info { get; }

    /// <summary>What one of the unit is in SI units.</summary>
    /// <param name="unit">The unit; <c>default</c> is the SI unit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one of the quantity's.</exception>
    public double Factor(TUnit unit)
    {
        var index = Convert.ToInt32(unit, System.Globalization.CultureInfo.InvariantCulture);
        if (index == 0)
            return 1;
        return index > 0 && index <= _factors.Length
            ? _factors[index - 1]
            : throw new ArgumentOutOfRangeException(nameof(unit), unit, $"{Info.Name} has no such unit; it has {string.Join(", ", Info.UnitInfos.Select(u => u.Name))}.");
    }

    internal static TUnit Cast(Enum unit) => unit is TUnit own
        ? own
        : throw new ArgumentException($"The unit must be a {typeof(TUnit).Name} (was {unit.GetType().Name}).", nameof(unit));
}
