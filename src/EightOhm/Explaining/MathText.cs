namespace EightOhm.Explaining;

/// <summary>Writes a formula as one line of plain text: √(P · R_L).</summary>
/// <remarks>The same brackets and signs that stand, unseen, in the MathML, so that a page without its tags reads like this line.</remarks>
public static class MathText
{
    /// <summary>The formula as text.</summary>
    /// <param name="node">The formula.</param>
    public static string Write(MathNode node) => node switch
    {
        NumberNode n => n.Text,
        NameNode n => Name(n.Text),
        InfixNode n => $"{In(n.Left, LeftNeed(n))} {n.Sign} {In(n.Right, RightNeed(n))}",
        NegatedNode n => $"−{In(n.Inner, 3)}",
        FractionNode n => $"{In(n.Over, OverNeed(n))}/{In(n.Under, 4)}",
        RootNode n => $"√({Write(n.Inner)})",
        PowerNode n => $"{PowerBase(n)}^{In(n.Exponent, 5)}",
        CallNode n => $"{Name(n.Name)}({string.Join(", ", n.Arguments.Select(Write))})",
        SumNode n => $"Σ[{Write(n.Item)} in {Write(n.Items)}] {In(n.Term, 3)}",
        CasesNode n => $"{{{string.Join("; ", n.Cases.Select(c => c.When is null ? $"{Write(c.Value)} otherwise" : $"{Write(c.Value)} if {Write(c.When)}"))}}}",
        _ => throw new ArgumentException($"No text for a {node?.GetType().Name}.", nameof(node)),
    };

    /// <summary>A name as text: stem, underscore, subscript.</summary>
    /// <param name="name">The name as it is in the code.</param>
    public static string Name(string name)
    {
        var (stem, sub) = Symbols.Split(name);
        return sub.Length == 0 ? stem : $"{stem}_{sub}";
    }

    /// <summary>Whether a power's base needs brackets: a value with its unit, or anything looser than a single thing.</summary>
    /// <param name="node">The power.</param>
    public static bool NeedsBrackets(PowerNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Base is NumberNode { Spaced: true } || node.Base.Binding < 5;
    }

    /// <summary>How tightly the left side of a sign must bind to stand without brackets.</summary>
    /// <param name="node">The sign and its sides.</param>
    public static int LeftNeed(InfixNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Sign switch
        {
            "∥" => node.Left is InfixNode { Sign: "∥" } ? node.Binding : 4,
            "+" or "−" or "·" or "and" or "or" => node.Binding,
            _ => 1,
        };
    }

    /// <summary>How tightly the right side of a sign must bind to stand without brackets.</summary>
    /// <param name="node">The sign and its sides.</param>
    public static int RightNeed(InfixNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Sign switch
        {
            "−" => 2,
            "+" => StartsWithMinus(node.Right) ? 2 : 1,
            "·" => node.Right is FractionNode or NumberNode ? 3 : 4,
            "∥" => 4,
            "and" or "or" => node.Binding,
            _ => 1,
        };
    }

    /// <summary>How tightly a numerator must bind to stand without brackets: a unit with a bar of its own, such as V/µs, needs them.</summary>
    /// <param name="node">The quotient.</param>
    public static int OverNeed(FractionNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Over is NumberNode ? 4 : 3;
    }

    // "a + −b" reads badly wherever the minus sign comes from.
    private static bool StartsWithMinus(MathNode node) => node switch
    {
        NegatedNode => true,
        NumberNode n => n.Text.StartsWith('−'),
        InfixNode { Sign: "+" or "−" } n => StartsWithMinus(n.Left),
        _ => false,
    };

    private static string In(MathNode node, int need) => node.Binding < need ? $"({Write(node)})" : Write(node);

    private static string PowerBase(PowerNode node) => NeedsBrackets(node) ? $"({Write(node.Base)})" : Write(node.Base);
}
