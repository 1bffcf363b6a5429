using System.Globalization;
using System.Text;

namespace EightOhm.Tests.Fuzz;

/// <summary>Makes wrong texts out of right ones: what is cut, doubled, moved, or put in from elsewhere.</summary>
internal sealed class Mutation(IReadOnlyList<string> samples, int seed)
{
    private static readonly string[] Pieces =
    [
        "", " ", "\0", "\u001b[2J", "\u202e", "\ud800", "µ", "μ", "Ω", "\u2126", "°C", "−", "٤", "1e400", "-1e400", "1e-400", "NaN", "∞", "0", "-0", "99999999999999999999", ".", ",", "e", "+",
        "{", "}", "[", "]", "\"", ":", "null", "true", "1", "\"of\":[", "\"do\":\"+\"", "{\"number\":1}", "\\u0000", "\\ud800", "k", "M", "m", "/", "√", "Hz", "V", "A", "W", "K", "\n", "\r\n", "$", "<", ">", "&", "`", "|", "#", "(", ")", "*", "!",
    ];

    private readonly Random _random = new(seed);

    /// <summary>How many cases a test tries; a script asks for millions.</summary>
    public static int Cases { get; } = int.TryParse(Environment.GetEnvironmentVariable("EIGHTOHM_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 20_000;

    /// <summary>A text; now and then it is still right.</summary>
    public string Next()
    {
        var text = new StringBuilder(samples[_random.Next(samples.Count)]);
        for (var turns = _random.Next(1, 5); turns > 0; turns--)
        {
            var at = _random.Next(text.Length + 1);
            var length = Math.Min(_random.Next(1, 20), text.Length - at);
            switch (_random.Next(5))
            {
                case 0:
                    text.Remove(at, length);
                    break;
                case 1:
                    text.Insert(at, text.ToString(at, length));
                    break;
                case 2:
                    var piece = Pieces[_random.Next(Pieces.Length)];
                    text.Insert(at, _random.Next(40) == 0 ? string.Concat(Enumerable.Repeat(piece, 300)) : piece);
                    break;
                case 3 when text.Length > 0 && at < text.Length:
                    text[at] = (char)(text[at] ^ (1 << _random.Next(7)));
                    break;
                default:
                    var other = samples[_random.Next(samples.Count)];
                    var from = _random.Next(other.Length);
                    text.Insert(at, other.AsSpan(from, Math.Min(_random.Next(1, 40), other.Length - from)));
                    break;
            }
        }

        return text.ToString();
    }
}
