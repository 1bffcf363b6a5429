using System.Text.Json.Nodes;
using EightOhm.Cli.Output;
using EightOhm.Cli.WhatIf;

namespace EightOhm.Cli.Live;

/// <content>Saving, and what other programs do to the files meanwhile.</content>
internal sealed partial class Workbench
{
    // The files of the records that another program changed, as folder and name.
    private readonly Dictionary<(LiveFolder Folder, string Name), byte[]?> foreignRecords = [];

    // What each file's stamp and length were when it was read last.
    private readonly Dictionary<string, (DateTime Written, long Length)> glances = new(StringComparer.Ordinal);

    private bool IsUnsaved => Chapters.Any(c => c.IsUnsaved) || folders.Any(f => f.Keeps.Count > 0);

    /// <summary>Writes the notebooks and the record together, or neither.</summary>
    /// <exception cref="LiveRefusal">Something is tried and not decided, a file was changed by another program, or the disk refuses; nothing was written.</exception>
    public async Task SaveAsync()
    {
        // What the running cell is about to write into the record would be in the one file and not in the other.
        var waits = false;
        try
        {
            await calculator.SettledAsync(
                () =>
                {
                    LookAtDisk(isThorough: true);
                    lock (gate)
                        Save();
                },
                () =>
                {
                    waits = true;
                    Tell(new JsonObject { ["type"] = "kernel", ["state"] = "waited-for", ["words"] = "the save waits for the cell that is running; Stop ends that" });
                });
        }
        finally
        {
            if (waits)
                Tell(new JsonObject { ["type"] = "kernel", ["state"] = "ready", ["words"] = "" });
        }

        TellFolder();
        TellSheet();
        TellInputs();
    }

    /// <summary>Drops what was edited and tried: everything is again as it is on the disk.</summary>
    public async Task AsSavedAsync()
    {
        await calculator.DropAsync(Reopen);
        TellEverything();
    }

    /// <summary>Takes a file as it is on the disk; what was changed in it here is dropped.</summary>
    /// <param name="chapter">The chapter; null or empty for the records.</param>
    public async Task TakeFileAsync(string? chapter)
    {
        await calculator.PauseAsync(() =>
        {
            lock (gate)
            {
                // The record is what all chapters hang on: all of them anew. What is edited in other chapters must not go with it.
                if (string.IsNullOrEmpty(chapter) && Chapters.FirstOrDefault(c => c.IsUnsaved) is { } edited)
                    throw new LiveRefusal($"{edited.Id} has changes that are not saved, and they would be lost with the record's. Choose \"keep mine\", or drop them first.");
                if (!string.IsNullOrEmpty(chapter) && Chapters.FirstOrDefault(c => c.IsUnsaved && c.Id != chapter) is { } other)
                    throw new LiveRefusal($"{other.Id} has changes that are not saved. Save it, or drop its changes, before {chapter} is taken from the disk.");
            }

            Reopen();
        });
        TellEverything();
    }

    /// <summary>Keeps what is here: the next save writes over what another program has put there.</summary>
    /// <param name="chapter">The chapter; null or empty for the records.</param>
    public void KeepMine(string? chapter)
    {
        lock (gate)
        {
            if (string.IsNullOrEmpty(chapter))
            {
                foreach (var ((folder, name), bytes) in foreignRecords)
                    folder.Copy.TakeAsRead(name, bytes);
                foreignRecords.Clear();
            }
            else if (ChapterOf(chapter).Chapter is { Foreign: { } there } open)
            {
                open.KeepOver(there);
            }
        }

        TellFolder();
    }

    /// <summary>Looks whether another program has changed a file, and tells of it once.</summary>
    /// <param name="isThorough">Whether files are read that seem to be as they were. A glance takes time stamp and length for the whole: it misses a write of
    /// equal length within the grain of the disk's clock, and one that puts the old stamp back. Before anything is written over, all is read.</param>
    public void LookAtDisk(bool isThorough = false)
    {
        var news = new List<JsonObject>();
        lock (gate)
        {
            foreach (var chapter in Chapters.Where(c => IsTouched(c.File.Path) || isThorough))
            {
                var there = Bytes(chapter.File.Path);
                if (there is null || Same(there, chapter.File.Read))
                {
                    chapter.Foreign = null;
                    continue;
                }

                if (chapter.Foreign is null || !Same(chapter.Foreign, there))
                    news.Add(Changed(chapter.Id, chapter.File.FileLabel));
                chapter.Foreign = there;
            }

            foreach (var folder in folders)
            {
                foreach (var (name, read) in folder.Copy.Read.Where(r => IsTouched(Path.Combine(folder.Home, r.Key)) || isThorough))
                {
                    var there = Bytes(Path.Combine(folder.Home, name));
                    if (there is not null && Same(there, read))
                        foreignRecords.Remove((folder, name));
                    else if (!foreignRecords.TryGetValue((folder, name), out var known) || !(there is null ? known is null : known is not null && Same(there, known)))
                    {
                        foreignRecords[(folder, name)] = there;
                        news.Add(Changed(null, name));
                    }
                }
            }
        }

        news.ForEach(Tell);
    }

    private static JsonObject Changed(string? chapter, string file) => new()
    {
        ["type"] = "disk",
        ["chapter"] = chapter,
        ["words"] = $"{file} was changed by another program. Nothing is written over it: take the file's, or keep yours.",
    };

    private void Save()
    {
        if (folders.SelectMany(f => f.Tried().Where(t => !f.Keeps.Contains((LiveFolder.FileOf(t.Record), t.Name)))).FirstOrDefault() is { Record: not null } tried)
            throw new LiveRefusal($"{tried.Name} = {tried.Now} is tried and not kept; nothing was saved. Keep it, or put it back to {tried.Before}, and save again.");
        if (Chapters.FirstOrDefault(c => c.Foreign is not null) is { } foreign)
            throw new LiveRefusal($"{foreign.File.FileLabel} was changed by another program; nothing was saved. Take the file's, or keep yours, and save again.");
        if (foreignRecords.Keys.FirstOrDefault() is { Name: not null } record)
            throw new LiveRefusal($"{record.Name} was changed by another program; nothing was saved. Take the file's, or keep yours, and save again.");

        try
        {
            Write();
        }
        catch (RunFailure failure)
        {
            throw new LiveRefusal(failure.Message);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LiveRefusal($"The disk refuses: {e.Message} Nothing was saved, and nothing here is lost. Make room, or make the folder writable, and save again.");
        }

        foreach (var folder in folders)
            folder.Saved();
    }

    private void Write()
    {
        using var saved = new SavedFiles(root, disk);
        var written = new List<(LiveChapter Chapter, byte[] Bytes)>();
        foreach (var folder in folders)
        {
            var now = folder.Now();
            var isKept = folder.Chapters.All(c => c.IsCurrent);
            // A folder where nothing was done keeps the stamps that it has.
            var isTouched = folder.Chapters.Any(c => c.IsUnsaved) || folder.Keeps.Count > 0;
            if (isTouched)
                KeptOutputs.Stamp(now, isKept);
            foreach (var chapter in folder.Chapters)
            {
                var bytes = chapter.File.ToBytes();
                // Of a chapter that is as it was, the stamp alone may be another: its record moved.
                if (!Same(bytes, chapter.File.Read) && isTouched)
                {
                    saved.Add(chapter.File.Path, chapter.File.Read, bytes);
                    written.Add((chapter, bytes));
                }
            }

            now.AddTo(saved);
        }

        saved.Publish(null);
        foreach (var (chapter, bytes) in written)
            chapter.Saved(bytes);
    }

    private void Reopen()
    {
        lock (gate)
        {
            var before = folders;
            var wasInHand = inHand?.Id;
            try
            {
                Read();
            }
            catch (RunFailure failure)
            {
                folders = before;
                throw new LiveRefusal(failure.Message);
            }

            foreach (var folder in before.Where(f => f.Process is not null))
                calculator.Leave(folder);
            foreignRecords.Clear();
            inHand = Chapters.FirstOrDefault(c => c.Id == wasInHand);
            looked.IntersectWith(Chapters.Select(c => c.Id));
        }
    }

    private void TellEverything()
    {
        List<JsonObject> news;
        lock (gate)
            news = [FolderNews(), .. Chapters.Where(c => looked.Contains(c.Id)).Select(ChapterNews), SheetOf(isPreview: false), InputsOf()];
        news.ForEach(Tell);
    }

    // The stamp is taken before the file is read: a write in between is seen the next time.
    private bool IsTouched(string path)
    {
        var file = new FileInfo(path);
        var now = file.Exists ? (file.LastWriteTimeUtc, file.Length) : (default, -1);
        var isTouched = !glances.TryGetValue(path, out var before) || before != now;
        glances[path] = now;
        return isTouched;
    }

    private static byte[]? Bytes(string path)
    {
        try
        {
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static bool Same(byte[] a, byte[] b) => a.AsSpan().SequenceEqual(b);
}
