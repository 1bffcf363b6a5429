using System.Collections.Frozen;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Sources;

/// <summary>What an argument of a record's verb is.</summary>
internal enum Takes
{
    /// <summary>The name of the entry that it makes or moves.</summary>
    Entry,

    /// <summary>A role of a part: a name of an entry, with an underscore for each space.</summary>
    Role,

    /// <summary>The label of a requirement.</summary>
    Label,

    /// <summary>The label of a requirement and the name of the entry it is about.</summary>
    LabelOfEntry,

    /// <summary>A value, or a rule whose parameters name entries where a function stands.</summary>
    Value,

    /// <summary>A value, a rule, or the name of an entry where a string stands.</summary>
    Limit,

    /// <summary>The name of an entry that it reads, or several.</summary>
    Read,

    /// <summary>A label of a requirement that it reads, or the name of the entry it is about, or several.</summary>
    ReadLabel,

    /// <summary>A rule: its parameters name entries or conditions.</summary>
    Rule,

    /// <summary>Conditions that a requirement holds over.</summary>
    Conditions,

    /// <summary>The name of a condition.</summary>
    Condition,

    /// <summary>The name of a condition that is an entry as well.</summary>
    ConditionOfEntry,

    /// <summary>Words, and what a reader finds better himself.</summary>
    Words,
}

/// <summary>What a record's verb gives back.</summary>
internal enum Gives
{
    /// <summary>Nothing that hangs on an entry.</summary>
    Nothing,

    /// <summary>The value in force of the entry that it makes.</summary>
    InForce,

    /// <summary>The value that it was given.</summary>
    Value,

    /// <summary>What it read.</summary>
    Read,

    /// <summary>Entries, each into the variable of its name.</summary>
    Variables,

    /// <summary>Something that hangs on every entry.</summary>
    All,

    /// <summary>A requirement, which may be given its limit yet.</summary>
    Requirement,

    /// <summary>The same requirement with a limit.</summary>
    Limited,

    /// <summary>Conditions.</summary>
    Conditions,

    /// <summary>The worst of a rule over conditions: its parameters name conditions or entries.</summary>
    Worst,

    /// <summary>The record of a file.</summary>
    Record,

    /// <summary>A record in memory.</summary>
    ScratchRecord,
}

/// <summary>A verb: a method or a property of the record's types.</summary>
/// <param name="Type">The simple name of the type, in the namespace of the record; "*" for whatever type has it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Gives">What it gives back.</param>
/// <param name="Parts">What its arguments are, in order; those beyond are as the last.</param>
internal sealed record Verb(string Type, string Name, Gives Gives, params Takes[] Parts)
{
    /// <summary>Whether it makes or moves the entry that it names.</summary>
    public bool Writes => Parts is [Takes.Entry or Takes.Role, ..];

    /// <summary>What an argument is: as the table says, but as the parameter's type says where overloads differ.</summary>
    public Takes Of(IParameterSymbol parameter)
    {
        var part = Parts.Length == 0 ? Takes.Words : Parts[Math.Min(parameter.Ordinal, Parts.Length - 1)];
        if (part is Takes.Words && parameter.Ordinal > 0 && Gives is Gives.Requirement)
            part = OfARequirement(parameter);
        return part;
    }

    // Require(label, "entry"), Require(label, over, rule), Require(entry, limit, says).
    private static Takes OfARequirement(IParameterSymbol parameter)
    {
        if (Kinds.IsFunction(parameter.Type))
            return Takes.Rule;
        if (parameter.Type.SpecialType == SpecialType.System_String)
            return parameter.Ordinal == 1 ? Takes.Read : Takes.Words;
        return parameter.Type.Name.Contains("Condition", StringComparison.Ordinal) ? Takes.Conditions : Takes.Value;
    }
}

/// <summary>The record's verbs, as data: those of today and those that they replace.</summary>
internal static class Verbs
{
    private static readonly Verb[] All =
    [
        new("DesignRecord", "Open", Gives.Record, Takes.Words),
        new("DesignRecord", "Load", Gives.Record, Takes.Words),
        new("DesignRecord", "Scratch", Gives.ScratchRecord, Takes.Words),
        new("DesignRecord", "Target", Gives.InForce, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Choose", Gives.InForce, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Assume", Gives.InForce, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Given", Gives.InForce, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Part", Gives.InForce, Takes.Role, Takes.Value, Takes.Words),
        new("DesignRecord", "Derive", Gives.InForce, Takes.Entry, Takes.Rule, Takes.Words),
        new("DesignRecord", "Let", Gives.InForce, Takes.Entry, Takes.Rule, Takes.Words),
        new("DesignRecord", "Compute", Gives.Value, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Found", Gives.Value, Takes.Entry, Takes.Value, Takes.Words),
        new("DesignRecord", "Get", Gives.Read, Takes.Read),
        new("DesignRecord", "Recall", Gives.Variables),
        new("DesignRecord", "EntryOf", Gives.Read, Takes.Read),
        new("DesignRecord", "EntriesOf", Gives.Read, Takes.Read),
        new("DesignRecord", "Explain", Gives.Read, Takes.Read),
        new("DesignRecord", "Compliance", Gives.Read, Takes.ReadLabel),
        new("DesignRecord", "Verdict", Gives.Read, Takes.ReadLabel),
        new("DesignRecord", "Verdicts", Gives.Read, Takes.ReadLabel),
        new("DesignRecord", "Require", Gives.Requirement, Takes.Label, Takes.Words),
        new("DesignRecord", "Conditions", Gives.Conditions),
        new("DesignRecord", "Set", Gives.Nothing, Takes.Entry, Takes.Value),
        new("DesignRecord", "ClearSet", Gives.Nothing, Takes.Entry),
        new("DesignRecord", "Remove", Gives.Nothing, Takes.Entry),
        new("DesignRecord", "Save", Gives.Nothing),
        new("DesignRecord", "Batch", Gives.Nothing),
        new("DesignRecord", "Name", Gives.Nothing),
        new("DesignRecord", "Path", Gives.Nothing),
        new("DesignRecord", "Entries", Gives.All),
        new("*", "AtMost", Gives.Limited, Takes.Limit),
        new("*", "AtLeast", Gives.Limited, Takes.Limit),
        new("*", "Between", Gives.Limited, Takes.Limit),
        new("*", "Range", Gives.Conditions, Takes.Condition, Takes.Value, Takes.Value, Takes.Words),
        new("*", "Cases", Gives.Conditions, Takes.Condition, Takes.Value, Takes.Words),
        new("*", "Spread", Gives.Conditions, Takes.ConditionOfEntry, Takes.Value, Takes.Words),
        new("*", "Highest", Gives.Worst, Takes.Rule),
        new("*", "Lowest", Gives.Worst, Takes.Rule),
    ];

    private static readonly FrozenDictionary<(string, string), Verb> Known = All.ToFrozenDictionary(v => (v.Type, v.Name));

    // What is not in the table may read and move anything.
    private static readonly Verb Other = new("DesignRecord", "", Gives.All);

    /// <summary>The names that a cell must say to have to do with a record at all.</summary>
    public static FrozenSet<string> Names { get; } = All.Select(v => v.Name).Append("DesignRecord").ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The verb that a method or a property is; null when it is none.</summary>
    public static Verb? Find(ISymbol member)
    {
        if (Kinds.Root(member) != "EightOhm" || member.ContainingNamespace.Name != "Record")
            return null;
        var type = member is IMethodSymbol { IsExtensionMethod: true } extension ? (extension.ReducedFrom ?? extension).Parameters[0].Type.Name : member.ContainingType.Name;
        if (type == "DesignRecord" && Known.TryGetValue((type, member.Name), out var verb))
            return verb;
        if (!member.IsStatic && Known.TryGetValue(("*", member.Name), out verb))
            return verb;
        return Kinds.IsRecord(member.ContainingType) && !member.IsStatic && member.Name is not ("ToString" or "Equals" or "GetHashCode" or "GetType") ? Other : null;
    }

    /// <summary>Whether a verb is one that the table does not know.</summary>
    public static bool IsUnknown(Verb verb) => ReferenceEquals(verb, Other);
}
