using System.Linq.Expressions;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>One line of the record as it stands now.</summary>
/// <param name="Name">The symbol.</param>
/// <param name="Role">Where the value comes from.</param>
/// <param name="Kind">The kind of quantity.</param>
/// <param name="State">In words: "given", "120 W, set; the chapter says 100 W", "computed", "found", "stale: P_d moved", "cannot be computed: …".</param>
/// <param name="IsCurrent">Whether the value can be relied on: neither stale nor missing.</param>
/// <param name="Value">The value in force, or null when a rule cannot be computed.</param>
/// <param name="Rule">A Let's rule as text, else null.</param>
/// <param name="Expression">A Let's rule as a lambda over the entries it names, for showing the working, tolerances and sensitivities; else null.</param>
/// <param name="From">The entries that it comes from.</param>
/// <param name="Note">What the chapter says about it.</param>
public sealed record Entry(
    string Name,
    EntryRole Role,
    QuantityKind Kind,
    string State,
    bool IsCurrent,
    object? Value,
    string? Rule,
    LambdaExpression? Expression,
    IReadOnlyList<string> From,
    string? Note)
{
    /// <summary>The value as it reads, or a dash when there is none.</summary>
    public string Reads => Value is null ? "–" : QuantityFormat.Long(Value);
}
