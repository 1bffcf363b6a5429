using System.Globalization;
using CsCheck;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Quantities;

public class QuantityTextTests
{
    [Theory]
    [InlineData("4.7 kΩ", 4700)]
    [InlineData("4.7kΩ", 4700)]
    [InlineData("4.7 kOhm", 4700)]
    [InlineData("4.7 kohm", 4700)]
    [InlineData("4.7 k\u2126", 4700)]
    [InlineData("47k", 47000)]
    [InlineData("4.7k", 4700)]
    [InlineData("4k7", 4700)]
    [InlineData("4K7", 4700)]
    [InlineData("4R7", 4.7)]
    [InlineData("0R22", 0.22)]
    [InlineData("47R", 47)]
    [InlineData("4r7", 4.7)]
    [InlineData("R47", 0.47)]
    [InlineData("r1", 0.1)]
    [InlineData("10 Ohms", 10)]
    [InlineData("10 kOhms", 10_000)]
    [InlineData("47 \u03bcΩ", 47e-6)]
    [InlineData("1M", 1e6)]
    [InlineData("10 mΩ", 0.01)]
    [InlineData("1 ohm", 1)]
    [InlineData("8 ohms", 8)]
    [InlineData("  8\u00a0Ω ", 8)]
    [InlineData("8e3 Ω", 8000)]
    [InlineData("-8 Ω", -8)]
    [InlineData("−8 Ω", -8)]
    [InlineData("+8 Ω", 8)]
    [InlineData(".22 Ω", 0.22)]
    public void A_resistance_is_read_as_people_type_it(string text, double ohms)
    {
        foreach (var culture in new[] { "", "de-DE", "ru-RU" })
            EngineeringTests.Under(CultureInfo.GetCultureInfo(culture), () => Assert.Equal(ohms, QuantityText.Parse<ElectricResistance>(text).Ohms));
    }

    public static TheoryData<string, object> Others => new()
    {
        { "100 W", 100.W }, { "1 uF", 1.uF }, { "3.3 nV/√Hz", 3.3.nV_rtHz }, { "3.3 nV/rtHz", 3.3.nV_rtHz }, { "3.3 nV/sqrt(Hz)", 3.3.nV_rtHz },
        { "40 V/µs", 40.V_per_us }, { "40 V/us", 40.V_per_us }, { "40 V/\u03bcs", 40.V_per_us }, { "40 mV/µs", 0.04.V_per_us }, { "40 mV/us", 0.04.V_per_us }, { "40 mV/\u03bcs", 0.04.V_per_us }, { "7 \u03bcF", 7.uF }, { "25 °C", 25.degC }, { "25 degC", 25.degC }, { "0.5 K/W", 0.5.K_per_W }, { "0.5 °C/W", 0.5.K_per_W },
        { "27 dB", 27.dB }, { "10 ppm", 10.ppm }, { "0.1 %", 0.1.percent }, { "20 kHz", 20.kHz }, { "1.2 V", 1.2.V }, { "10 K", 10.K }, { "4 mS", 4.mS }, { "5 mm", 5.mm }, { "5 ms", 5.ms },
    };

    [Theory]
    [MemberData(nameof(Others))]
    public void A_unit_says_its_own_kind(string text, object value)
    {
        Assert.Equal(value, QuantityText.ParseAny(text));
        Assert.Equal(value, QuantityText.Parse(text, QuantityKinds.Of(value.GetType())));
    }

    [Fact]
    public void Where_the_kind_is_known_kelvin_may_be_a_temperature_and_a_gain_may_lack_its_unit()
    {
        Assert.Equal(298.15, QuantityText.Parse<Temperature>("298.15 K").Kelvins, 10);
        Assert.Equal(23.6, QuantityText.Parse<Gain>("23.6").Ratio);
        Assert.Equal(300, QuantityText.Parse<int>("300"));
        Assert.Equal(0.5, QuantityText.Parse<double>("0.5"));
        Assert.Equal(1e-7, QuantityText.Parse<ElectricCapacitance>("100n").Farads);
        Assert.Equal(4.7e-6, QuantityText.Parse<ElectricCapacitance>("4u7").Farads);
    }

    [Theory]
    [InlineData(typeof(ElectricResistance), "", "ElectricResistance")]
    [InlineData(typeof(ElectricResistance), "8", "ElectricResistance", "4.7 mΩ or 100 Ω")]
    [InlineData(typeof(ElectricResistance), "8 V", "\"8 V\" is not a value of ElectricResistance")]
    [InlineData(typeof(ElectricResistance), "4,7 kΩ", "written with a point")]
    [InlineData(typeof(ElectricResistance), "8 xΩ", "ElectricResistance")]
    [InlineData(typeof(ElectricResistance), "NaN Ω", "ElectricResistance")]
    [InlineData(typeof(ElectricResistance), "1e999 Ω", "ElectricResistance")]
    [InlineData(typeof(ElectricCapacitance), "4R7", "ElectricCapacitance")]
    [InlineData(typeof(Power), "1e40 W", "Power")]
    [InlineData(typeof(Gain), "500 dB", "27.4 dB or 23.6")]
    [InlineData(typeof(Gain), "10 V", "Gain")]
    [InlineData(typeof(int), "3.5", "300")]
    [InlineData(typeof(int), "1e12", "300")]
    [InlineData(typeof(double), "1e999", "300")]
    [InlineData(typeof(Ratio), "10 mppm", "10 ppm or 0.1 %")]
    [InlineData(typeof(Temperature), "25 k°C", "25 °C or 298.15 K")]
    [InlineData(typeof(SquaredVoltage), "5 mV²", "0.5 V²")]
    [InlineData(typeof(ElectricPotentialChangeRate), "40", "40 V/µs")]
    public void What_is_no_such_value_is_refused_with_an_example(Type type, string text, params string[] parts)
    {
        var refused = Assert.Throws<FormatException>(() => QuantityText.Parse(text, QuantityKinds.Of(type)));
        Assert.All(parts, part => Assert.Contains(part, refused.Message, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("100")]
    [InlineData("100 parsec")]
    [InlineData("watt")]
    [InlineData("")]
    public void A_text_of_no_known_unit_is_refused(string text) =>
        Assert.Contains("100 W, 4.7 kΩ", Assert.Throws<FormatException>(() => QuantityText.ParseAny(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void Trying_never_throws()
    {
        Assert.False(QuantityText.TryParse<Gain>("500 dB", out _));
        Assert.False(QuantityText.TryParse<Power>("1e40 W", out _));
        Assert.False(QuantityText.TryParse<int>("3.5", out _));
        Assert.False(QuantityText.TryParse<Power>(null, out _));
        Assert.True(QuantityText.TryParse<Power>("3.5 W", out var power));
        Assert.Equal(3.5.W, power);
    }

    [Fact]
    public void A_face_is_read_back_within_its_printed_digits() =>
        Gen.Select(Any([.. QuantityKinds.All.Where(k => k.Type != typeof(int))]), Gen.Double[-24, 6], Gen.Bool)
            .Sample((kind, exponent, negative) =>
            {
                // A power is a decimal: below 1e-20 W it has no four digits.
                exponent = kind.Type == typeof(Power) ? Math.Max(exponent, -20) : exponent;
                var si = (negative ? -1 : 1) * Math.Pow(10, exponent);
                if (kind.Style == FormatStyle.Celsius)
                    si = si % 100;
                var face = QuantityFormat.Short(kind.FromSi(si));
                var read = kind.ToSi(QuantityText.Parse(face, kind));
                var allowed = kind.Style == FormatStyle.Celsius ? Math.Max(0.0501, Math.Abs(si) * 5e-4) : Math.Abs(kind.ToSi(kind.FromSi(si))) * 5.0001e-4;
                Assert.True(Math.Abs(read - kind.ToSi(kind.FromSi(si))) <= allowed, $"{kind.Name} {si:R} reads {face} and comes back as {read:R}");
            });

    [Fact]
    public void Every_spelling_and_prefix_of_a_unit_is_read()
    {
        var prefixes = new (string Text, double Factor)[] { ("", 1), ("p", 1e-12), ("n", 1e-9), ("u", 1e-6), ("µ", 1e-6), ("m", 1e-3), ("k", 1e3), ("M", 1e6), ("G", 1e9) };
        var units = QuantityKinds.All.Where(k => k.Symbol.Length > 0)
            .SelectMany(k => k.Spellings.Append((k.Symbol, 1.0)).SelectMany(s => (k.Most > k.Least ? prefixes : prefixes[..1]).Select(p => (Kind: k, Unit: p.Text + s.Item1, Factor: p.Factor * s.Item2))))
            .ToArray();
        Gen.Select(Any(units), Gen.Int[1, 9999], Any("", " ", "\u00a0"))
            .Sample((unit, number, space) =>
            {
                var text = string.Create(CultureInfo.InvariantCulture, $"{number}{space}{unit.Unit}");
                Assert.Equal(number * unit.Factor, unit.Kind.ToSi(QuantityText.Parse(text, unit.Kind)), number * unit.Factor * 1e-12 + 1e-27);
            });
    }

    private static Gen<T> Any<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
