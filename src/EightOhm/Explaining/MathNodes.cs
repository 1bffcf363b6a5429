namespace EightOhm.Explaining;

/// <summary>What can be asked of a formula's nodes.</summary>
internal static class MathNodes
{
    /// <summary>The names in a formula, in the order they are read, with repetitions.</summary>
    public static IEnumerable<string> Names(MathNode node) => All(node).OfType<NameNode>().Select(n => n.Text);

    /// <summary>A node and all below it, in the order they are read.</summary>
    public static IEnumerable<MathNode> All(MathNode node) => Below(node).SelectMany(All).Prepend(node);

    /// <summary>The condition that holds when another does not: with the opposite sign where there is one.</summary>
    public static MathNode Opposite(MathNode condition) => condition switch
    {
        InfixNode { Sign: "and" } n => new InfixNode("or", Opposite(n.Left), Opposite(n.Right)),
        InfixNode { Sign: "or" } n => new InfixNode("and", Opposite(n.Left), Opposite(n.Right)),
        InfixNode n when OppositeSign(n.Sign) is { } sign => n with { Sign = sign },
        NotNode n => n.Inner,
        _ => new NotNode(condition),
    };

    /// <summary>Whether the formula's text starts with a minus sign that no bracket holds.</summary>
    public static bool StartsWithMinus(MathNode node) => node switch
    {
        NegatedNode => true,
        NumberNode n => n.Text.StartsWith('−'),
        InfixNode { Sign: "+" or "−" or "·" } n => StartsWithMinus(n.Left),
        FractionNode n => StartsWithMinus(n.Over),
        _ => false,
    };

    private static string? OppositeSign(string sign) => sign switch
    {
        "<" => "≥",
        "≤" => ">",
        ">" => "≤",
        "≥" => "<",
        "=" => "≠",
        "≠" => "=",
        _ => null,
    };

    private static IEnumerable<MathNode> Below(MathNode node) => node switch
    {
        InfixNode n => [n.Left, n.Right],
        NegatedNode n => [n.Inner],
        NotNode n => [n.Inner],
        FractionNode n => [n.Over, n.Under],
        RootNode n => [n.Inner],
        PowerNode n => [n.Base, n.Exponent],
        CallNode n => n.Owner is null ? n.Arguments : n.Arguments.Prepend(n.Owner),
        SumNode n => [n.Item, n.Items, n.Term],
        CasesNode n => n.Cases.SelectMany(c => c.When is null ? [c.Value] : new[] { c.Value, c.When }),
        _ => [],
    };
}
