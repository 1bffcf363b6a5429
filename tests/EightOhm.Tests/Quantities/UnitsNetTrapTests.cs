using System.Globalization;
using System.Reflection;
using EightOhm.Quantities;
using EightOhm.Tests.Docs;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class UnitsNetTrapTests
{
    [Theory]
    [InlineData(typeof(Level))]
    [InlineData(typeof(AmplitudeRatio))]
    [InlineData(typeof(PowerRatio))]
    public void Every_misleading_operator_of_a_logarithmic_quantity_is_banned(Type type)
    {
        var banned = File.ReadLines(Path.Combine(WrittenTable.Root(), "BannedSymbols.txt")).Select(l => l.Split(';')[0]).ToHashSet(StringComparer.Ordinal);
        var operators = type.GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.Name is "op_Addition" or "op_Subtraction" or "op_Multiply" or "op_Division").ToList();
        Assert.Equal(6, operators.Count);
        foreach (var op in operators)
            Assert.Contains($"M:{type.FullName}.{op.Name}({string.Join(",", op.GetParameters().Select(p => p.ParameterType.FullName))})", banned);
    }

    [Fact]
    public void The_ban_has_its_reason_levels_add_in_the_linear_domain()
    {
        var sum = (Level)typeof(Level).GetMethod("op_Addition")!.Invoke(null, [Level.FromDecibels(20), Level.FromDecibels(6)])!;
        Assert.Equal(20.17, sum.Decibels, 2);
        Assert.Equal(26, (20.dB * 6.dB).Decibels, 10);
    }

    [Fact]
    public void A_power_too_small_for_a_decimal_is_lost_so_noise_goes_through_squares()
    {
        Assert.Equal(0, (double)Power.FromWatts(1e-29).Watts);
        Assert.Equal(1e-29, new SquaredVoltage(8e-29).Si / 8, 1e-40);
    }

    [Fact]
    public void UnitsNet_holds_a_kilovolt_and_a_thousand_volts_apart() =>
        Assert.False(ElectricPotential.FromKilovolts(1).Equals((object)ElectricPotential.FromVolts(1000)));

    [Fact]
    public void A_temperature_and_a_rise_are_shown_in_degrees_though_UnitsNet_gives_kelvin()
    {
        var sum = 25.degC + 10.K;
        Assert.Equal(UnitsNet.Units.TemperatureUnit.Kelvin, sum.Unit);
        Assert.Equal("35 °C", QuantityFormat.Short(sum));
    }

    [Theory]
    [InlineData("1 uF")]
    [InlineData("1 µF")]
    [InlineData("1 μF")]
    public void A_microfarad_is_read_however_its_prefix_is_written(string text) =>
        Assert.Equal(1e-6, QuantityText.Parse<ElectricCapacitance>(text).Farads);

    [Fact]
    public void UnitsNet_does_not_read_what_we_read()
    {
        Assert.False(ElectricCapacitance.TryParse("1 uF", CultureInfo.InvariantCulture, out _));
        Assert.False(ElectricResistance.TryParse("1 ohm", CultureInfo.InvariantCulture, out _));
        Assert.False(ElectricResistance.TryParse("1 \u2126", CultureInfo.InvariantCulture, out _));
    }

    [Fact]
    public void The_electrical_capacitance_is_the_one_in_the_table()
    {
        Assert.NotNull(QuantityKinds.Find(typeof(ElectricCapacitance)));
        Assert.Null(QuantityKinds.Find(typeof(ElectricPotential).Assembly.GetType("UnitsNet.Capacitance")));
    }

    [Fact]
    public void No_type_of_ours_has_the_name_of_one_of_UnitsNets()
    {
        var theirs = typeof(ElectricPotential).Assembly.GetExportedTypes().Select(t => t.Name).ToHashSet(StringComparer.Ordinal);
        // In the trade a thermal resistance is in K/W; theirs is one per area, so an alias comes with the usings (Directory.Build.props, the cells' script).
        string[] aliased = [nameof(ThermalResistance), nameof(ThermalResistanceUnit)];
        Assert.Equal(aliased, typeof(Gain).Assembly.GetExportedTypes().Where(t => !t.IsNested && theirs.Contains(t.Name)).Select(t => t.Name).Order(StringComparer.Ordinal));
    }
}
