namespace EightOhm.Record;

/// <summary>How requirements stand, in words for a sentence.</summary>
internal static class VerdictWords
{
    /// <summary>One requirement: its standing, the value and where it was found, what is asked.</summary>
    public static string Of(Requirement requirement) => requirement.State switch
    {
        RequirementState.Met => $"met: {Found(requirement)}, where {requirement.Asked} is asked",
        RequirementState.NotMet => $"not met: {Found(requirement)} is {requirement.Reason}, where {requirement.Asked} is asked",
        _ => $"undecided: {requirement.Reason}",
    };

    /// <summary>Several: how many are met, the least margin; then those that are not, and those that are undecided.</summary>
    public static string Of(IReadOnlyList<Requirement> requirements)
    {
        var (met, missed) = (requirements.Where(r => r.State == RequirementState.Met).ToList(), requirements.Where(r => r.State == RequirementState.NotMet).ToList());
        var open = requirements.Where(r => r.Met is null).ToList();
        List<string> clauses = [Count(met.Count, missed.Count, requirements.Count)];
        // A margin compares with another only in the same unit; most are in per cent of the limit.
        if (met.Where(r => r.Margin is { Unit: "%" }).MinBy(r => r.Margin!.Amount) is { } nearest && met.Count > 1)
            clauses[0] += $", the nearest to its limit being {nearest.Label} with {Spare(nearest.Margin!)} to spare";
        if (missed.Count > 0)
            clauses.Add($"not met: {Lists.And([.. missed.Select(r => $"{r.Label} ({r.Reason}{At(r)})")])}");
        if (open.Count > 0)
            clauses.Add($"undecided: {Lists.And([.. open.Select(r => $"{r.Label} ({r.Reason})")])}");
        return string.Join("; ", clauses);
    }

    private static string Count(int met, int missed, int all) => (met, all) switch
    {
        (_, 0) => "nothing is required",
        (1, 1) => "the requirement is met",
        (0, 1) => missed == 1 ? "the requirement is not met" : "the requirement is undecided",
        (0, _) => $"none of {all} requirements is met",
        (2, 2) => "both requirements are met",
        _ when met == all => $"all {all} requirements are met",
        (1, _) => $"1 of {all} requirements is met",
        _ => $"{met} of {all} requirements are met",
    };

    private static string Spare(Margin margin) => margin.Amount == 0 ? "nothing" : (margin with { Side = null }).ToString();

    private static string Found(Requirement requirement) => requirement.Where is { } where ? $"{requirement.Value} at worst ({where})" : requirement.Value;

    private static string At(Requirement requirement) => requirement.Where is { } where ? $", at {where}" : "";
}
