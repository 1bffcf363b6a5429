using EightOhm.Sizing;

namespace EightOhm.Tests.Sizing;

public class PreferredValuesTests
{
    [Theory]
    [InlineData(176.4, 2, 170, 180)]
    [InlineData(0.0123, 1, 0.01, 0.02)]
    [InlineData(180, 2, 180, 180)]
    public void Digits_down_and_up(double value, int digits, double down, double up) =>
        Assert.Equal((down, up), (PreferredValues.Down(value, digits), PreferredValues.Up(value, digits)));
}
