using System.Globalization;
using System.Reflection;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class LiteralTests
{
    // Each literal: its type and the power of ten of its unit.
    private static readonly Dictionary<string, (Type Type, int Power)> Decimal = new()
    {
        ["kV"] = (typeof(ElectricPotential), 3),
        ["V"] = (typeof(ElectricPotential), 0),
        ["mV"] = (typeof(ElectricPotential), -3),
        ["uV"] = (typeof(ElectricPotential), -6),
        ["nV"] = (typeof(ElectricPotential), -9),
        ["A"] = (typeof(ElectricCurrent), 0),
        ["mA"] = (typeof(ElectricCurrent), -3),
        ["uA"] = (typeof(ElectricCurrent), -6),
        ["nA"] = (typeof(ElectricCurrent), -9),
        ["pA"] = (typeof(ElectricCurrent), -12),
        ["fA"] = (typeof(ElectricCurrent), -15),
        ["mOhm"] = (typeof(ElectricResistance), -3),
        ["Ohm"] = (typeof(ElectricResistance), 0),
        ["Ω"] = (typeof(ElectricResistance), 0),
        ["kOhm"] = (typeof(ElectricResistance), 3),
        ["kΩ"] = (typeof(ElectricResistance), 3),
        ["MOhm"] = (typeof(ElectricResistance), 6),
        ["W"] = (typeof(Power), 0),
        ["mW"] = (typeof(Power), -3),
        ["kW"] = (typeof(Power), 3),
        ["mF"] = (typeof(ElectricCapacitance), -3),
        ["uF"] = (typeof(ElectricCapacitance), -6),
        ["nF"] = (typeof(ElectricCapacitance), -9),
        ["pF"] = (typeof(ElectricCapacitance), -12),
        ["H"] = (typeof(ElectricInductance), 0),
        ["mH"] = (typeof(ElectricInductance), -3),
        ["uH"] = (typeof(ElectricInductance), -6),
        ["nH"] = (typeof(ElectricInductance), -9),
        ["Hz"] = (typeof(Frequency), 0),
        ["kHz"] = (typeof(Frequency), 3),
        ["MHz"] = (typeof(Frequency), 6),
        ["s"] = (typeof(Duration), 0),
        ["ms"] = (typeof(Duration), -3),
        ["us"] = (typeof(Duration), -6),
        ["ns"] = (typeof(Duration), -9),
        ["S"] = (typeof(ElectricConductance), 0),
        ["mS"] = (typeof(ElectricConductance), -3),
        ["J"] = (typeof(Energy), 0),
        ["m"] = (typeof(Length), 0),
        ["mm"] = (typeof(Length), -3),
        ["K"] = (typeof(TemperatureDelta), 0),
        ["Pa"] = (typeof(Pressure), 0),
        ["mPa"] = (typeof(Pressure), -3),
        ["uPa"] = (typeof(Pressure), -6),
        ["dBu"] = (typeof(DbuLevel), 0),
        ["dBV"] = (typeof(DbvLevel), 0),
        ["dBW"] = (typeof(DbwLevel), 0),
        ["dBm"] = (typeof(DbmLevel), 0),
        ["dB_SPL"] = (typeof(SoundPressureLevel), 0),
        ["K_per_W"] = (typeof(ThermalResistance), 0),
        ["mK_per_W"] = (typeof(ThermalResistance), -3),
        ["V_per_us"] = (typeof(ElectricPotentialChangeRate), 6),
        ["nV_rtHz"] = (typeof(VoltageNoiseDensity), -9),
        ["uV_rtHz"] = (typeof(VoltageNoiseDensity), -6),
        ["pA_rtHz"] = (typeof(CurrentNoiseDensity), -12),
        ["VA"] = (typeof(ElectricApparentPower), 0),
        ["uW"] = (typeof(Power), -6),
        ["MΩ"] = (typeof(ElectricResistance), 6),
        ["mΩ"] = (typeof(ElectricResistance), -3),
        ["pH"] = (typeof(ElectricInductance), -12),
        ["uS"] = (typeof(ElectricConductance), -6),
        ["mJ"] = (typeof(Energy), -3),
        ["J_per_K"] = (typeof(HeatCapacity), 0),
        ["uC"] = (typeof(ElectricCharge), -6),
        ["cm"] = (typeof(Length), -2),
        ["um"] = (typeof(Length), -6),
        ["cm2"] = (typeof(Area), -4),
        ["mm2"] = (typeof(Area), -6),
        ["deg"] = (typeof(Angle), 0),
        ["mV_per_K"] = (typeof(VoltageDrift), -3),
        ["uV_per_K"] = (typeof(VoltageDrift), -6),
        ["pV_rtHz"] = (typeof(VoltageNoiseDensity), -12),
        ["fA_rtHz"] = (typeof(CurrentNoiseDensity), -15),
        ["GHz"] = (typeof(Frequency), 9),
        ["ratio"] = (typeof(Gain), 0),
        ["percent"] = (typeof(Ratio), -2),
        ["ppm"] = (typeof(Ratio), -6),
    };

    public static TheoryData<string> Names => [.. Decimal.Keys];

    internal static IEnumerable<MethodInfo> Getters(Type receiver) => typeof(Literals).GetMethods(BindingFlags.Public | BindingFlags.Static)
        .Where(m => m.Name.StartsWith("get_", StringComparison.Ordinal) && m.GetParameters()[0].ParameterType == receiver);

    [Fact]
    public void Whole_numbers_and_fractions_have_the_same_literals_and_all_are_tested()
    {
        string[] expected = [.. Decimal.Keys.Concat(["degC", "dB", "h"]).Order(StringComparer.Ordinal)];
        Assert.Equal(expected, Getters(typeof(double)).Select(m => m.Name[4..]).Order(StringComparer.Ordinal));
        Assert.Equal(expected, Getters(typeof(int)).Select(m => m.Name[4..]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void An_hour_is_3600_seconds()
    {
        Assert.Equal(7200, 2.h.Seconds, 1e-9);
        Assert.Equal(5400, 1.5.h.Seconds, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_literal_is_its_number_times_a_power_of_ten_in_SI_units(string name)
    {
        var (type, power) = Decimal[name];
        var expected = double.Parse(string.Create(CultureInfo.InvariantCulture, $"3e{power}"), CultureInfo.InvariantCulture);
        foreach (var value in new[] { Value(name, 3), Value(name, 3.0) })
        {
            Assert.IsType(type, value);
            Assert.Equal(expected, QuantityKinds.Of(type).ToSi(value));
        }

        var fraction = QuantityKinds.Of(type).ToSi(Value(name, 4.7));
        Assert.InRange(fraction / double.Parse(string.Create(CultureInfo.InvariantCulture, $"4.7e{power}"), CultureInfo.InvariantCulture), 1 - 3e-16, 1 + 3e-16);
    }

    [Fact]
    public void Degrees_are_kelvin_above_273_15_and_decibels_are_of_voltage()
    {
        Assert.Equal(298.15, 25.degC.Kelvins);
        Assert.Equal(298.15, 25.0.degC.Kelvins);
        Assert.Equal(10, 20.dB.Ratio, 14);
        Assert.Equal(0.1, (-20.0).dB.Ratio, 15);
    }

    [Fact]
    public void A_kilovolt_and_a_thousand_volts_are_the_same_value()
    {
        Assert.True(1.kV.Equals((object)1000.V));
        Assert.Equal(1.kV.GetHashCode(), 1000.V.GetHashCode());
        Assert.True(4.7.kOhm.Equals((object)4700.Ohm));
        Assert.True(4.7.kΩ.Equals((object)4700.Ω));
    }

    private static object Value(string name, object number) =>
        Getters(number.GetType()).Single(m => m.Name == "get_" + name).Invoke(null, [number])!;
}
