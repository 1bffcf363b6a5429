namespace EightOhm.Cells.Compiling;

/// <summary>A compiled cell as bytes: for the folder beside the notebooks, and for the process that runs it.</summary>
public static class CellImage
{
    private const int Format = 1;

    /// <summary>The cell as bytes.</summary>
    /// <param name="cell">A cell that compiled.</param>
    public static byte[] Write(CompiledCell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return KeptBytes.Of(Format, writer =>
        {
            writer.Write(cell.Key);
            writer.Write(cell.Slot);
            writer.Write(cell.HasValue);
            writer.Write(cell.BringsEightOhm);
            writer.WriteBlock(cell.Image);
            writer.WriteBlock(cell.Symbols);
            writer.WriteList(cell.Notes, writer.Write);
            writer.WriteList(cell.Files, writer.Write);
            writer.Write(cell.Writes is not null);
            writer.WriteWrites(cell.Writes ?? []);
        });
    }

    /// <summary>The cell of bytes; null where they are not those of one, or of another EightOhm.</summary>
    /// <param name="bytes">What <see cref="Write"/> gave.</param>
    public static CompiledCell? Read(byte[] bytes) => KeptBytes.Read(bytes, Format, reader =>
    {
        var (key, slot, hasValue, brings) = (reader.ReadString(), reader.ReadInt32(), reader.ReadBoolean(), reader.ReadBoolean());
        var (image, symbols) = (reader.ReadBlock(), reader.ReadBlock());
        var (notes, files) = (reader.ReadList(reader.ReadString), reader.ReadList(reader.ReadString));
        var known = reader.ReadBoolean();
        var writes = reader.ReadWrites();
        return new CompiledCell(key, slot, image, symbols, hasValue, brings, notes, files, known ? writes : null, []);
    });
}
