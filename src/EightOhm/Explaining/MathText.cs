namespace EightOhm.Explaining;

/// <summary>Writes a formula as one line of plain text: √(P · R_L).</summary>
/// <remarks>The same brackets and signs that stand, unseen, in the MathML, so that a page without its tags reads like this line.</remarks>
public static class MathText
{
    // More than any node binds: brackets in any case.
    private const int Always = 6;

    /// <summary>The formula as text.</summary>
    /// <param name="node">The formula.</param>
    public static string Write(MathNode node) => node switch
    {
        NumberNode n => n.Text,
        NameNode n => Name(n.Text),
        InfixNode n => $"{In(n.Left, LeftNeed(n))} {n.Sign} {In(n.Right, RightNeed(n))}",
        WordsNode n => n.Text,
        NegatedNode n => $"−{In(n.Inner, NegatedNeed(n))}",
        NotNode n => $"not {In(n.Inner, 5)}",
        FractionNode n => $"{In(n.Over, OverNeed(n))}/{In(n.Under, 4)}",
        RootNode n => RootBrackets(n) ? $"√({Write(n.Inner)})" : $"√{Write(n.Inner)}",
        PowerNode n => $"{PowerBase(n)}^{In(n.Exponent, 5)}",
        CallNode n => $"{(n.Owner is null ? "" : $"{In(n.Owner, 5)}.")}{Name(n.Name)}({string.Join(", ", n.Arguments.Select(Write))})",
        SumNode n => $"Σ[{Write(n.Item)} in {Write(n.Items)}] {In(n.Term, TermNeed(n))}",
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

    /// <summary>Whether a root needs brackets in a line of text: over anything but a bare name or number.</summary>
    /// <param name="node">The root.</param>
    public static bool RootBrackets(RootNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Inner is not (NameNode or NumberNode { Spaced: false, Binding: 5 });
    }

    /// <summary>How tightly the left side of a sign must bind to stand without brackets.</summary>
    /// <param name="node">The sign and its sides.</param>
    public static int LeftNeed(InfixNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Sign switch
        {
            "∥" => node.Left is InfixNode { Sign: "∥" } ? node.Binding : 4,
            "mod" => 4,
            // A minus sign in front of a product is that of its first factor.
            "·" => node.Left is NegatedNode or NumberNode ? 1 : node.Binding,
            "+" or "−" or "and" or "or" => node.Binding,
            _ => 1,
        };
    }

    /// <summary>How tightly the right side of a sign must bind to stand without brackets.</summary>
    /// <param name="node">The sign and its sides.</param>
    public static int RightNeed(InfixNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        // "a + −b" reads badly wherever the minus sign comes from.
        return node.Sign switch
        {
            "+" or "−" or "·" when MathNodes.StartsWithMinus(node.Right) => Always,
            "−" => 2,
            "+" => 1,
            "·" => 3,
            "∥" or "mod" => 4,
            "and" or "or" => node.Binding,
            _ => 1,
        };
    }

    /// <summary>How tightly what a minus sign stands before must bind to stand without brackets.</summary>
    /// <param name="node">The sign and what it stands before.</param>
    public static int NegatedNeed(NegatedNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return MathNodes.StartsWithMinus(node.Inner) ? Always : 3;
    }

    /// <summary>How tightly the term of a sum must bind to stand without brackets.</summary>
    /// <param name="node">The sum.</param>
    public static int TermNeed(SumNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return MathNodes.StartsWithMinus(node.Term) ? Always : 3;
    }

    /// <summary>How tightly a numerator must bind to stand without brackets: a unit with a bar of its own, such as V/µs, needs them.</summary>
    /// <param name="node">The quotient.</param>
    public static int OverNeed(FractionNode node)
    {
        ArgumentNullException.ThrowIfNull(node);
        return node.Over switch { NumberNode { Spaced: true } => 4, NumberNode or NegatedNode => 1, _ => 3 };
    }

    private static string In(MathNode node, int need) => node.Binding < need ? $"({Write(node)})" : Write(node);

    private static string PowerBase(PowerNode node) => NeedsBrackets(node) ? $"({Write(node.Base)})" : Write(node.Base);
}
