using EightOhm.Cli.Live.Inputs;
using EightOhm.Record;

namespace EightOhm.Cli.Live;

/// <content>What is tried, put back and kept.</content>
internal sealed partial class Workbench
{
    /// <summary>Tries a value of an input.</summary>
    /// <param name="design">The design's name; empty where there is one.</param>
    /// <param name="name">The input.</param>
    /// <param name="value">The value as it is typed; null where a slider's place is given.</param>
    /// <param name="fraction">The slider's place, 0 to 1.</param>
    /// <param name="isDragging">Whether the hand is still on the slider: then the record alone answers, and no cell runs.</param>
    /// <returns>The value tried.</returns>
    /// <exception cref="LiveRefusal">There is no such input, or the text is no value of its kind; nothing was moved.</exception>
    public string Try(string design, string name, string? value, double? fraction, bool isDragging)
    {
        string text;
        lock (gate)
        {
            var (folder, record) = DesignOf(design);
            text = value ?? At(folder, record, name, fraction);
            Set(record, name, text);
            if (!isDragging)
                Moved(folder, new Move(LiveFolder.FileOf(record), name, text));
        }

        if (isDragging)
            TellSheet(isPreview: true);
        else
            TellMoved();
        return text;
    }

    /// <summary>Puts an input, or all of a design, back to what is saved; what the chapter says where that is what was saved.</summary>
    /// <param name="design">The design.</param>
    /// <param name="name">The input; null for all that is tried.</param>
    public void PutBack(string design, string? name)
    {
        lock (gate)
        {
            var (folder, record) = DesignOf(design);
            var kept = folder.KeptOf(record);
            var names = name is not null ? [name] : folder.Tried().Where(t => t.Record == record).Select(t => t.Name).ToList();
            foreach (var input in names)
            {
                var saved = kept?.Entries.FirstOrDefault(e => e.Name == input);
                // Tried again when it is put back already: the person wants what the chapter says.
                var isAsSaved = saved is not null && InputText.Of(saved) == InputText.Of(record.EntryOf(input));
                var text = saved is { State: EntryState.Set } && !isAsSaved ? InputText.Of(saved) : null;
                Guarded(() =>
                {
                    var move = new Move(LiveFolder.FileOf(record), input, text);
                    move.Apply(record);
                    Moved(folder, move);
                });
                folder.Keeps.Remove((LiveFolder.FileOf(record), input));
            }
        }

        TellMoved();
    }

    /// <summary>Keeps what is tried: it is written with the next save.</summary>
    /// <exception cref="LiveRefusal">Nothing is tried.</exception>
    public void Keep()
    {
        lock (gate)
        {
            var tried = folders.SelectMany(f => f.Tried().Select(t => (f, t))).ToList();
            if (tried.Count == 0)
                throw new LiveRefusal("Nothing is tried: every input is as it is saved.");
            foreach (var (folder, t) in tried)
                folder.Keeps.Add((LiveFolder.FileOf(t.Record), t.Name));
        }

        TellSheet();
        TellFolder();
    }

    private void Moved(LiveFolder folder, Move move)
    {
        folder.Moves.RemoveAll(m => m.Record == move.Record && m.Name == move.Name);
        folder.Moves.Add(move);
        if (IsTrusted)
            calculator.Move();
    }

    private void TellMoved()
    {
        TellSheet(isPreview: true);
        TellInputs();
        TellFolder();
    }

    private static string At(LiveFolder folder, DesignRecord record, string name, double? fraction)
    {
        if (fraction is not { } place || !double.IsFinite(place))
            throw new LiveRefusal($"{name}: give a value with its unit, such as \"120 W\".");
        var now = record.Entries.FirstOrDefault(e => e.Name == name);
        var slider = now is null ? null : folder.Sliders.Of(now, folder.KeptInputsOf(record));
        return slider?.At(place) ?? throw new LiveRefusal($"{name} has no slider: type its value.");
    }

    private static void Set(DesignRecord record, string name, string text) => Guarded(() => record.Set(name, text));

    private static void Guarded(Action act)
    {
        try
        {
            act();
        }
        catch (RecordException e)
        {
            throw new LiveRefusal(e.Message);
        }
    }

    private (LiveFolder Folder, DesignRecord Record) DesignOf(string design) =>
        folders.Select(f => (f, Record: f.Find(design))).FirstOrDefault(f => f.Record is not null) is { Record: not null } found
            ? (found.f, found.Record)
            : throw new LiveRefusal(folders.All(f => f.Records.Count == 0)
                ? "There is no record beside the notebooks yet. Calculate the chapters first: their targets make it."
                : $"There is no design '{design}'. There are: {string.Join(", ", folders.SelectMany(f => f.Records).Select(r => r.Name))}.");
}
