namespace EightOhm.Record;

/// <content>How requirements stand, as clauses for a sentence.</content>
public sealed partial class DesignRecord
{
    /// <summary>How one requirement stands, as a clause in words: met with its worst value, the limit and where; short by how much and where; or that
    /// nobody can tell, and why. It moves with the design: <c>Say($"The junction is {design.Verdict("junction")}.")</c>.</summary>
    /// <param name="label">The label as it was written, or the entry that a single requirement is about.</param>
    /// <returns>A clause without a full stop: "met: 113 °C at worst (4 Ω ∠45°, mains +10 %), where at most 125 °C is asked".</returns>
    /// <exception cref="RecordException">There is no such requirement, or there are several.</exception>
    public string Verdict(string label)
    {
        ArgumentNullException.ThrowIfNull(label);
        return Compliance([label]) is [var one]
            ? VerdictWords.Of(one)
            : throw new RecordException($"Several requirements are about {label}. Name one by its label, or write record.Verdicts(\"{label}\").");
    }

    /// <summary>How several requirements stand together, as a clause in words: how many are met and which has the least to spare, or which are not and by how much.</summary>
    /// <param name="labels">Labels as they were written, or entries that requirements are about; none for all requirements.</param>
    /// <returns>A clause without a full stop: "2 of 3 requirements are met; not met: clip power into 8 Ω (short by 5 W)".</returns>
    /// <exception cref="RecordException">A name is neither.</exception>
    public string Verdicts(params string[] labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        return VerdictWords.Of(labels.Length == 0 ? Compliance() : Compliance(labels));
    }
}
