using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class GuardTests
{
    [Fact]
    public void A_refusal_names_the_parameter_its_value_what_is_allowed_and_what_to_try()
    {
        var load = (-8).Ohm;
        var refused = Assert.Throws<RefusedValueException>(() => Guard.Positive(load, hint: "Give the rated load, for example 8.Ohm."));
        Assert.Equal("load", refused.ParamName);
        Assert.Equal("load must be greater than 0 Ω (was −8 Ω). Give the rated load, for example 8.Ohm.", refused.Message);
    }

    [Fact]
    public void Zero_is_not_positive_but_it_is_not_negative()
    {
        var P = 0.W;
        Assert.Equal("P must be greater than 0 W (was 0 W).", Assert.Throws<RefusedValueException>(() => Guard.Positive(P)).Message);
        Assert.Equal(P, Guard.NotNegative(P));
        var none = Ratio.FromPartsPerMillion(0); // zero in another unit than the kind's own
        Assert.Equal(0, Guard.NotNegative(none).DecimalFractions);
        var less = (-5).W;
        Assert.Equal("less must be 0 W or more (was −5 W).", Assert.Throws<RefusedValueException>(() => Guard.NotNegative(less)).Message);
    }

    [Fact]
    public void A_temperature_is_positive_above_absolute_zero()
    {
        var T = Temperature.FromKelvins(0);
        Assert.Equal("T must be greater than −273.15 °C (was −273.15 °C).", Assert.Throws<RefusedValueException>(() => Guard.Positive(T)).Message);
        Assert.Equal((-40).degC, Guard.Positive((-40).degC));
    }

    [Fact]
    public void A_range_includes_its_ends()
    {
        var cos_phi = 1.2;
        Assert.Equal("cos_phi must be from 0 to 1 (was 1.2).", Assert.Throws<RefusedValueException>(() => Guard.Between(cos_phi, 0, 1)).Message);
        Assert.Equal(1, Guard.Between(1.0, 0, 1));
        Assert.Equal(0, Guard.Between(0.0, 0, 1));
    }

    [Fact]
    public void What_is_not_a_number_passes_no_guard()
    {
        var x = double.NaN;
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Guard.Positive(x));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Guard.NotNegative(x));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Guard.Between(x, 0, 1));
        Assert.Contains("x must be a finite number", Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Guard.Finite(x)).Message, StringComparison.Ordinal);
        Assert.Contains("must be greater than 0", Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Guard.Positive(x)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Below_a_bound_is_refused_and_on_it_is_not()
    {
        var x = 3.V;
        Assert.Contains("x must be 4 V or more (was 3 V)", Assert.Throws<RefusedValueException>(() => Guard.AtLeast(x, 4.V)).Message, StringComparison.Ordinal);
        Assert.Equal(x, Guard.AtLeast(x, 3.V));
        Assert.Throws<RefusedValueException>(() => Guard.AtLeast(double.NaN, 0));
    }
}
