using EightOhm.Record;

namespace EightOhm.Cli.Live.Inputs;

/// <summary>The inputs of a design as they are saved, and what is asked of them there; looked at when first asked for.</summary>
/// <param name="record">The record as it is saved; null where it never was.</param>
internal sealed class KeptInputs(DesignRecord? record)
{
    private readonly Lazy<Dictionary<string, Entry>> entries = new(() => record?.Entries.ToDictionary(e => e.Name, StringComparer.Ordinal) ?? []);

    private readonly Lazy<ILookup<string, Requirement>> asked = new(() =>
        (record?.Compliance() ?? []).Where(r => r.Entry is not null).ToLookup(r => r.Entry!, StringComparer.Ordinal));

    /// <summary>An input as it is saved; null where it is not.</summary>
    public Entry? EntryOf(string name) => entries.Value.GetValueOrDefault(name);

    /// <summary>What is asked of an input itself.</summary>
    public SliderEnds EndsOf(string name) => SliderEnds.Of(asked.Value[name]);
}
