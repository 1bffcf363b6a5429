namespace EightOhm.Quantities;

/// <summary>The name under which a saved rule knows a function, a property or a type, whatever it is called in the code.</summary>
/// <remarks>Once a record may hold it, a name stays for good: rename the code freely and leave the name, or put the old name among the others.
/// Overloads share a name; the kinds of the operands tell them apart. On a type it names the constructor, and the type itself.
/// What may stand in a rule is immutable, depends on its operands alone, and touches nothing of the world.</remarks>
/// <param name="name">The name, such as "slew-rate.needed".</param>
/// <param name="others">Names that it had before.</param>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Property | AttributeTargets.Class | AttributeTargets.Struct)]
public sealed class RecordNameAttribute(string name, params string[] others) : Attribute
{
    /// <summary>The name.</summary>
    public string Name { get; } = name;

    /// <summary>Names that it had before, which files may still hold.</summary>
    public IReadOnlyList<string> Others { get; } = others;
}
