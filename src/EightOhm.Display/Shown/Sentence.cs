namespace EightOhm.Display;

/// <summary>A sentence about a design with its values in it: a paragraph on a page, a line on a console.</summary>
/// <param name="Text">The sentence as it reads.</param>
public sealed record Sentence(string Text)
{
    /// <summary>The sentence as it reads.</summary>
    public override string ToString() => Text;
}
