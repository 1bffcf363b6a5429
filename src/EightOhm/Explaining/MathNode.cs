namespace EightOhm.Explaining;

/// <summary>A formula as it stands on paper, apart from how it is written down (text, MathML, LaTeX).</summary>
public abstract record MathNode
{
    /// <summary>How tightly the node binds: −2 or, −1 and, 0 equation, condition or mod, 1 sum or sign, 2 in parallel, 3 product or quotient, 4 power, 5 a single thing.</summary>
    public virtual int Binding => 5;
}

/// <summary>A value with its unit, or a plain number.</summary>
/// <param name="Text">The value as text.</param>
/// <param name="Spaced">Whether it has a unit, so that a power needs brackets round it.</param>
public sealed record NumberNode(string Text, bool Spaced = false) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => Text.StartsWith('−') ? 1 : Text.AsSpan().ContainsAny('×', '/') ? 3 : 5;
}

/// <summary>A name: R_L is R with subscript L, theta_JC is θ with subscript JC.</summary>
/// <param name="Text">The name as it is in the code.</param>
public sealed record NameNode(string Text) : MathNode;

/// <summary>Words: what an object is, a text, an answer that is no number.</summary>
/// <param name="Text">The words.</param>
public sealed record WordsNode(string Text) : MathNode;

/// <summary>Two things with a sign between them: a sum, a product, an equation, a condition.</summary>
/// <param name="Sign">The sign: +, −, ·, ∥, mod, =, ≠, &lt;, ≤, &gt;, ≥, and, or.</param>
/// <param name="Left">What stands before it.</param>
/// <param name="Right">What stands after it.</param>
public sealed record InfixNode(string Sign, MathNode Left, MathNode Right) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => Sign switch { "+" or "−" => 1, "∥" => 2, "·" => 3, "and" => -1, "or" => -2, _ => 0 };
}

/// <summary>A thing with a minus sign.</summary>
/// <param name="Inner">The thing.</param>
public sealed record NegatedNode(MathNode Inner) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => 1;
}

/// <summary>A condition that does not hold.</summary>
/// <param name="Inner">The condition.</param>
public sealed record NotNode(MathNode Inner) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => 0;
}

/// <summary>A quotient.</summary>
/// <param name="Over">The numerator.</param>
/// <param name="Under">The denominator.</param>
public sealed record FractionNode(MathNode Over, MathNode Under) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => 3;
}

/// <summary>A square root.</summary>
/// <param name="Inner">What is under the root.</param>
public sealed record RootNode(MathNode Inner) : MathNode;

/// <summary>A power.</summary>
/// <param name="Base">What is raised.</param>
/// <param name="Exponent">The exponent.</param>
public sealed record PowerNode(MathNode Base, MathNode Exponent) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => 4;
}

/// <summary>A function of arguments: ln(x), cos(φ), another formula by its name.</summary>
/// <param name="Name">The function's name.</param>
/// <param name="Arguments">Its arguments.</param>
/// <param name="Owner">The object that it belongs to; null for a function of its arguments alone.</param>
public sealed record CallNode(string Name, IReadOnlyList<MathNode> Arguments, MathNode? Owner = null) : MathNode;

/// <summary>A sum of a term over a list.</summary>
/// <param name="Item">The name of an item.</param>
/// <param name="Items">The list.</param>
/// <param name="Term">The term.</param>
public sealed record SumNode(MathNode Item, MathNode Items, MathNode Term) : MathNode
{
    /// <inheritdoc/>
    public override int Binding => 1;
}

/// <summary>Values that hold under conditions; the last one holds otherwise.</summary>
/// <param name="Cases">Each value with its condition; null means otherwise.</param>
public sealed record CasesNode(IReadOnlyList<(MathNode Value, MathNode? When)> Cases) : MathNode;
