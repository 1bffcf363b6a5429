using EightOhm.Sizing;

namespace EightOhm.Tests.Sizing;

/// <summary>The series of IEC 60063, as printed there: 2.2 and 4.7 in E12, 9.1 in E24, 2.23 and 9.20 in E192.</summary>
public class PreferredValuesTests
{
    [Theory]
    [InlineData(2.3, 2.2)]
    [InlineData(25, 27)] // by ratio: 25/22 is more than 27/25
    [InlineData(0.0051, 0.0047)]
    [InlineData(9.5, 10)]
    public void The_nearest_of_twelve(double value, double nearest) => Assert.Equal(nearest, PreferredValues.NearestOf12(value));

    [Theory]
    [InlineData(920, 910)]
    [InlineData(2.3, 2.4)] // 2.4/2.3 is a little less than 2.3/2.2
    public void The_nearest_of_twenty_four(double value, double nearest) => Assert.Equal(nearest, PreferredValues.NearestOf24(value));

    [Theory]
    [InlineData(2236, 2230)]
    [InlineData(9.195, 9.20)]
    [InlineData(1000, 1000)]
    public void The_nearest_of_a_hundred_and_ninety_two(double value, double nearest) => Assert.Equal(nearest, PreferredValues.NearestOf192(value), 9);

    [Theory]
    [InlineData(4.6, 3.9, 4.7)]
    [InlineData(4.7, 4.7, 4.7)]
    [InlineData(9, 8.2, 10)]
    public void The_neighbours_of_twelve(double value, double below, double above) =>
        Assert.Equal((below, above), (PreferredValues.AtMostOf12(value), PreferredValues.AtLeastOf12(value)));

    [Theory]
    [InlineData(176.4, 2, 170, 180)]
    [InlineData(0.0123, 1, 0.01, 0.02)]
    [InlineData(180, 2, 180, 180)]
    public void Digits_down_and_up(double value, int digits, double down, double up) =>
        Assert.Equal((down, up), (PreferredValues.Down(value, digits), PreferredValues.Up(value, digits)));
}
