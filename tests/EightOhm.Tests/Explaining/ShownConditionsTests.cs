using EightOhm.Explaining;
using EightOhm.Quantities;
using static EightOhm.Explaining.Workings;

namespace EightOhm.Tests.Explaining;

/// <summary>Conditions in symbols, the case that applies, and divisions of whole numbers.</summary>
public class ShownConditionsTests
{
    private readonly double a = 2, b = 3, c = 5;

    [Fact]
    public void Each_condition_stands_in_its_symbols()
    {
        Shows("a = b ⇔ 2 = 3 ⇔ false", Explain(() => a == b));
        Shows("a ≠ b ⇔ 2 ≠ 3 ⇔ true", Explain(() => a != b));
        Shows("a < b and not (b > c) ⇔ 2 < 3 and not (3 > 5) ⇔ true", Explain(() => a < b && !(b > c)));
        Shows("a ≥ b or b ≤ c ⇔ 2 ≥ 3 or 3 ≤ 5 ⇔ true", Explain(() => a >= b || b <= c));
        Shows("a · (c mod b) = 2 · (5 mod 3) = 4", Explain(() => a * (c % b)));
    }

    [Fact]
    public void Of_cases_the_one_that_applies_is_shown_with_its_condition()
    {
        Shows(
            """
            b + c = 3 + 5 = 8
            case: if a = 2; here 2 = 2; other cases do not apply
            """,
            Explain(() => a == 2 ? b + c : b / c));
        Shows(
            """
            b/c = 3/5 = 0.6
            case: if a ≠ 4; here 2 ≠ 4; other cases do not apply
            """,
            Explain(() => a == 4 ? b + c : b / c));
        Shows(
            """
            a = 2
            case: if a ≤ b and b ≤ c; here 2 ≤ 3 and 3 ≤ 5; other cases do not apply
            """,
            Explain(() => a > b ? c : b > c ? b : a));
    }

    [Fact]
    public void In_symbols_alone_all_cases_stand()
    {
        System.Linq.Expressions.Expression<Func<double, double, double>> rule = (x, y) => x == 2 && !(x > y) ? y : x % y;
        Assert.Equal("{y if x = 2 and not (x > y); x mod y otherwise}", MathText.Write(InSymbols(rule)));
    }

    [Fact]
    public void A_division_of_whole_numbers_is_refused_with_what_to_write()
    {
        int n = 3, m = 2;
        Assert.Equal("n / 2 divides whole numbers and drops the rest. Write n / 2.0.", Refused(() => Explain(() => a * (n / 2))));
        Assert.Equal("1 / n divides whole numbers and drops the rest. Write 1.0 / n.", Refused(() => Explain(() => a * (1 / n))));
        Assert.Equal("n / m divides whole numbers and drops the rest. Write n / (double)m.", Refused(() => Explain(() => n / m)));
        Assert.Equal("1 / 6 divides whole numbers and drops the rest. Write 1 / 6.0.", Refused(() => Explain(() => Math.Pow(a, FormulaSteps.Kept(1) / 6))));
        System.Linq.Expressions.Expression<Func<int, double>> rule = k => k / 2 * 1.0;
        Assert.Equal("k / 2 divides whole numbers and drops the rest. Write k / 2.0.", Refused(() => Explain(rule, 3)));
        Shows("n/2 = 3/2 = 1.5", Explain(() => n / 2.0));
    }

    [Fact]
    public void A_quotient_that_a_cell_keeps_is_shown_as_a_quotient() =>
        Shows("a^(1/6) = 2^(1/6) = 1.122", Explain(() => Math.Pow(a, FormulaSteps.Kept(1.0) / 6)));

    private static string Refused(Action explain) => Assert.Throws<InvalidOperationException>(explain).Message;

    private static void Shows(string text, Explanation explanation) =>
        Assert.Equal(text.ReplaceLineEndings("\n"), explanation.ToString());
}
