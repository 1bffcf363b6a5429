using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Tests.Explaining;

/// <summary>At the ends of what a number can hold, a formula gives a finite value or refuses in words that show no such number as infinite.</summary>
public class ExtremeInputTests
{
    private static readonly double[] Ends = [0, double.Epsilon, -double.Epsilon, 1e-300, -1e-300, 1e300, -1e300, double.MaxValue, double.MinValue, 1e-20, 1e20, -1];

    private static readonly int[] WholeEnds = [0, 1, -1, int.MaxValue, int.MinValue];

    private static readonly MemberInfo[] All = [.. FormulaSteps.FormulasOf(typeof(FormulaSteps).Assembly).Where(m => Inputs.For(m, new Random(1)).Count > 0)];

    public static TheoryData<string> Formulas => [.. All.Select(Formula.Name)];

    [Theory]
    [MemberData(nameof(Formulas))]
    public void Extremes_give_a_finite_value_or_a_refusal_in_words(string name)
    {
        var formula = All.Single(m => Formula.Name(m) == name);
        var random = new Random(name.Length);
        var faults = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var end in Ends)
        {
            object[] ordinary = [.. Inputs.For(formula, random)];
            for (var at = 0; at < ordinary.Length; at++)
                Try(ordinary, end, i => i == at);
            Try(ordinary, end, _ => true);
            // A large one against small ones, and the other way round.
            Try(Put(ordinary, 1e300, i => i % 2 == 0) ?? ordinary, end, i => i % 2 == 1);
            Try(Put(ordinary, 1e-300, i => i % 2 == 0) ?? ordinary, end, i => i % 2 == 1);
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults.Take(4)));

        void Try(object[] ordinary, double end, Func<int, bool> places)
        {
            if (Put(ordinary, end, places) is not { } inputs)
                return;
            var call = $"{name} of ({string.Join("; ", inputs.Select(OddInputs.Text))})";
            using var time = new CancellationTokenSource(TimeSpan.FromMinutes(1));
            using var work = Work.Begin(time.Token);
            try
            {
                var value = Formula.Invoke(formula, inputs);
                if (!OddInputs.Numbers(value).All(double.IsFinite))
                    faults.Add($"{call} gave {value}");
            }
            catch (Exception refusal)
            {
                if (!OddInputs.InWords(refusal) || refusal.Message.Contains("Infinity", StringComparison.Ordinal) || refusal.Message.Contains("NaN", StringComparison.Ordinal) || refusal.Message.Contains('∞'))
                    faults.Add($"{call} threw {refusal.GetType().Name}: {refusal.Message}");
            }
        }
    }

    // Null where a quantity of that size cannot be made at all.
    private static object[]? Put(object[] ordinary, double end, Func<int, bool> places)
    {
        try
        {
            return [.. ordinary.Select((value, i) => places(i) ? Of(value, end) : value)];
        }
        catch (Exception e) when (e is OverflowException or ArgumentException)
        {
            return null;
        }
    }

    private static object Of(object value, double end) => value switch
    {
        double => end,
        int => WholeEnds[Array.IndexOf(Ends, end) is >= 0 and var i ? i % WholeEnds.Length : 0],
        Array { Length: > 0 } list => OfList(list, end),
        _ when QuantityKinds.Find(value.GetType()) is { } kind => kind.FromSi(end),
        _ => value,
    };

    private static Array OfList(Array list, double end)
    {
        var copy = (Array)list.Clone();
        copy.SetValue(Of(copy.GetValue(0)!, end), 0);
        return copy;
    }
}
