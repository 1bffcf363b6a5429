using System.Text;
using EightOhm.Devices;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Sizing;
using Spectre.Console;

namespace EightOhm.Cli.Making;

/// <summary>Makes the folder of a design: notebooks with its own values, cards, and its name.</summary>
internal sealed class Maker(IAnsiConsole output, DesignTemplate template)
{
    /// <exception cref="RunFailure">Something asked for cannot be; nothing was written.</exception>
    public int Run(NewRequest request)
    {
        var folder = NewFolder.Check(request.Folder);
        if (request.Name is not null && string.IsNullOrWhiteSpace(request.Name))
            throw RunFailure.BadInput("--name must not be empty; leave it out for the folder's name.");
        var asked = AskedValues.Read(request.Set, template);
        var set = Devices(request.Devices);
        var sizing = Sized(asked, set);
        var values = new MadeValues(template, asked, sizing, set);
        NewFolder.Make(folder, at =>
        {
            foreach (var (name, bytes) in template.With(values.CodeOf))
                NewFolder.Write(at, name, bytes);
            foreach (var (file, text) in values.Cards)
                NewFolder.Write(at, file, Encoding.UTF8.GetBytes(text));
            if (request.Name is not null)
            {
                var record = DesignRecord.Open(Path.Combine(at, "record.json"));
                record.Name = request.Name;
                record.Save();
            }
        });
        new MadeReport(output).Show(request, sizing, values, set);
        return ExitCode.Done;
    }

    private static DeviceSet Devices(string? folder)
    {
        try
        {
            return folder is null ? DeviceSet.Shipped : DeviceSet.Load(folder);
        }
        catch (CardException e)
        {
            throw RunFailure.BadInput($"--devices '{folder}': {e.Message}");
        }
    }

    private static FirstSizing Sized(AskedValues asked, DeviceSet set)
    {
        try
        {
            return FirstSizing.Of(asked.Targets(), set, asked.Basis());
        }
        catch (RefusedValueException e)
        {
            throw RunFailure.BadInput(e.Message);
        }
    }
}
