namespace EightOhm.Record;

/// <summary>A requirement that a run did not come to, so that its limit is not known.</summary>
/// <param name="Label">Its label as the cell writes it.</param>
/// <param name="Entry">The symbol of the entry that it is about; null where it is about the worst over conditions, or nobody can tell.</param>
public sealed record LostRequirement(string Label, string? Entry);
