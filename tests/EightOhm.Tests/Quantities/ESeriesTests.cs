using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

/// <summary>The series of IEC 60063, as printed there: 2.2 and 4.7 in E12, 9.1 in E24, 4.87 in E96, 2.23 and 9.20 in E192.</summary>
public class ESeriesTests
{
    [Theory]
    [InlineData(2.3, 2.2)]
    [InlineData(25, 27)] // by ratio: 25/22 is more than 27/25
    [InlineData(0.0051, 0.0047)]
    [InlineData(9.5, 10)]
    public void The_nearest_of_twelve(double value, double nearest) => Assert.Equal(nearest, ESeries.E12.Nearest(value));

    [Theory]
    [InlineData(920, 910)]
    [InlineData(2.3, 2.4)] // 2.4/2.3 is a little less than 2.3/2.2
    public void The_nearest_of_twenty_four(double value, double nearest) => Assert.Equal(nearest, ESeries.E24.Nearest(value));

    [Theory]
    [InlineData(2236, 2230)]
    [InlineData(9.195, 9.20)]
    [InlineData(1000, 1000)]
    public void The_nearest_of_a_hundred_and_ninety_two(double value, double nearest) => Assert.Equal(nearest, ESeries.E192.Nearest(value), 9);

    [Theory]
    [InlineData(4.6, 3.9, 4.7)]
    [InlineData(4.7, 4.7, 4.7)]
    [InlineData(9, 8.2, 10)]
    public void The_neighbours_of_twelve(double value, double below, double above) =>
        Assert.Equal((below, above), (ESeries.E12.AtMost(value), ESeries.E12.AtLeast(value)));

    [Fact]
    public void Quantities_come_as_quantities()
    {
        Assert.Equal(4.87.kOhm, ESeries.E96.Nearest(4.83.kOhm));
        Assert.Equal(470.uF, ESeries.E12.AtLeast(430.uF));
        Assert.Equal([1.kOhm, 1.5.kOhm, 2.2.kOhm, 3.3.kOhm, 4.7.kOhm, 6.8.kOhm, 10.kOhm], ESeries.E6.Between(1.kOhm, 10.kOhm));
        Assert.Equal([1, 2.2, 4.7], ESeries.E3.Values);
        Assert.Equal([1.00, 1.05, 1.10, 1.15, 1.21, 1.27], ESeries.E48.Values.Take(6));
        Assert.Equal([3, 6, 12, 24, 48, 96, 192], new[] { ESeries.E3, ESeries.E6, ESeries.E12, ESeries.E24, ESeries.E48, ESeries.E96, ESeries.E192 }.Select(e => e.Values.Count));
    }

    [Fact]
    public void What_is_no_part_is_refused_in_words()
    {
        Assert.Contains("(was 0 Ω)", Assert.Throws<RefusedValueException>(() => ESeries.E12.Nearest(0.Ohm)).Message, StringComparison.Ordinal);
        Assert.Contains("no preferred values", Assert.Throws<ArgumentOutOfRangeException>(() => ESeries.E12.Nearest(25.degC)).Message, StringComparison.Ordinal);
        Assert.Contains("10 kΩ and 1 kΩ", Assert.Throws<ArgumentOutOfRangeException>(() => ESeries.E12.Between(10.kOhm, 1.kOhm)).Message, StringComparison.Ordinal);
    }
}
