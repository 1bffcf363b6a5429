namespace EightOhm.Circuits;

/// <summary>One connection of an element.</summary>
/// <param name="Name">The terminal's name: "a", "b", "c", "plus".</param>
/// <param name="Node">The node that it is on.</param>
public sealed record Terminal(string Name, string Node)
{
    /// <summary>"c on out".</summary>
    public override string ToString() => $"{Name} on {Node}";
}
