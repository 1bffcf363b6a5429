using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using UnitsNet;

namespace EightOhm.Quantities;

/// <summary>Quantities in JSON: the exact number with its unit, <c>"28.284271247461902 V"</c>; a fraction as a plain number, a gain as <c>"23.6 V/V"</c>.</summary>
/// <remarks>What comes back is the same number in the SI unit, bit for bit. A text of another kind of quantity is refused in words. Our own types carry the
/// converter; UnitsNet's need it in the options: <c>JsonSerializer.Serialize(design, QuantityJsonConverter.Options)</c>.</remarks>
public sealed class QuantityJsonConverter : JsonConverterFactory
{
    private static readonly ConcurrentDictionary<Type, JsonConverter> Made = new();

    /// <summary>Options that know every kind of quantity; indented.</summary>
    public static JsonSerializerOptions Options { get; } = Ready();

    /// <inheritdoc/>
    public override bool CanConvert(Type typeToConvert) => QuantityKinds.Find(typeToConvert) is { Style: not FormatStyle.Number };

    /// <inheritdoc/>
    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        Made.GetOrAdd(typeToConvert, t => (JsonConverter)Activator.CreateInstance(typeof(Of<>).MakeGenericType(t))!);

    private static JsonSerializerOptions Ready()
    {
        var options = new JsonSerializerOptions { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        options.Converters.Add(new QuantityJsonConverter());
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }

    private sealed class Of<T> : JsonConverter<T>
        where T : struct
    {
        private static readonly QuantityKind Kind = QuantityKinds.Of(typeof(T));

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
        {
            var exact = QuantityText.Exact(value);
            if (Kind.Style == FormatStyle.Fraction)
                writer.WriteRawValue(exact);
            else
                writer.WriteStringValue(Kind.Style == FormatStyle.Gain ? $"{exact} V/V" : exact);
        }

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType == JsonTokenType.Number && Kind.Style == FormatStyle.Fraction)
                return (T)Kind.FromSi(reader.GetDouble());
            if (reader.TokenType != JsonTokenType.String)
                throw new JsonException($"A value of {Kind.Name} is {Wanted()} in JSON (was {Shown(ref reader)}).");
            var text = reader.GetString()!;
            // Without its unit a text may be of any kind.
            return char.IsAsciiDigit(text.LastOrDefault()) || !QuantityText.TryParse<T>(text, out var value)
                ? throw new JsonException($"\"{text}\" is not a value of {Kind.Name}; it is {Wanted()} in JSON.{Other(text)}")
                : value;
        }

        private static string Wanted() => Kind.Style switch
        {
            FormatStyle.Fraction => "a plain number, 0.001, or a text such as \"0.1 %\"",
            FormatStyle.Gain => "a text such as \"23.6 V/V\" or \"27.4 dB\"",
            _ => $"a text such as \"{QuantityText.Exact(Kind.FromSi(Kind.Style == FormatStyle.Celsius ? 25 : 4.7))}\"",
        };

        private static string Shown(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.Number
            ? reader.GetDouble().ToString("R", CultureInfo.InvariantCulture)
            : $"a JSON {reader.TokenType}";

        private static string Other(string text)
        {
            try
            {
                return QuantityText.ParseAny(text) is var value && value.GetType() != typeof(T) ? $" It reads as {QuantityKinds.Of(value.GetType()).Name}." : "";
            }
            catch (FormatException)
            {
                return "";
            }
        }
    }
}
