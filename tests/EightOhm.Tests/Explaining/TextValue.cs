using System.Globalization;
using EightOhm.Explaining;

namespace EightOhm.Tests.Explaining;

/// <summary>What a formula is worth, once by its tree and once by reading its line of text as a reader would.</summary>
/// <remarks>Root, power and functions are stand-ins that any change of their arguments changes, so that wrong brackets show.</remarks>
internal sealed class TextValue(string text)
{
    private static readonly double[] Parts = [1.5, 2.25, -0.5];
    private readonly Dictionary<string, double> _items = [];
    private int _at;

    public static double Of(MathNode node) => Of(node, [], null);

    /// <summary>The worth when each step is off by some 1e-13: what moves far under this says nothing of brackets.</summary>
    public static double WithNoise(MathNode node, Random noise) => Of(node, [], noise);

    public static double Of(string text)
    {
        var reader = new TextValue(text);
        var value = reader.Or();
        Assert.True(reader._at == text.Length, $"'{text}' ends early at '{text[reader._at..]}'");
        return value;
    }

    private static double Of(MathNode node, Dictionary<string, double> items, Random? noise)
    {
        double Value(MathNode n) => Of(n, items, noise) is var value && noise is null ? value : value * (1 + (1e-13 * (noise.NextDouble() - 0.5)));
        switch (node)
        {
            case NumberNode n: return Number(n.Text);
            case NameNode n: return Name(MathText.Name(n.Text), items);
            case InfixNode n: return Infix(n.Sign, Value(n.Left), Value(n.Right));
            case NegatedNode n: return -Value(n.Inner);
            case NotNode n: return Value(n.Inner) == 0 ? 1 : 0;
            case FractionNode n: return Value(n.Over) / Value(n.Under);
            case RootNode n: return Root(Value(n.Inner));
            case PowerNode n: return Power(Value(n.Base), Value(n.Exponent));
            case CallNode { Owner: NameNode o } n: return Call($"{MathText.Name(o.Text)}.{MathText.Name(n.Name)}", [.. n.Arguments.Select(Value)]);
            case CallNode n: return Call(MathText.Name(n.Name), [.. n.Arguments.Select(Value)]);
            case SumNode n:
                return Parts.Sum(p => Of(n.Term, new(items) { ["x"] = p }, noise));
            case CasesNode n:
                return Value(n.Cases.First(c => c.When is null || Value(c.When) != 0).Value);
            default: throw new ArgumentException(node.GetType().Name);
        }
    }

    private static double Infix(string sign, double a, double b) => sign switch
    {
        "+" => a + b,
        "−" => a - b,
        "·" => a * b,
        "∥" => a * b / (a + b),
        "mod" => Rest(a, b),
        "=" => a == b ? 1 : 0,
        "≠" => a != b ? 1 : 0,
        "<" => a < b ? 1 : 0,
        "≤" => a <= b ? 1 : 0,
        ">" => a > b ? 1 : 0,
        "≥" => a >= b ? 1 : 0,
        "and" => a != 0 && b != 0 ? 1 : 0,
        _ => a != 0 || b != 0 ? 1 : 0,
    };

    // A stand-in without jumps.
    private static double Rest(double a, double b) => (0.9 * a) + Math.Sin(b) + 0.4;

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    private static double Name(string name, Dictionary<string, double> items) =>
        items.TryGetValue(name, out var value) ? value : 1 + (name.Sum(c => (int)c) % 97 / 100.0);

    private static double Root(double x) => Math.Sin(x) + (0.3 * x) + 2;

    private static double Power(double x, double y) => (1.3 * x) + Math.Cos(y) + 0.7;

    private static double Call(string name, double[] x) => name.Length + x.Select((v, i) => (i + 1.1) * v).Sum();

    private double Or() => Chain(And, "or");

    private double And() => Chain(Compared, "and");

    private double Compared()
    {
        if (Take("not "))
            return Single() == 0 ? 1 : 0;
        var value = Sum();
        if (Take(" mod "))
            return Rest(value, Sum());
        foreach (var sign in new[] { "<", "≤", ">", "≥", "=", "≠" })
            if (Take($" {sign} "))
                return Infix(sign, value, Sum());
        return value;
    }

    private double Sum() => Chain(() => Take("−") ? -Parallel() : Parallel(), "+", "−");

    private double Parallel() => Chain(Product, "∥");

    private double Product()
    {
        if (Take("Σ[x in parts] "))
        {
            var start = _at;
            var sum = 0.0;
            foreach (var part in Parts)
            {
                _at = start;
                var outer = _items.TryGetValue("x", out var o) ? o : (double?)null;
                _items["x"] = part;
                sum += Product();
                if (outer is { } back)
                    _items["x"] = back;
                else
                    _items.Remove("x");
            }

            return sum;
        }

        var value = Raised();
        while (true)
        {
            if (Take(" · "))
                value *= Raised();
            else if (Take("/"))
                value /= Raised();
            else
                return value;
        }
    }

    private double Raised()
    {
        var value = Single();
        return Take("^") ? Power(value, Single()) : value;
    }

    private double Single()
    {
        if (Take("√"))
            return Root(Single());
        if (Take("("))
            return Closed(Or(), ")");
        if (Take("{"))
            return Cases();
        var start = _at;
        while (_at < text.Length && (char.IsLetterOrDigit(text[_at]) || text[_at] is '_' or '.' || (text[_at] == ',' && _at + 1 < text.Length && text[_at + 1] != ' ')))
            _at++;
        var word = text[start.._at];
        Assert.True(word.Length > 0, $"'{text}' cannot be read from '{text[start..]}'");
        if (char.IsDigit(word[0]))
            return Number(word);
        if (!Take("("))
            return Name(word, _items);
        var arguments = new List<double> { Or() };
        while (Take(", "))
            arguments.Add(Or());
        return Closed(Call(word, [.. arguments]), ")");
    }

    private double Cases()
    {
        double? taken = null;
        while (true)
        {
            var value = Compared();
            if (Take(" otherwise"))
                return Closed(taken ?? value, "}");
            Assert.True(Take(" if "), $"'{text}' lacks a condition at '{text[_at..]}'");
            if (Or() != 0)
                taken ??= value;
            Closed(0, "; ");
        }
    }

    private double Chain(Func<double> next, params string[] signs)
    {
        var value = next();
        while (signs.FirstOrDefault(s => Take($" {s} ")) is { } sign)
            value = Infix(sign, value, sign is "+" or "−" ? Parallel() : next());
        return value;
    }

    private double Closed(double value, string end)
    {
        Assert.True(Take(end), $"'{text}' lacks '{end}' at '{text[_at..]}'");
        return value;
    }

    private bool Take(string token)
    {
        if (!text.AsSpan(_at).StartsWith(token, StringComparison.Ordinal))
            return false;
        _at += token.Length;
        return true;
    }
}
