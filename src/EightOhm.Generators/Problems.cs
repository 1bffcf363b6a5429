using Microsoft.CodeAnalysis;

namespace EightOhm.Generators;

/// <summary>The build errors of a formula that cannot be shown.</summary>
internal static class Problems
{
    public static readonly DiagnosticDescriptor Statement = Error(
        "EOHM001", "A formula's statement cannot be shown", "'{0}' cannot be shown: {1}. Write locals, then cases (if … return), then a return; guards call Guard.");

    public static readonly DiagnosticDescriptor Expression = Error(
        "EOHM002", "A formula's expression cannot be shown", "'{0}' ({1}) cannot be shown; docs/formulas.md lists what can");

    public static readonly DiagnosticDescriptor Partial = Error(
        "EOHM003", "A formula's type must be partial", "{0} holds the formula {1}, so it must be partial: its steps are written beside it");

    public static readonly DiagnosticDescriptor Source = Error(
        "EOHM004", "A formula needs its source", "{0} must name its source: a textbook, standard or datasheet with page, or \"common practice, no source\"");

    public static readonly DiagnosticDescriptor WholeDivision = Error(
        "EOHM005", "A formula divides whole numbers", "'{0}' divides whole numbers and drops the rest; write {1}");

    private static DiagnosticDescriptor Error(string id, string title, string message) =>
        new(id, title, message, "EightOhm.Generators", DiagnosticSeverity.Error, isEnabledByDefault: true);
}
