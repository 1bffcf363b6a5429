using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>A record's place on the disk: read whole, replaced whole.</summary>
/// <remarks>The new text is written beside the old, flushed and renamed over it, so that a reader, or the next start after a power cut, finds the one or the other.</remarks>
internal sealed class RecordFile(string path, IFileLayer files)
{
    // Every notebook of a folder opens the same file, and what was read of it is never changed: the last serves whoever reads the same bytes.
    private static volatile LastRead? _last;

    private byte[]? _seen;

    public string Path { get; } = path;

    private string Part => Path + ".part";

    /// <summary>The content, or null when the file does not exist.</summary>
    /// <param name="nameless">The design's name where the file has none.</param>
    public RecordContent? Read(string nameless)
    {
        files.Discard(Part);
        _seen = files.Read(Path);
        if (_seen is null)
            return null;
        if (_last is { } last && last.Nameless == nameless && last.Bytes.AsSpan().SequenceEqual(_seen))
            return last.Content;
        try
        {
            var content = RecordReader.Read(_seen, nameless);
            _last = new(_seen, nameless, content);
            return content;
        }
        catch (JsonFault fault)
        {
            throw new RecordFileException(Path, fault.Line, fault.Message, fault.InnerException);
        }
    }

    /// <summary>Whether the file is not as this record has read or written it.</summary>
    public bool IsForeign() => files.Read(Path) is { } there ? _seen is null || !there.AsSpan().SequenceEqual(_seen) : _seen is not null;

    /// <summary>Replaces the file, unless it says the same already.</summary>
    public void Replace(byte[] bytes)
    {
        if (_seen is not null && bytes.AsSpan().SequenceEqual(_seen) && files.Read(Path) is { } there && bytes.AsSpan().SequenceEqual(there))
            return;
        for (var attempt = 1; ; attempt++)
        {
            RefuseForeignChange();
            files.Write(Part, bytes);
            try
            {
                files.Rename(Part, Path);
                break;
            }
            catch (FileNotFoundException) when (attempt < 3)
            {
                // Another process took the finished part for a stray and removed it: write it again.
            }
        }

        _seen = bytes;
    }

    private sealed record LastRead(byte[] Bytes, string Nameless, RecordContent Content);

    // Two notebooks on one record: the second must not silently write over what the first has put there.
    private void RefuseForeignChange()
    {
        var there = files.Read(Path);
        var same = there is null ? _seen is null : _seen is not null && there.AsSpan().SequenceEqual(_seen);
        if (!same)
            throw new RecordException($"{System.IO.Path.GetFileName(Path)} was {(there is null ? "removed" : "changed")} by another program or notebook since this one opened it. Open the record again (run the cell with DesignRecord.Open), then repeat this step.");
    }
}
