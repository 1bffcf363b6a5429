using EightOhm.Display.Figures;

namespace EightOhm.Display.Tests.Figures;

public class RulerTests
{
    private static Ruler Linear(double low, double high, string unit = "V") => RulerMaker.Make(new Axis("y", unit), low, high, roundOut: true);

    private static Ruler Log(double low, double high) => RulerMaker.Make(Axis.Log("x", "Hz"), low, high, roundOut: false);

    [Fact]
    public void Linear_ticks_share_one_prefix()
    {
        var ruler = Linear(0, 2.9);
        Assert.Equal(["0", "0.5 V", "1.0 V", "1.5 V", "2.0 V", "2.5 V", "3.0 V"], ruler.Ticks.Select(t => t.Text));
        Assert.Equal((0, 3), (ruler.Min, ruler.Max));
    }

    [Fact]
    public void Millivolts_are_said_as_millivolts() =>
        Assert.Equal(["−100 mV", "−50 mV", "0", "50 mV", "100 mV"], Linear(-0.054, 0.0667).Ticks.Select(t => t.Text));

    [Fact]
    public void Ticks_far_from_zero_stay_apart() =>
        Assert.Equal(Linear(1000.001, 1000.006).Ticks.Count, Linear(1000.001, 1000.006).Ticks.Select(t => t.Text).Distinct().Count());

    [Fact]
    public void Two_decades_are_labelled_one_two_five() =>
        Assert.Equal(["1 Hz", "2 Hz", "5 Hz", "10 Hz", "20 Hz", "50 Hz", "100 Hz"], Log(1, 100).Ticks.Select(t => t.Text));

    [Fact]
    public void Many_decades_are_labelled_at_the_decades_with_a_two_five_grid()
    {
        var ruler = Log(10, 1e5);
        Assert.Equal(["10 Hz", "100 Hz", "1 kHz", "10 kHz", "100 kHz"], ruler.Ticks.Select(t => t.Text));
        Assert.Equal([20, 50, 200, 500, 2000, 5000, 20e3, 50e3], ruler.Minor);
    }

    [Fact]
    public void Less_than_a_decade_still_has_ticks() => Assert.True(Log(31, 39).Ticks.Count >= 3);

    [Fact]
    public void A_decade_takes_the_same_length_everywhere()
    {
        var ruler = Log(10, 1000);
        Assert.Equal(0.5, ruler.Fraction(100), 12);
    }

    [Fact]
    public void Labels_without_room_are_thinned_to_the_decades() =>
        Assert.Equal(["1 Hz", "10 Hz", "100 Hz"], Log(1, 100).Readable(150, _ => 50).Select(t => t.Text));

    [Theory]
    [InlineData(0, 0)]
    [InlineData(28.3, 28.3)]
    [InlineData(-5, -5)]
    public void A_constant_gets_an_axis_around_it(double low, double high)
    {
        var ruler = Linear(low, high);
        Assert.True(ruler.Min < low && ruler.Max > high && ruler.Ticks.Count >= 2);
    }

    [Fact]
    public void Given_ends_are_kept()
    {
        var ruler = RulerMaker.Make(new Axis("y", "V") { Min = -3, Max = 17 }, 0, 100, roundOut: true);
        Assert.Equal((-3, 17), (ruler.Min, ruler.Max));
    }

    [Fact]
    public void Ends_in_the_wrong_order_are_refused()
    {
        var error = Assert.Throws<ArgumentException>(() => RulerMaker.Make(new Axis("output", "V") { Min = 5, Max = 1 }, 0, 1, true));
        Assert.Contains("\"output\" must end above its beginning (5.00 V), but ends at 1.00 V", error.Message);
    }
}
