using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Sizing;
using UnitsNet;

namespace EightOhm.Cli.Making;

/// <summary>What goes into the inputs of a design: asked for, sized, or left as it is; and the cards of its parts.</summary>
internal sealed class MadeValues
{
    private readonly AskedValues asked;
    private readonly Dictionary<string, (object Value, string? Because)> sized;

    public MadeValues(DesignTemplate template, AskedValues asked, FirstSizing sizing, DeviceSet set)
    {
        this.asked = asked;
        sized = sizing.Choices.ToDictionary(c => c.Name, c => (c.Value, (string?)c.Because), StringComparer.Ordinal);
        sized["R_Lmin"] = (sizing.Targets.MinimumLoad!.Value, null);
        sized["P_Lmin"] = (sizing.Targets.MinimumLoadPower!.Value, null);
        foreach (var input in template.Inputs.Where(i => i.IsPart).DistinctBy(i => (string)i.Value))
            Bring(input, sizing, set);
    }

    /// <summary>The cards by their files, as the notebooks name them.</summary>
    public Dictionary<string, string> Cards { get; } = new(StringComparer.Ordinal);

    /// <summary>Roles without a device: the set has none of that kind.</summary>
    public List<string> Without { get; } = [];

    /// <summary>The code of an input's value and of its reason; null where it stays.</summary>
    public (string? Value, string? Words) CodeOf(DesignInput input)
    {
        if (input.IsPart)
            return default;
        if (asked.Values.TryGetValue(input.Name, out var own))
            return (input.Code!.Write(own), null);
        if (!sized.TryGetValue(input.Name, out var made) || made.Value.GetType() != input.Code!.Kind.Type)
            return default;
        return (input.Code.Write(made.Value), made.Because is { } because && input.Words is var (_, what) ? Words(what, because) : null);
    }

    // What it is, then why: as lines that stand in a page.
    private static string Words(string what, string because)
    {
        const int most = 68;
        var text = because.StartsWith(what, StringComparison.Ordinal) ? because : $"{what}: {because}";
        var lines = new List<string> { "" };
        foreach (var word in text.Split(' '))
        {
            if (lines[^1].Length + word.Length > most)
                lines.Add("");
            lines[^1] += word + " ";
        }

        lines[^1] = lines[^1].TrimEnd();
        return string.Join(" +\n    ", lines.Select(l => Microsoft.CodeAnalysis.CSharp.SymbolDisplay.FormatLiteral(l, quote: true)));
    }

    private void Bring(DesignInput input, FirstSizing sizing, DeviceSet set)
    {
        var file = (string)input.Value;
        if (asked.Values.TryGetValue(AskedValues.Entry(input), out var own))
            Cards[file] = (string)own;
        else if (sizing.Parts.FirstOrDefault(p => p.Role == input.Name) is { } part)
            Cards[file] = part.Text;
        else if (AnyOf(set, input.CardType) is { } any)
            Cards[file] = set.TextOf(any);
        else
            Without.Add(input.Name);
    }

    private static DeviceCard? AnyOf(DeviceSet set, string? type) => set.Cards.FirstOrDefault(c => c.GetType().Name == (type ?? nameof(Transistor)));
}
