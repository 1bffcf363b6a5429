using System.Globalization;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

/// <summary>What UnitsNet asks of a quantity, for each of ours that is a complete one.</summary>
public abstract class OwnQuantityTests<T, TUnit>
    where T : struct, IOwnQuantity<T, TUnit>, IEquatable<T>
    where TUnit : struct, Enum
{
    private static readonly TUnit[] Units = Enum.GetValues<TUnit>();

    [Fact]
    public void The_table_names_every_unit_and_the_first_is_the_SI_unit()
    {
        IQuantity<TUnit> one = T.From(1, Units[0]);
        Assert.Equal(typeof(T).Name, one.QuantityInfo.Name);
        Assert.Equal(Units, one.QuantityInfo.UnitInfos.Select(u => u.Value));
        Assert.Equal(Units[0], one.QuantityInfo.BaseUnitInfo.Value);
        Assert.Equal(1.0, T.From(1, Units[0]).Si);
        Assert.Same(((IQuantity)one).QuantityInfo, one.QuantityInfo);
        Assert.Equal(QuantityKinds.Of(typeof(T)).Symbol, UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(Units[0], CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Each_unit_converts_both_ways_and_is_read_by_its_abbreviation()
    {
        foreach (var unit in Units)
        {
            var value = T.From(2.5, unit);
            IQuantity<TUnit> quantity = value;
            Assert.Equal(2.5, quantity.As(unit), 12);
            Assert.Equal(value.Si, quantity.As(Units[0]));
            Assert.Equal(value.Si, ((IQuantity)value).As((Enum)Units[0]));
            var si = ((IQuantity)value).ToUnit((Enum)Units[0]);
            Assert.Equal(Units[0], (TUnit)si.Unit);
            Assert.True(value.Equals((T)si));
            Assert.Equal(value.GetHashCode(), si.GetHashCode());
            var symbol = UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(unit, CultureInfo.InvariantCulture);
            var read = QuantityText.Parse<T>("2.5 " + symbol);
            Assert.InRange(read.Si / value.Si, 1 - 1e-15, 1 + 1e-15);
            Assert.InRange(T.Parse("2.5 " + symbol, CultureInfo.GetCultureInfo("de-DE")).Si / value.Si, 1 - 1e-15, 1 + 1e-15);
            Assert.True(T.TryParse("2.5 " + symbol, null, out _));
        }

        Assert.False(T.TryParse("2.5 parsec", null, out _));
        Assert.Throws<FormatException>(() => T.Parse("2,5", null));
    }

    [Fact]
    public void Values_compare_across_units_and_within_a_tolerance()
    {
        T small = T.From(1, Units[0]), large = T.From(3, Units[0]);
        Assert.Equal(large, UnitMath.Max(small, large));
        Assert.Equal(small, UnitMath.Min(small, large));
        Assert.True(((IComparable<T>)small).CompareTo(large) < 0);
        Assert.True(((IComparable)large).CompareTo(small) > 0);
        Assert.Equal(1, ((IComparable)large).CompareTo(null));
        Assert.Throws<ArgumentException>(() => ((IComparable)large).CompareTo("3"));
        Assert.True(((IQuantity)small).Equals(T.From(1.05, Units[0]), T.From(0.1, Units[0])));
        Assert.False(((IQuantity)small).Equals(T.From(1.2, Units[0]), T.From(0.1, Units[0])));
        Assert.True(small.Equals(T.From(1.05, Units[0]), T.From(0.1, Units[0])));
    }

    [Fact]
    public void The_default_is_zero_in_the_SI_unit_and_strangers_are_refused()
    {
        T zero = default;
        Assert.Equal(0, zero.Si);
        Assert.Equal(Units[0], zero.Unit);
        Assert.Throws<ArgumentException>(() => ((IQuantity)zero).As(UnitsNet.Units.LengthUnit.Meter));
        Assert.Throws<ArgumentOutOfRangeException>(() => zero.Converted((TUnit)Enum.ToObject(typeof(TUnit), 99)));
        Assert.Throws<ArgumentOutOfRangeException>(() => T.From(double.NaN, Units[0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => T.From(double.PositiveInfinity, Units[0]));
    }

    [Fact]
    public void Text_is_the_same_whatever_format_and_culture_are_asked_for()
    {
        IQuantity value = T.From(1234.5, Units[0]);
        Assert.Equal(QuantityFormat.Short(value), value.ToString(CultureInfo.GetCultureInfo("ru-RU")));
        Assert.Equal(QuantityFormat.Short(value), ((IFormattable)value).ToString("G", CultureInfo.GetCultureInfo("de-DE")));
    }
}

public class HeatResistanceTests : OwnQuantityTests<ThermalResistance, ThermalResistanceUnit>;

public class VoltageNoiseDensityTests : OwnQuantityTests<VoltageNoiseDensity, VoltageNoiseDensityUnit>;

public class CurrentNoiseDensityTests : OwnQuantityTests<CurrentNoiseDensity, CurrentNoiseDensityUnit>;
