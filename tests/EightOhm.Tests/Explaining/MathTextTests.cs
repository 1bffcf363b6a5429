using CsCheck;
using EightOhm.Explaining;

namespace EightOhm.Tests.Explaining;

public class MathTextTests
{
    private static readonly MathNode A = new NameNode("a"), B = new NameNode("b"), C = new NameNode("c");

    [Fact]
    public void A_line_of_text_means_what_its_tree_means()
    {
        var compared = 0;
        RandomNodes.Plain.Sample(
            node =>
            {
                var expected = TextValue.Of(node);
                bool Near(double other) => Math.Abs(other - expected) <= 1e-8 * Math.Max(1, Math.Abs(expected));
                var noise = new Random(1);
                if (!double.IsFinite(expected) || !Enumerable.Range(0, 8).All(_ => Near(TextValue.WithNoise(node, noise))))
                    return;
                Interlocked.Increment(ref compared);
                var text = MathText.Write(node);
                var read = TextValue.Of(text);
                Assert.True(Near(read), $"{text} reads as {read:R}, means {expected:R}");
            },
            iter: 20_000);
        Assert.True(compared > 15_000, $"only {compared} formulas could be compared");
    }

    public static TheoryData<MathNode, string> Lines => new()
    {
        { new FractionNode(A, new NumberNode("0.5 K/W", true)), "a/(0.5 K/W)" },
        { new FractionNode(new NumberNode("40 V/µs", true), A), "(40 V/µs)/a" },
        { new FractionNode(new NumberNode("100 W", true), new NumberNode("8 Ω", true)), "100 W/8 Ω" },
        { new PowerNode(new NumberNode("8 Ω", true), new NumberNode("2")), "(8 Ω)^2" },
        { new PowerNode(A, new NumberNode("2")), "a^2" },
        { new InfixNode("∥", new InfixNode("·", A, B), C), "(a · b) ∥ c" },
        { new InfixNode("·", A, new InfixNode("∥", B, C)), "a · (b ∥ c)" },
        { new FractionNode(new InfixNode("∥", A, B), C), "(a ∥ b)/c" },
        { new InfixNode("∥", new InfixNode("∥", A, B), C), "a ∥ b ∥ c" },
        { new InfixNode("+", A, new InfixNode("∥", B, C)), "a + b ∥ c" },
        { new InfixNode("+", A, new NegatedNode(B)), "a + (−b)" },
        { new InfixNode("+", A, new InfixNode("+", new NegatedNode(B), C)), "a + (−b + c)" },
        { new InfixNode("−", A, new InfixNode("−", B, C)), "a − (b − c)" },
        { new InfixNode("·", A, new NumberNode("−4 mA", true)), "a · (−4 mA)" },
        { new InfixNode("and", new InfixNode("or", new InfixNode("<", A, B), new InfixNode("<", B, C)), new InfixNode("<", A, C)), "(a < b or b < c) and a < c" },
        { new InfixNode("·", new NumberNode("2"), new CasesNode([(A, new InfixNode("<", B, C)), (B, null)])), "2 · {a if b < c; b otherwise}" },
        { new InfixNode("·", new SumNode(new NameNode("x"), new NameNode("parts"), A), B), "(Σ[x in parts] a) · b" },
        { new InfixNode("·", A, new InfixNode("·", B, C)), "a · b · c" },
        { new InfixNode("·", new InfixNode("·", A, B), new FractionNode(B, C)), "a · b · b/c" },
        { new FractionNode(A, new InfixNode("·", B, C)), "a/(b · c)" },
        { new FractionNode(new NumberNode("−1"), new InfixNode("+", new NumberNode("1"), A)), "−1/(1 + a)" },
        { new InfixNode("−", A, new FractionNode(new NumberNode("−1"), B)), "a − (−1/b)" },
        { new InfixNode("·", new NegatedNode(A), B), "−a · b" },
        { new NegatedNode(new InfixNode("·", new NegatedNode(A), B)), "−(−a · b)" },
        { new RootNode(B), "√b" },
        { new RootNode(new NumberNode("2")), "√2" },
        { new RootNode(new NumberNode("20 kHz", true)), "√(20 kHz)" },
        { new InfixNode("and", new InfixNode("=", A, B), new NotNode(new InfixNode(">", A, C))), "a = b and not (a > c)" },
        { new InfixNode("=", new InfixNode("mod", A, new NumberNode("2")), new NumberNode("0")), "(a mod 2) = 0" },
        { new CallNode("P_D", [A, B], new NameNode("stage")), "stage.P_D(a, b)" },
        { new InfixNode("=", A, new InfixNode("+", B, C)), "a = b + c" },
        { new NameNode("theta_JC"), "θ_JC" },
        { new NameNode("pi"), "π" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Brackets_stand_where_a_reader_needs_them(MathNode node, string text) => Assert.Equal(text, MathText.Write(node));
}
