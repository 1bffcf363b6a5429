namespace EightOhm.Explaining;

/// <summary>Marks a formula of the trade: an ordinary typed method or property whose working can be shown.</summary>
/// <remarks>What is shown is the code that computes: the build writes its steps, the same expressions, beside it. See docs/formulas.md.</remarks>
/// <param name="source">Where the formula stands: author, title, edition, page or equation; or "common practice, no source".</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property)]
public sealed class FormulaAttribute(string source) : Attribute
{
    /// <summary>Where the formula stands.</summary>
    public string Source { get; } = source;

    /// <summary>The symbol of the result, such as "V_rms"; the member's name when empty.</summary>
    public string Symbol { get; init; } = "";
}

/// <summary>The symbol a property is written with, such as "R_L" for a load.</summary>
/// <param name="text">The symbol; an underscore starts the subscript.</param>
[AttributeUsage(AttributeTargets.Property | AttributeTargets.Field)]
public sealed class SymbolAttribute(string text) : Attribute
{
    /// <summary>The symbol.</summary>
    public string Text { get; } = text;
}

/// <summary>Marks a solver: its result is the unknown of a balance, and the balance is what is shown.</summary>
/// <param name="balance">The name of a <c>[Formula]</c> of the same type that returns a <see cref="Balance{T}"/>. Its parameters are the
/// solver's, by name, and one more: the unknown.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class SolvesAttribute(string balance) : Attribute
{
    /// <summary>The name of the balance.</summary>
    public string Balance { get; } = balance;
}

/// <summary>Says of a solver that has no equation to show how its result came: what was looked for and by what method.</summary>
/// <remarks>Where the solver tells its steps by <see cref="SolverTrace.Note"/>, they are shown with it.</remarks>
/// <param name="how">What was looked for and the method, such as "the level of greatest dissipation: a scan, then golden section".</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property)]
public sealed class WorkedAttribute(string how) : Attribute
{
    /// <summary>What was looked for and the method.</summary>
    public string How { get; } = how;

    /// <summary>Where the method stands, if anywhere; empty when it is only what the words say.</summary>
    public string Source { get; init; } = "";
}

/// <summary>Written by the build: names the member whose steps a method returns.</summary>
/// <param name="member">The member's name.</param>
/// <param name="parameters">Its parameter types.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class StepsOfAttribute(string member, params Type[] parameters) : Attribute
{
    /// <summary>The member's name.</summary>
    public string Member { get; } = member;

    /// <summary>Its parameter types.</summary>
    public IReadOnlyList<Type> Parameters { get; } = parameters;
}
