using CsCheck;
using EightOhm.Explaining;

namespace EightOhm.Tests.Explaining;

/// <summary>Random formulas of every kind of node.</summary>
internal static class RandomNodes
{
    private static readonly Gen<string> Names = Any("a", "R_L", "theta_JC", "pi", "V_in_pk");

    private static readonly Gen<MathNode> Leaves = Gen.OneOf(
        Names.Select(n => (MathNode)new NameNode(n)),
        Any("2", "3.5", "−4", "0.25").Select(n => (MathNode)new NumberNode(n)));

    private static readonly Gen<MathNode> ValuesToo = Gen.OneOf(
        Leaves,
        Any("2 V", "28.28 V", "−4 mA", "40 V/µs", "1.381×10⁻²³ J/K", "0.001 % (10 ppm, −100 dB)", "5 <&>").Select(n => (MathNode)new NumberNode(n, Spaced: true)));

    /// <summary>Formulas of numbers and names alone.</summary>
    public static Gen<MathNode> Plain { get; } = Gen.Int[0, 4].SelectMany(depth => Node(depth, Leaves));

    /// <summary>Formulas with values and units as well.</summary>
    public static Gen<MathNode> WithValues { get; } = Gen.Int[0, 4].SelectMany(depth => Node(depth, ValuesToo));

    private static Gen<MathNode> Node(int depth, Gen<MathNode> leaves)
    {
        if (depth == 0)
            return leaves;
        var below = Gen.Int[0, depth - 1].SelectMany(d => Node(d, leaves));
        return Gen.OneOf(
            Gen.Select(Any("+", "−", "·", "∥", "mod"), below, below).Select((s, a, b) => (MathNode)new InfixNode(s, a, b)),
            below.Select(a => (MathNode)new NegatedNode(a)),
            Gen.Select(below, below).Select((a, b) => (MathNode)new FractionNode(a, b)),
            below.Select(a => (MathNode)new RootNode(a)),
            Gen.Select(below, below).Select((a, b) => (MathNode)new PowerNode(a, b)),
            Gen.Select(Any("ln", "f"), below).Select((f, a) => (MathNode)new CallNode(f, [a])),
            Gen.Select(below, below).Select((a, b) => (MathNode)new CallNode("g_2", [a, b])),
            Gen.Select(Names, below).Select((o, a) => (MathNode)new CallNode("P_D", [a], new NameNode(o))),
            below.Select(a => (MathNode)new SumNode(new NameNode("x"), new NameNode("parts"), a)),
            Gen.Select(below, Condition(depth - 1, below), below).Select((a, c, b) => (MathNode)new CasesNode([(a, c), (b, null)])));
    }

    private static Gen<MathNode> Condition(int depth, Gen<MathNode> terms)
    {
        var compared = Gen.Select(Any("<", "≤", ">", "≥", "=", "≠"), terms, terms).Select((s, a, b) => (MathNode)new InfixNode(s, a, b));
        if (depth <= 0)
            return compared;
        var below = Condition(depth - 1, terms);
        return Gen.OneOf(compared, below.Select(a => (MathNode)new NotNode(a)), Gen.Select(Any("and", "or"), below, below).Select((s, a, b) => (MathNode)new InfixNode(s, a, b)));
    }

    private static Gen<T> Any<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
