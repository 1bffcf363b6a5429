using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>Reads what was asked with --set and puts it into the records, or refuses.</summary>
internal static class SetValues
{
    /// <param name="records">The records of the run.</param>
    /// <param name="settings">Each "name=value with unit", or "name=" to give it back to the chapter.</param>
    public static IReadOnlyList<SetValue> Apply(IReadOnlyList<DesignRecord> records, IReadOnlyList<string> settings) =>
        [.. settings.SelectMany(setting => Apply(records, setting))];

    private static IReadOnlyList<SetValue> Apply(IReadOnlyList<DesignRecord> records, string setting)
    {
        var parts = setting.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts is not [{ Length: > 0 } typed, var value])
            throw RunFailure.BadInput($"--set '{setting}' must be \"name=value with unit\", for example --set \"P=120 W\"; \"P=\" gives it back to the chapter.");
        if (records.Count == 0)
            throw RunFailure.BadInput($"--set '{setting}': there is no record beside the notebooks yet. Make it first: run the notebooks with --save and without --set.");

        var name = typed.Normalize();
        var holders = records.Where(r => r.Entries.Any(e => e.Name == name)).ToList();
        // Designs in folders of their own are moved together: a reader compares them. Two records in one folder are one notebook's, and one is meant.
        if (holders.GroupBy(r => Path.GetDirectoryName(r.Path)).FirstOrDefault(g => g.Count() > 1) is { } both)
            throw RunFailure.BadInput($"--set '{setting}': {name} stands in {string.Join(" and in ", both.Select(r => Path.GetFileName(r.Path)))}. Keep these designs in folders of their own.");
        if (holders.Count == 0)
            throw Unknown(records, setting, name);

        try
        {
            return [.. holders.Select(record => Move(record, name, value, records.Count > 1 ? record.Name : ""))];
        }
        catch (RecordException e)
        {
            throw RunFailure.BadInput($"--set '{setting}': {e.Message}");
        }
    }

    private static SetValue Move(DesignRecord record, string name, string value, string design)
    {
        var before = record.EntryOf(name).Reads;
        if (value.Length == 0)
            record.ClearSet(name);
        else
            record.Set(name, value);
        return new SetValue(record.Path, design, name, before, record.EntryOf(name).Reads, value.Length == 0);
    }

    private static RunFailure Unknown(IReadOnlyList<DesignRecord> records, string setting, string name)
    {
        var names = records.SelectMany(r => r.Entries).Where(e => e.Role is EntryRole.Target or EntryRole.Choice or EntryRole.Assumption or EntryRole.Part).Select(e => e.Name).Distinct(StringComparer.Ordinal).ToList();
        var nearest = NearestName.Of(name, names) is { } near ? $" Did you mean {near}?" : "";
        var all = names.Count == 0 ? "Nothing can be set: the record holds no target, choice, assumption or part." : $"What can be set: {string.Join(", ", names)}.";
        return RunFailure.BadInput($"--set '{setting}': {(records.Count == 1 ? "the record has no" : "none of the records has")} {name}.{nearest} {all}");
    }
}
