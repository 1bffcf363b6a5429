using CsCheck;
using EightOhm.Devices;
using EightOhm.OutputStages;
using EightOhm.Quantities;
using EightOhm.SafeAreas;
using EightOhm.Tests.Devices;
using UnitsNet;

namespace EightOhm.Tests.SafeAreas;

public class SafeAreaTests
{
    private static readonly SafeArea Area = new(Transistor.Load(Cards.Output));

    private static readonly SafeArea Gentle = new(Transistor.Parse(File.ReadAllText(Cards.Output).Replace("\"0 %\"", "\"50 %\"", StringComparison.Ordinal)));

    [Theory]
    [InlineData(1, 15, SafeAreaBound.Current)]
    [InlineData(10, 15, SafeAreaBound.Current)]
    [InlineData(20, 7.5, SafeAreaBound.Dissipation)]
    [InlineData(50, 3, SafeAreaBound.Dissipation)]
    [InlineData(70.71067811865476, 1.6431676725154984, SafeAreaBound.SecondBreakdown)] // the middle of a straight line on a log-log chart is the root of the product
    [InlineData(200, 0.2, SafeAreaBound.SecondBreakdown)]
    [InlineData(201, 0, SafeAreaBound.Voltage)]
    public void The_dc_line_of_a_cool_case(double volts, double amperes, SafeAreaBound bound)
    {
        var area = Area.For(25.degC, SafeArea.Dc);
        Assert.Equal(amperes, area.LimitAt(volts.V).Amperes, 9);
        Assert.Equal(bound, area.BoundAt(volts.V));
        Assert.Equal(amperes, Area.LimitAt(volts.V, SafeArea.Dc, (-10).degC).Amperes, 9); // colder allows no more
    }

    [Fact]
    public void Heat_and_second_breakdown_derate_each_by_its_own_line()
    {
        var warm = Gentle.For(80.degC, SafeArea.Dc);
        Assert.Equal(0.56, warm.PowerDeratingFactor, 12);
        Assert.Equal(0.78, warm.SecondBreakdownLeft, 12);
        Assert.Equal(0.78 * 0.9, warm.LimitAt(100.V).Amperes, 9);
        Assert.Equal(SafeAreaBound.SecondBreakdown, warm.BoundAt(100.V));
        // Where second breakdown set the limit of a cool case, heat sets that of a warm one.
        Assert.Equal(0.56 * 150 / 55, warm.LimitAt(55.V).Amperes, 9);
        Assert.Equal(SafeAreaBound.Dissipation, warm.BoundAt(55.V));
        Assert.Equal(SafeAreaBound.SecondBreakdown, Gentle.For(25.degC, SafeArea.Dc).BoundAt(55.V));
        // One factor for both would be another number.
        Assert.Equal(0.56 * 0.9, Area.LimitAt(100.V, SafeArea.Dc, 80.degC).Amperes, 9);
    }

    [Fact]
    public void Limits_never_rise_with_voltage_with_temperature_or_with_the_length_of_the_pulse() =>
        Gen.Select(Gen.Double[1, 199], Gen.Double[1, 199], Gen.Double[-20, 149], Gen.Double[-20, 149], Gen.Double[-4, 0.5], Gen.Double[-4, 0.5]).Sample((v1, v2, t1, t2, p1, p2) =>
        {
            foreach (var area in new[] { Area, Gentle })
            {
                Assert.True(area.LimitAt(Math.Min(v1, v2).V, 100.ms, t1.degC) >= area.LimitAt(Math.Max(v1, v2).V, 100.ms, t1.degC));
                Assert.True(area.LimitAt(v1.V, SafeArea.Dc, Math.Min(t1, t2).degC) >= area.LimitAt(v1.V, SafeArea.Dc, Math.Max(t1, t2).degC));
                Duration one = Math.Pow(10, Math.Min(p1, p2)).s, two = Math.Pow(10, Math.Max(p1, p2)).s;
                Assert.True(area.LimitAt(v1.V, one, t1.degC) >= area.LimitAt(v1.V, two, t1.degC));
            }
        });

    [Fact]
    public void Between_two_pulse_lines_the_current_goes_with_the_logarithm_of_time()
    {
        var text = File.ReadAllText(Cards.Output);
        const string longer = "\"pulse\": \"100 ms\"";
        var line = text[text.IndexOf(longer, StringComparison.Ordinal)..text.LastIndexOf("      }", StringComparison.Ordinal)];
        var shorter = line.Replace("100 ms", "1 ms", StringComparison.Ordinal).Replace("16 V", "32 V", StringComparison.Ordinal).Replace("4.8 A", "9.6 A", StringComparison.Ordinal).Replace("1.6 A", "3.2 A", StringComparison.Ordinal);
        var area = new SafeArea(Transistor.Parse(text.Replace(line, line + "      }, {" + shorter, StringComparison.Ordinal)));
        Assert.Equal(4.8, area.LimitAt(50.V, 100.ms, 25.degC).Amperes, 9);
        Assert.Equal(9.6, area.LimitAt(50.V, 1.ms, 25.degC).Amperes, 9);
        Assert.Equal(4.8 * Math.Sqrt(2), area.LimitAt(50.V, 10.ms, 25.degC).Amperes, 9);
        Assert.Equal(1.6 * Math.Sqrt(2), area.LimitAt(100.V, 10.ms, 25.degC).Amperes, 9);
        Assert.Equal(9.6, area.LimitAt(50.V, 10.us, 25.degC).Amperes, 9); // no shorter line at hand
        Assert.Equal(3, area.LimitAt(50.V, 101.ms, 25.degC).Amperes, 9); // longer than the longest: dc
    }

    [Fact]
    public void A_sine_uses_the_line_of_half_its_period_and_below_20_Hz_the_dc_line()
    {
        Assert.Equal(0.5, SafeArea.PulseOf(1.kHz)!.Value.Milliseconds, 12);
        Assert.Equal(25, SafeArea.PulseOf(20.Hz)!.Value.Milliseconds, 12);
        Assert.Equal(SafeArea.Dc, SafeArea.PulseOf(19.9.Hz));
    }

    [Fact]
    public void A_pulse_on_average_heat_starts_from_a_warmer_junction()
    {
        var riding = Area.For(80.degC, 100.ms, 20.W);
        Assert.Equal(80 + (20 * 0.83), riding.StartTemperature.DegreesCelsius, 9);
        Assert.Equal((150 - 96.6) / 125, riding.PowerDeratingFactor, 9);
        Assert.Equal(80, Area.For(80.degC, SafeArea.Dc, 20.W).StartTemperature.DegreesCelsius, 9); // dc is that heat
        Assert.Contains("would start at 163 °C", Assert.Throws<RefusedValueException>(() => Area.For(80.degC, 100.ms, 100.W)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_as_hot_as_the_junction_may_be_is_refused() =>
        Assert.Contains("150 °C", Assert.Throws<RefusedValueException>(() => Area.For(150.degC, SafeArea.Dc)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_curve_of_a_chart_ends_at_the_greatest_voltage()
    {
        var line = Area.For(80.degC, 100.ms).Curve(2.V, 41);
        var (v, i) = (line.X, line.Y);
        Assert.Equal((41, 2.0, 200.0), (v.Count, v[0], v[^1]));
        // Two decades in forty steps: each is the twentieth root of ten.
        Assert.All(Enumerable.Range(1, 40), k => Assert.Equal(Math.Pow(10, 0.05), v[k] / v[k - 1], 1e-12));
        Assert.Equal(0.35 * 0.56, i[^1], 9);
        Assert.Contains("runs up to V_CEO", Assert.Throws<RefusedValueException>(() => Area.For(80.degC, 100.ms).Curve(200.V)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Past_its_last_corner_a_line_goes_on_as_it_fell()
    {
        // Corners at 100 V/0.9 A and 150 V/0.4 A, V_CEO 200 V: the straight line of the chart leads to 0.4 A·(200/150)^−2.
        var text = File.ReadAllText(Cards.Output);
        var read = new SafeArea(Transistor.Parse(text.Replace("{ \"V_CE\": \"200 V\", \"I_C\": \"0.2 A\" }", "{ \"V_CE\": \"150 V\", \"I_C\": \"0.4 A\" }", StringComparison.Ordinal)));
        var slope = Math.Log(0.4 / 0.9) / Math.Log(1.5);
        Assert.Equal(0.4 * Math.Pow(200 / 150.0, slope), read.LimitAt(200.V, SafeArea.Dc, 25.degC).Amperes, 1e-9);
        Assert.Equal(0.9 * Math.Pow(1.25, slope), read.LimitAt(125.V, SafeArea.Dc, 25.degC).Amperes, 1e-9);
        Assert.Equal(0, read.LimitAt(201.V, SafeArea.Dc, 25.degC).Amperes);
    }

    [Fact]
    public void A_driver_must_bear_the_rail_and_the_other_sides_peak()
    {
        Transistor Card(string name) => Transistor.Load(Path.Combine(Cards.Folder, $"{name}.json"));
        var stage = new OutputStage(Card("output-npn"), Card("output-pnp"), 3, 0.22.Ohm, EightOhm.Supply.RailLine.Constant(120.V)) { IdleCurrent = 100.mA, Drivers = new(Card("driver-npn"), Card("driver-pnp"), 47.Ohm) };
        SafeAreaUtilisation Of(double peak) => SafeAreaUtilisation.OfDriver(new SafeArea(Card("driver-npn")).For(60.degC, SafeArea.Dc), stage, 1, 8.Ohm, 0.deg, peak.V);
        // Its V_CEO is 160 V.
        Assert.True(Of(39).Use > 0);
        Assert.Contains("was 161 V", Assert.Throws<RefusedValueException>(() => Of(41)).Message, StringComparison.Ordinal);
    }
}
