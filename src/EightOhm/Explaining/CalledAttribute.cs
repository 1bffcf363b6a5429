namespace EightOhm.Explaining;

/// <summary>How the trade calls a type or a figure whose name in the code does not say it in words: a <c>VbeMultiplier</c> is a V_BE multiplier.</summary>
/// <param name="words">The words, in lower case where the trade writes so; a symbol may stand in them.</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct | AttributeTargets.Property)]
public sealed class CalledAttribute(string words) : Attribute
{
    /// <summary>The words.</summary>
    public string Words { get; } = words;
}
