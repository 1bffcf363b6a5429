using Microsoft.CodeAnalysis;

namespace EightOhm.Generators.Tests;

public class RefusalTests
{
    [Theory]
    [InlineData("{ double s = 0; for (var i = 0; i < 3; i++) s += a; return s; }", "for (var i")]
    [InlineData("{ foreach (var p in parts) G(p); return a; }", "foreach")]
    [InlineData("{ while (a > b) return c; return a; }", "while")]
    [InlineData("{ do { } while (a > b); return a; }", "do")]
    [InlineData("{ double x; x = a; return x; }", "x = a;")]
    [InlineData("{ double x; return a; }", "double x;")]
    [InlineData("{ double x = a, y = b; return x + y; }", "double x = a, y = b;")]
    [InlineData("{ var (x, y) = (a, b); return x + y; }", "var (x, y)")]
    [InlineData("{ if (a > b) return a; else return b; }", "if (a > b)")]
    [InlineData("{ if (a > b) { var x = a; return x; } return b; }", "if (a > b)")]
    [InlineData("{ if (a > b) return a; var x = b; return x; }", "var x = b;")]
    [InlineData("{ return a; return b; }", "return b;")]
    [InlineData("{ switch (a) { default: return b; } }", "switch")]
    [InlineData("{ try { return a; } finally { } }", "try")]
    [InlineData("{ throw new Exception(); }", "throw")]
    [InlineData("{ G(a); return b; }", "G(a);")]
    [InlineData("{ double H(double x) => x; return H(a); }", "double H")]
    [InlineData("{ Guard.Positive(R); }", "[Formula")]
    public void A_statement_that_cannot_be_shown_is_an_error_where_it_stands(string body, string marked) => Refuses("EOHM001", body, marked);

    [Theory]
    [InlineData("=> a switch { 1 => b, _ => c };", "a switch { 1 => b, _ => c }")]
    [InlineData("=> a is > 1 ? b : c;", "a is > 1")]
    [InlineData("=> $\"{a}\".Length;", "$\"{a}\"")]
    [InlineData("=> G(x: a);", "x: a")]
    [InlineData("=> 2 * G(a);", "G(a)")]
    [InlineData("=> ~(int)a;", "~(int)a")]
    [InlineData("=> a = b;", "a = b")]
    [InlineData("=> a++;", "a++")]
    [InlineData("=> double.TryParse(\"1\", out var x) ? x : a;", "out var x")]
    [InlineData("=> new[] { a, b }[0];", "new[] { a, b }")]
    [InlineData("=> Sum(parts, (x) => x);", "(x) => x")]
    [InlineData("=> parts?.Count ?? a;", "parts?.Count ?? a")]
    [InlineData("{ var x = a switch { _ => b }; return x; }", "a switch { _ => b }")]
    [InlineData("{ if (a is 1) return b; return c; }", "a is 1")]
    public void An_expression_that_cannot_be_shown_is_an_error_where_it_stands(string body, string marked) => Refuses("EOHM002", body, marked);

    [Theory]
    [InlineData("=> parts.Count / 2;", "parts.Count / 2", "write parts.Count / 2.0")]
    [InlineData("=> a * (1 / parts.Count);", "1 / parts.Count", "write 1.0 / parts.Count")]
    [InlineData("=> Math.Pow(a, 1 / 6);", "1 / 6", "write 1 / 6.0")]
    [InlineData("{ var n = parts.Count; if (n / n > b) return a; return c; }", "n / n", "write n / (double)n")]
    public void A_division_of_whole_numbers_is_an_error_that_says_what_to_write(string body, string marked, string instead)
    {
        Refuses("EOHM005", body, marked);
        Assert.Contains(Generated.Body(body).Problems, p => p.GetMessage(null).EndsWith(instead, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("public static class Room { [Formula(\"a textbook, ch. 1\")] public static double F(double a) => a; }", "Room")]
    [InlineData("public static class House { public static partial class Room { [Formula(\"a textbook, ch. 1\")] public static double F(double a) => a; } }", "House")]
    public void The_type_of_a_formula_and_what_holds_it_must_be_partial(string type, string marked)
    {
        var generated = Generated.From("using EightOhm.Explaining;\n" + type);
        var problem = Assert.Single(generated.Problems);
        Assert.Equal("EOHM003", problem.Id);
        Assert.Equal(marked, generated.Marked(problem));
        Assert.Empty(generated.Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void A_formula_without_a_source_is_an_error_at_its_name(string source)
    {
        var generated = Generated.From($"using EightOhm.Explaining;\npublic static partial class Room {{ [Formula(\"{source}\")] public static double F(double a) => a; }}");
        var problem = Assert.Single(generated.Problems);
        Assert.Equal("EOHM004", problem.Id);
        Assert.Equal("F", generated.Marked(problem));
        Assert.Equal(DiagnosticSeverity.Error, problem.Severity);
    }

    private static void Refuses(string id, string body, string marked)
    {
        var generated = Generated.Body(body);
        var problem = generated.Problems.FirstOrDefault(p => p.Id == id && generated.Marked(p).StartsWith(marked, StringComparison.Ordinal));
        Assert.True(problem is not null, $"{body} gave: {string.Join("; ", generated.Problems)}");
        Assert.Equal(DiagnosticSeverity.Error, problem.Severity);
        Assert.Equal("Snippet.cs", problem.Location.GetLineSpan().Path);
        Assert.Empty(generated.Code);
    }
}
