using CsCheck;
using EightOhm.Display.Formulas;
using EightOhm.Explaining;
using EightOhm.Tests.Explaining;

namespace EightOhm.Display.Tests.Formulas;

public class LatexTests
{
    [Fact]
    public void Braces_and_brackets_close_and_no_dollar_stands_inside() =>
        RandomNodes.WithValues.Sample(
            node =>
            {
                var latex = Latex.Write(node);
                Assert.DoesNotContain('$', latex);
                var depth = 0;
                for (var i = 0; i < latex.Length; i++)
                {
                    if (latex[i] == '\\')
                        i++;
                    else
                        depth += latex[i] == '{' ? 1 : latex[i] == '}' ? -1 : 0;
                    Assert.True(depth >= 0, latex);
                }

                Assert.True(depth == 0, latex);
                Assert.Equal(Count(latex, "\\left("), Count(latex, "\\right)"));
                Assert.Equal(MathNodes.All(node).OfType<RootNode>().Count(), Count(latex, "\\sqrt{"));
                Assert.Equal(MathNodes.All(node).OfType<FractionNode>().Count(), Count(latex, "\\frac{"));
                Assert.Equal(Count(latex, "\\begin{cases}"), Count(latex, "\\end{cases}"));
            },
            iter: 3_000);

    public static TheoryData<MathNode, string> Lines => new()
    {
        { new NumberNode("0.1 %", true), "0.1\\,\\text{\\%}" },
        { new NumberNode("5 a_b & #1", true), "5\\,\\text{a\\_b \\& \\#1}" },
        { new NumberNode("1.381×10⁻²³ J/K", true), "1.381 \\times 10^{-23}\\,\\text{J/K}" },
        { new NegatedNode(new InfixNode("+", new NameNode("a"), new NameNode("b"))), "-\\left(a + b\\right)" },
        { new InfixNode("≤", new NameNode("theta_JC"), new NumberNode("2")), "θ_{\\text{JC}} \\le 2" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Signs_units_and_names_are_written_so_that_LaTeX_takes_them(MathNode node, string latex) => Assert.Equal(latex, Latex.Write(node));

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
