namespace EightOhm.Record;

/// <summary>A requirement and how the present value stands to it.</summary>
/// <param name="Entry">The entry's name.</param>
/// <param name="Limit">What is asked.</param>
/// <param name="Says">The requirement in the designer's words, or null.</param>
/// <param name="Reads">The present value, or a dash.</param>
/// <param name="Margin">How far inside or outside; null when nobody can tell.</param>
/// <param name="State">"met", "not met", or "cannot tell: " and why.</param>
public sealed record Requirement(string Entry, EntryLimit Limit, string? Says, string Reads, Margin? Margin, string State)
{
    /// <summary>Whether it is met; null when nobody can tell.</summary>
    public bool? Met => Margin?.Met;
}
