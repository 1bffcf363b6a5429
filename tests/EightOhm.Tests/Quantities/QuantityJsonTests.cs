using System.Text.Json;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class QuantityJsonTests
{
    [Fact]
    public void Every_kind_comes_back_bit_for_bit()
    {
        var random = new Random(7);
        foreach (var kind in QuantityKinds.All.Where(k => k.Style != FormatStyle.Number))
            for (var i = 0; i < 50; i++)
            {
                var value = kind.FromSi((random.NextDouble() - (kind.NeverNegative ? 0 : 0.5)) * Math.Pow(10, random.Next(-9, 9)));
                var text = JsonSerializer.Serialize(value, kind.Type, QuantityJsonConverter.Options);
                Assert.Equal(value, JsonSerializer.Deserialize(text, kind.Type, QuantityJsonConverter.Options));
            }
    }

    [Fact]
    public void A_design_of_ones_own_reads_as_it_is_written()
    {
        var design = new Design(28.284271247461902.V, 8.Ohm, 23.6.ratio, 10.ppm, 25.degC, 4.dBu, 4.nV_rtHz, null);
        var text = JsonSerializer.Serialize(design, QuantityJsonConverter.Options).ReplaceLineEndings("\n");
        Assert.Equal("""
            {
              "V_rms": "28.284271247461902 V",
              "R_L": "8 Ω",
              "A": "23.6 V/V",
              "D": 1E-05,
              "T_a": "298.15 K",
              "Input": "4 dBu",
              "e_n": "4E-09 V/√Hz",
              "C": null
            }
            """.ReplaceLineEndings("\n"), text);
        Assert.Equal(design, JsonSerializer.Deserialize<Design>(text, QuantityJsonConverter.Options));
    }

    // Without a converter of their own they came back as 0, silently.
    [Fact]
    public void Types_of_ours_need_no_options()
    {
        Assert.Equal(3.3.nV_rtHz, JsonSerializer.Deserialize<VoltageNoiseDensity>(JsonSerializer.Serialize(3.3.nV_rtHz)));
        Assert.Equal(23.6.ratio, JsonSerializer.Deserialize<Gain>(JsonSerializer.Serialize(23.6.ratio)));
        Assert.Equal(4.dBu, JsonSerializer.Deserialize<DbuLevel>(JsonSerializer.Serialize(4.dBu)));
    }

    [Theory]
    [InlineData("\"8 Ω\"", "\"8 Ω\" is not a value of ElectricPotential; it is a text such as \"4.7 V\" in JSON. It reads as ElectricResistance.")]
    [InlineData("\"8\"", "\"8\" is not a value of ElectricPotential; it is a text such as \"4.7 V\" in JSON.")]
    [InlineData("8.5", "A value of ElectricPotential is a text such as \"4.7 V\" in JSON (was 8.5).")]
    [InlineData("{}", "A value of ElectricPotential is a text such as \"4.7 V\" in JSON (was a JSON StartObject).")]
    [InlineData("null", "A value of ElectricPotential is a text such as \"4.7 V\" in JSON (was a JSON Null).")]
    [InlineData("\"1e999 V\"", "\"1e999 V\" is not a value of ElectricPotential; it is a text such as \"4.7 V\" in JSON.")]
    public void JSON_of_another_kind_is_refused_in_words(string json, string says) =>
        Assert.StartsWith(says, Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<ElectricPotential>(json, QuantityJsonConverter.Options)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_gain_is_no_fraction_and_a_fraction_no_gain()
    {
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Ratio>("\"23.6 V/V\"", QuantityJsonConverter.Options));
        Assert.Contains("27.4 dB", Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Gain>("0.5")).Message, StringComparison.Ordinal);
        Assert.Equal(0.1.percent, JsonSerializer.Deserialize<Ratio>("\"0.1 %\"", QuantityJsonConverter.Options));
    }

    private sealed record Design(ElectricPotential V_rms, ElectricResistance R_L, Gain A, Ratio D, Temperature T_a, DbuLevel Input, VoltageNoiseDensity e_n, ElectricCapacitance? C);
}
