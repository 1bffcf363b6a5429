using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Generators.Tests;

public class StepsTests
{
    [Theory]
    [InlineData("=> a * b + c;", 10)]
    [InlineData("=> a > b ? a : c;", 4)]
    [InlineData("{ Guard.Positive(R); Guard.Between(a, 0, 100, hint: \"no\"); return a; }", 2)]
    [InlineData("{ double x = 3; var y = x * a; return y / 2; }", 3)]
    [InlineData("{ if (a > b) return a; if (b > c) { return b; } return c; }", 4)]
    [InlineData("{ if (a < b && b <= c || a >= c) return a; return c; }", 2)]
    [InlineData("=> -a + (double)3;", 1)]
    [InlineData("=> a == 2 ? b : c;", 3)]
    [InlineData("=> a != 2 && !(b > c) || a == 1 ? b : c % 3;", 1)]
    [InlineData("=> +a * 1.0 / 6 * 2 * (1 - 1.0 / 3) + half;", 4.0 / 9 + 0.5)]
    [InlineData("=> Math.Pow(a, 1.0 / 6) + parts.Count / 2.0;", 1.122462048309373 + 1.5)]
    [InlineData("=> Math.PI * a - 2 * Math.PI;", 0)]
    [InlineData("=> Sum(parts, x => x * x) + parts[0];", 15)]
    [InlineData("=> Sqrt(P * R).Volts + (double)(100.W / 10.W) + (-25).degC.DegreesCelsius + a.V.Volts;", 28.284271247461902 + 10 - 25 + 2)]
    [InlineData("=> Math.Pow(a, b) + pi - pi;", 8)]
    public void What_can_be_shown_compiles_and_computes(string body, double expected)
    {
        var generated = Generated.Body(body);
        Assert.Empty(generated.Problems);
        var formula = generated.Load().GetType("Snippets.Room")!.GetMethod("F")!;
        object[] inputs = [2.0, 3.0, 4.0, 8.Ohm, 100.W, new[] { 1.0, 2.0, 3.0 }];
        var steps = FormulaSteps.Of(formula)!;
        Assert.Equal(["a", "b", "c", "R", "P", "parts"], steps.Parameters);
        Assert.Equal(expected, (double)steps.Compute(inputs)[^1], 9);
        Assert.Equal(formula.Invoke(null, inputs), steps.Compute(inputs)[^1]);
    }

    [Theory]
    [InlineData("=> Math.Pow(a, 1.0 / 6);", "a^(1/6)")]
    [InlineData("=> a * (2.0 * 3 / 4);", "a · 2 · 3/4")]
    [InlineData("=> a / (1 - 1.0 / 3);", "a/(1 − 1/3)")]
    [InlineData("=> half * a + Math.PI;", "half · a + π")]
    [InlineData("=> a == 2 ? b : c;", "{b if a = 2; c otherwise}")]
    [InlineData("=> a % 2 == 0 && !(a > b) ? b : c;", "{b if (a mod 2) = 0 and not (a > b); c otherwise}")]
    public void Constants_and_conditions_stand_as_they_were_written(string body, string shown)
    {
        var formula = Generated.Body(body).Load().GetType("Snippets.Room")!.GetMethod("F")!;
        Assert.Equal(shown, MathText.Write(Workings.InSymbols(FormulaSteps.Of(formula)!.Lines[^1].Rule)));
    }

    [Fact]
    public void A_formula_of_a_program_built_without_the_generator_is_refused_in_a_sentence()
    {
        var formula = Generated.WithoutGenerator("=> a * b;").GetType("Snippets.Room")!.GetMethod("F")!;
        var refusal = Assert.Throws<InvalidOperationException>(() => FormulaSteps.Of(formula)).Message;
        Assert.StartsWith("Room.F is marked [Formula], but its steps were not written when snippet was built", refusal, StringComparison.Ordinal);
        Assert.Contains("refer to the package EightOhm itself", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Guards_are_skipped_and_each_local_is_a_line_of_its_declared_type()
    {
        var generated = Generated.Body("{ Guard.Positive(R); double x = 3; var y = R * x; return y.Ohms; }");
        Assert.DoesNotContain("Guard", generated.Code, StringComparison.Ordinal);
        var lines = FormulaSteps.Of(generated.Load().GetType("Snippets.Room")!.GetMethod("F")!)!.Lines;
        Assert.Equal(["x", "y", ""], lines.Select(l => l.Name));
        Assert.Equal(typeof(double), lines[0].Rule.ReturnType);
    }

    [Fact]
    public void Literals_are_written_as_calls_of_their_getters()
    {
        var code = Generated.Body("=> (double)(100.W / 10.W) + (-25).degC.DegreesCelsius;").Code;
        Assert.Contains("global::EightOhm.Quantities.Literals.get_W(100)", code, StringComparison.Ordinal);
        Assert.Contains("global::EightOhm.Quantities.Literals.get_degC((-25))", code, StringComparison.Ordinal);
    }

    [Fact]
    public void Overloads_and_members_of_an_object_each_have_their_steps()
    {
        var room = Generated.From(
            """
            using EightOhm.Explaining;
            namespace Snippets
            {
                public partial class House
                {
                    public partial record Room(double Width, double Depth)
                    {
                        private const double half = 0.5;
                        [Formula("a textbook, ch. 1")] public double Floor => Width * this.Depth;
                        [Formula("a textbook, ch. 1")] public double Share { get { return half * Floor; } }
                        [Formula("a textbook, ch. 1")] public double Of(double x) => Share * x;
                        [Formula("a textbook, ch. 1")] public double Of(int n) => Scaled(n) + 1;
                        [Formula("a textbook, ch. 1")] public static double Of(double x, int n) => x * n;
                        private double Scaled(int n) => Width * n;
                    }
                }
            }
            """).Load().GetType("Snippets.House+Room")!;
        var one = Activator.CreateInstance(room, 3.0, 4.0)!;
        Assert.Equal(12.0, Of(room.GetProperty("Floor")!, one));
        Assert.Equal(6.0, Of(room.GetProperty("Share")!, one));
        Assert.Equal(12.0, Of(room.GetMethod("Of", [typeof(double)])!, one, 2.0));
        Assert.Equal(7.0, Of(room.GetMethod("Of", [typeof(int)])!, one, 2));
        Assert.Equal(6.0, Of(room.GetMethod("Of", [typeof(double), typeof(int)])!, 2.0, 3));
        Assert.Equal(5, FormulaSteps.FormulasOf(room.Assembly).Count());
    }

    [Fact]
    public void A_struct_and_a_generic_type_may_hold_formulas()
    {
        var assembly = Generated.From(
            """
            using EightOhm.Explaining;
            public readonly partial struct Point { public double X { get; init; } [Formula("a textbook, ch. 1")] public double Twice => 2 * X; }
            public readonly partial record struct Pair(double X) { [Formula("a textbook, ch. 1")] public double Thrice => 3 * X; }
            """).Load();
        var pair = Activator.CreateInstance(assembly.GetType("Pair")!, 2.0)!;
        Assert.Equal(6.0, Of(assembly.GetType("Pair")!.GetProperty("Thrice")!, pair));
        Assert.Equal(0.0, Of(assembly.GetType("Point")!.GetProperty("Twice")!, Activator.CreateInstance(assembly.GetType("Point")!)!));
    }

    [Theory]
    [InlineData("-6.dB")]
    [InlineData("-6.0.dB")]
    [InlineData("-(6).dB")]
    public void A_minus_sign_before_decibels_is_an_error_that_says_what_to_write(string gain)
    {
        var errors = Generated.From($"using EightOhm.Quantities; public static class Room {{ public static Gain F => {gain}; }}").Errors.ToList();
        Assert.Contains("write (-6).dB", Assert.Single(errors), StringComparison.Ordinal);
        Assert.Empty(Generated.From("using EightOhm.Quantities; public static class Room { public static Gain F => (-6).dB; }").Errors);
    }

    private static object Of(MemberInfo member, params object[] inputs) => FormulaSteps.Of(member)!.Compute(inputs)[^1];
}
