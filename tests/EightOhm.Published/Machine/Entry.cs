using System.Text.Json.Serialization;

namespace EightOhm.Published.Machine;

/// <summary>What a check found.</summary>
internal enum Verdict
{
    /// <summary>Ours rounds to what the source prints.</summary>
    Agrees,

    /// <summary>Ours does not, and we say why.</summary>
    Disagrees,

    /// <summary>Ours equals what an independent program computes; nothing printed was seen.</summary>
    Computed,

    /// <summary>Ours fits what the trade says; nobody in particular says it.</summary>
    TradeFact,

    /// <summary>The check failed or could not be made.</summary>
    Failed,
}

/// <summary>One line of the ledger.</summary>
/// <param name="Functions">What it tests.</param>
/// <param name="Source">Where the value comes from; for a failure the check's own name.</param>
/// <param name="Printed">What is printed or computed there.</param>
/// <param name="Ours">What the library says.</param>
/// <param name="Seen">How we know what the source prints, in words.</param>
/// <param name="Verdict">What was found.</param>
/// <param name="Note">Why, or which mistake it rules out.</param>
/// <param name="Work">The book or document without the place; empty when it does not count.</param>
internal sealed record Entry(
    IReadOnlyList<string> Functions,
    string Source,
    string Printed,
    string Ours,
    string Seen,
    Verdict Verdict,
    string Note,
    [property: JsonIgnore] string Work)
{
    public bool Counts => Verdict == Verdict.Agrees && Work.Length > 0;
}
