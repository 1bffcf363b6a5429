using System.Collections;
using System.Runtime.CompilerServices;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Explaining;

/// <summary>Puts a value that no design has in the place of one that it could have.</summary>
internal static class OddInputs
{
    private static readonly double[] Factors = [0, -1, -1e9, 1e-12, 1e-6, 1e6, 1e9, 1];

    private static readonly double[] Degrees = [0, 90, -90, 45, 180, -180, 89.999999, 90.000001, 1e9];

    private static readonly double[] Plain = [0, 1, -1, 0.5, 1e-9, 1e9, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    private static readonly int[] Whole = [0, 1, -1, 2, int.MaxValue, int.MinValue];

    /// <summary>Changes one of the inputs, often two.</summary>
    public static void Put(object?[] inputs, Random random)
    {
        var places = Enumerable.Range(0, inputs.Length).ToArray();
        random.Shuffle(places);
        foreach (var at in places.Take(random.Next(1, 3)))
            Put(inputs, at, random);
    }

    private static void Put(object?[] inputs, int at, Random random)
    {
        if (inputs[at] is not { } value)
            return;
        // Two equal ones, whose difference is nothing, are odd as well.
        var same = inputs.Where((v, i) => i != at && v?.GetType() == value.GetType()).ToList();
        inputs[at] = same.Count > 0 && random.Next(4) == 0 ? same[random.Next(same.Count)] : Odd(value, random);
    }

    private static object Odd(object value, Random random) => value switch
    {
        Angle => Angle.FromDegrees(Pick(Degrees, random)),
        double => Pick(Plain, random),
        int => Pick(Whole, random),
        Temperature t => Temperature.FromKelvins(Pick(Factors, random) * t.Kelvins),
        Array list => OfList(list, random),
        _ when QuantityKinds.Find(value.GetType()) is { } kind => kind.FromSi(Pick(Factors, random) * kind.ToSi(value)),
        _ => value,
    };

    private static Array OfList(Array list, Random random)
    {
        if (random.Next(4) == 0)
            return Array.CreateInstance(list.GetType().GetElementType()!, 0);
        var odd = (Array)list.Clone();
        var i = random.Next(odd.Length);
        odd.SetValue(Odd(odd.GetValue(i)!, random), i);
        return odd;
    }

    private static T Pick<T>(T[] of, Random random) => of[random.Next(of.Length)];

    /// <summary>Whether a refusal says in the house's words what is wrong.</summary>
    public static bool InWords(Exception refusal) => refusal switch
    {
        ArgumentOutOfRangeException out_of_range => !string.IsNullOrEmpty(out_of_range.ParamName) && out_of_range.Message.Contains("must", StringComparison.Ordinal),
        // A list that is empty or does not fit another is refused by ours with words of its own; UnitsNet's and the runtime's are not meant.
        ArgumentException { ParamName: not null } => refusal.GetType() == typeof(ArgumentException) && refusal.TargetSite?.DeclaringType?.Assembly == typeof(Guard).Assembly,
        // Text that is no value, and a card that cannot be read: what was read, and what to write instead or where the fault is.
        FormatException => refusal.TargetSite?.DeclaringType?.Assembly == typeof(Guard).Assembly && refusal.Message.Contains("Write for example", StringComparison.Ordinal),
        EightOhm.Devices.CardException => refusal.Message.Contains(", line ", StringComparison.Ordinal),
        ShortfallException shortfall => shortfall.Message.Contains("is short by", StringComparison.Ordinal),
        InvalidOperationException => refusal.GetType() == typeof(InvalidOperationException) && refusal.Message.Length > 30,
        _ => false,
    };

    /// <summary>Every number in a result: quantities, lists, the figures of records three deep (things may know each other in a ring).</summary>
    public static IEnumerable<double> Numbers(object? value, int depth = 3) => value switch
    {
        _ when depth < 0 => [],
        null or bool or string or Enum or Delegate => [],
        _ when QuantityKinds.Find(value.GetType()) is { } kind => [kind.ToSi(value)],
        ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Numbers(tuple[i], depth - 1)),
        IEnumerable list => list.Cast<object>().SelectMany(item => Numbers(item, depth - 1)),
        _ => value.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0 && !p.PropertyType.IsByRefLike).SelectMany(p => Numbers(p.GetValue(value), depth - 1)),
    };

    /// <summary>A value in a message.</summary>
    public static string Text(object? value) => value is null ? "null" : QuantityKinds.Find(value.GetType()) is { } kind ? $"{kind.ToSi(value):R} {kind.Symbol}" : value is IEnumerable list and not string ? $"[{string.Join(", ", list.Cast<object>().Select(Text))}]" : $"{value}";
}
