using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Thermal;
using UnitsNet;

namespace EightOhm.Tests.Thermal;

/// <summary>Six devices on a sink, the usual mistakes, and sinks that cannot exist.</summary>
public class SharedSinkTests
{
    private readonly ThermalResistance theta_JC = 0.83.K_per_W;
    private readonly ThermalResistance theta_CS = 0.35.K_per_W;
    private readonly ThermalResistance theta_SA = 0.40.K_per_W;

    [Fact]
    public void Six_devices_share_the_sink_and_not_the_cases()
    {
        Assert.Equal(111.6, SharedSink.Junction(40.degC, 120.W, 6, 0.W, theta_JC, theta_CS, theta_SA).DegreesCelsius, 1e-9);
        Assert.Equal(0.512, SharedSink.AllowedSink(125.degC, 40.degC, 120.W, 6, 0.W, theta_JC, theta_CS).Si, 0.0005);
    }

    [Fact]
    public void All_heat_through_one_device_or_one_devices_heat_in_the_sink_gives_other_numbers()
    {
        Assert.Equal(229.6, HeatPath.Junction(40.degC, 120.W, [theta_JC, theta_CS, theta_SA]).DegreesCelsius, 1e-9);
        Assert.Equal(71.6, HeatPath.Junction(40.degC, 20.W, [theta_JC, theta_CS, theta_SA]).DegreesCelsius, 1e-9);
    }

    [Fact]
    public void Other_heat_warms_the_sink_alone() =>
        Assert.Equal(20 * 0.40, (SharedSink.Junction(40.degC, 120.W, 6, 20.W, theta_JC, theta_CS, theta_SA) - SharedSink.Junction(40.degC, 120.W, 6, 0.W, theta_JC, theta_CS, theta_SA)).Kelvins, 1e-9);

    [Fact]
    public void One_device_is_the_plain_chain() =>
        Assert.Equal(HeatPath.Junction(40.degC, 20.W, [theta_JC, theta_CS, theta_SA]).Kelvins, SharedSink.Junction(40.degC, 20.W, 1, 0.W, theta_JC, theta_CS, theta_SA).Kelvins, 1e-9);

    [Fact]
    public void A_sink_that_cannot_exist_is_refused_with_what_to_try()
    {
        var hot = Assert.Throws<RefusedValueException>(() => SharedSink.AllowedSink(125.degC, 130.degC, 120.W, 6, 0.W, theta_JC, theta_CS));
        Assert.Contains("T_a must be from", hot.Message, StringComparison.Ordinal);
        Assert.Contains("cooler than the junction limit", hot.Message, StringComparison.Ordinal);
        var few = Assert.Throws<RefusedValueException>(() => SharedSink.AllowedSink(125.degC, 40.degC, 120.W, 1, 0.W, theta_JC, theta_CS));
        Assert.Contains("was -56.6 K", few.Message.Replace('−', '-'), StringComparison.Ordinal);
        Assert.Contains("spread the heat over more devices", few.Message, StringComparison.Ordinal);
        Assert.Throws<RefusedValueException>(() => SharedSink.Junction(40.degC, 120.W, 0, 0.W, theta_JC, theta_CS, theta_SA));
    }

    [Fact]
    public void A_cold_case_allows_the_rating_and_no_more_and_a_case_too_hot_is_refused()
    {
        Assert.Equal(150.W, Derating.AllowedPower(150.W, 150.degC, 0.degC, theta_JC));
        Assert.Equal(0.W, Derating.AllowedPower(150.W, 150.degC, 150.degC, theta_JC));
        Assert.Contains("cool the case", Assert.Throws<RefusedValueException>(() => Derating.AllowedPower(150.W, 150.degC, 151.degC, theta_JC)).Message, StringComparison.Ordinal);
    }
}
