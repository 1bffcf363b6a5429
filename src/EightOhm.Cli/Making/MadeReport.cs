using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Sizing;
using Spectre.Console;

namespace EightOhm.Cli.Making;

/// <summary>What was made, why, what it costs, what is missing, and what to do next.</summary>
internal sealed class MadeReport(IAnsiConsole output)
{
    public void Show(NewRequest request, FirstSizing sizing, MadeValues values, DeviceSet set)
    {
        var t = sizing.Targets;
        output.WriteLine($"Made {request.Folder}: {(t.Channels == 1 ? "one channel" : $"{t.Channels} channels")} of {Text(t.Power)} into {Text(t.Load)}, {Text(t.MinimumLoadPower!.Value)} into {Text(t.MinimumLoad!.Value)} at least, on {Text(t.Line)} {Text(t.Mains)}.");
        output.WriteLine();
        output.WriteLine($"Chosen from {set.Name}{(ReferenceEquals(set, DeviceSet.Shipped) ? " (invented devices; replace their cards by those of real ones)" : "")}:");
        foreach (var part in sizing.Parts)
            output.WriteLine($"  {part}");
        output.WriteLine("First choices:");
        foreach (var choice in sizing.Choices)
            output.WriteLine($"  {choice}");
        output.WriteLine();
        if (sizing.Remarks.Count > 0)
        {
            output.WriteLine("What it costs:");
            foreach (var sentence in sizing.Remarks)
                output.WriteLine($"  {sentence}");
            output.WriteLine();
        }

        string[] missing = [.. sizing.Missing, .. values.Without.Select(role => $"There is no card for the {role}: the set has none of its kind. Put one into the folder cards.")];
        output.WriteLine(missing.Length == 0 ? "The sizing found a device for everything; the notebooks judge it." : "What is missing:");
        foreach (var sentence in missing)
            output.WriteLine($"  {sentence}");
        output.WriteLine();
        var folder = request.Folder.Contains(' ', StringComparison.Ordinal) ? $"\"{request.Folder}\"" : request.Folder;
        output.WriteLine("Next:");
        output.WriteLine($"  eightohm run {folder}          judges the design and writes its book");
        output.WriteLine($"  eightohm run {folder} --save   keeps record and outputs too");
        output.WriteLine("  and open the notebooks in Jupyter: every choice stands there with its reason.");
        output.WriteLine("Mains, rails and stored charge can kill: local electrical codes and licensed practice come before any of this.");
    }

    private static string Text(object value) => QuantityFormat.Short(value);
}
