namespace EightOhm.Cli.Printing;

/// <summary>What the person asked of the document.</summary>
/// <param name="WithCode">Whether the cells' code is printed; the results are in any case.</param>
/// <param name="Revision">What the title page calls this state of the design; null for the record's own fingerprint.</param>
/// <param name="Date">The date on the title page.</param>
internal sealed record PrintOptions(bool WithCode, string? Revision, DateOnly Date);
