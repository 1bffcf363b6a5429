using EightOhm.Record;

namespace EightOhm.Cli.WhatIf;

/// <summary>Reads what was asked with --set and puts it into the records, or refuses.</summary>
internal static class SetValues
{
    /// <param name="records">The records of the run.</param>
    /// <param name="settings">Each "name=value with unit", or "name=" to give it back to the chapter.</param>
    public static IReadOnlyList<SetValue> Apply(IReadOnlyList<DesignRecord> records, IReadOnlyList<string> settings) =>
        [.. settings.Select(setting => Apply(records, setting))];

    private static SetValue Apply(IReadOnlyList<DesignRecord> records, string setting)
    {
        var parts = setting.Split('=', 2, StringSplitOptions.TrimEntries);
        if (parts is not [{ Length: > 0 } typed, var value])
            throw RunFailure.BadInput($"--set '{setting}' must be \"name=value with unit\", for example --set \"P=120 W\"; \"P=\" gives it back to the chapter.");
        if (records.Count == 0)
            throw RunFailure.BadInput($"--set '{setting}': there is no record beside the notebooks yet. Make it first: run the notebooks with --save and without --set.");

        var name = typed.Normalize();
        var holders = records.Where(r => r.Entries.Any(e => e.Name == name)).ToList();
        if (holders.Count > 1)
            throw RunFailure.BadInput($"--set '{setting}': {name} stands in {string.Join(" and in ", holders.Select(r => Path.GetFileName(r.Path)))}. Keep these designs in folders of their own.");
        if (holders.Count == 0)
            throw Unknown(records, setting, name);

        try
        {
            var record = holders[0];
            var before = record.EntryOf(name).Reads;
            if (value.Length == 0)
                record.ClearSet(name);
            else
                record.Set(name, value);
            return new SetValue(Path.GetFileName(record.Path), name, before, record.EntryOf(name).Reads, value.Length == 0);
        }
        catch (RecordException e)
        {
            throw RunFailure.BadInput($"--set '{setting}': {e.Message}");
        }
    }

    private static RunFailure Unknown(IReadOnlyList<DesignRecord> records, string setting, string name)
    {
        var names = records.SelectMany(r => r.Entries).Where(e => e.Role is EntryRole.Target or EntryRole.Choice or EntryRole.Assumption or EntryRole.Part).Select(e => e.Name).ToList();
        var nearest = NearestName.Of(name, names) is { } near ? $" Did you mean {near}?" : "";
        var all = names.Count == 0 ? "Nothing can be set: the record holds no target, choice, assumption or part." : $"What can be set: {string.Join(", ", names)}.";
        return RunFailure.BadInput($"--set '{setting}': the record has no {name}.{nearest} {all}");
    }
}
