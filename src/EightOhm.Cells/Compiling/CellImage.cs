using System.Text;
using EightOhm.Cells.Sources;

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
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(Format);
        writer.Write(cell.Key);
        writer.Write(cell.Slot);
        writer.Write(cell.HasValue);
        writer.Write(cell.BringsEightOhm);
        Bytes(writer, cell.Image);
        Bytes(writer, cell.Symbols);
        List(writer, cell.Notes, writer.Write);
        List(writer, cell.Files, writer.Write);
        writer.Write(cell.Writes is not null);
        List(writer, cell.Writes ?? [], w =>
        {
            Name(writer, w.Entry);
            writer.Write(w.Line);
            List(writer, w.Sources, s => Name(writer, s));
        });
        return stream.ToArray();
    }

    /// <summary>The cell of bytes; null where they are not those of one, or of another EightOhm.</summary>
    /// <param name="bytes">What <see cref="Write"/> gave.</param>
    public static CompiledCell? Read(byte[] bytes)
    {
        using var reader = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        try
        {
            if (reader.ReadInt32() != Format)
                return null;
            var (key, slot, hasValue, brings) = (reader.ReadString(), reader.ReadInt32(), reader.ReadBoolean(), reader.ReadBoolean());
            var (image, symbols) = (Bytes(reader), Bytes(reader));
            var (notes, files) = (List(reader, reader.ReadString), List(reader, reader.ReadString));
            var known = reader.ReadBoolean();
            var writes = List(reader, () => new EntryWrite(Name(reader), reader.ReadInt32(), List(reader, () => Name(reader))));
            return new(key, slot, image, symbols, hasValue, brings, notes, files, known ? writes : null, []);
        }
        catch (Exception e) when (e is IOException or FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    private static void Bytes(BinaryWriter writer, byte[] bytes)
    {
        writer.Write(bytes.Length);
        writer.Write(bytes);
    }

    // A length that lies must not take the memory first.
    private static byte[] Bytes(BinaryReader reader) =>
        reader.ReadInt32() is var length && length >= 0 && length <= reader.BaseStream.Length - reader.BaseStream.Position
            ? reader.ReadBytes(length)
            : throw new FormatException("It is cut off.");

    private static void List<T>(BinaryWriter writer, IReadOnlyCollection<T> items, Action<T> write)
    {
        writer.Write(items.Count);
        foreach (var item in items)
            write(item);
    }

    private static List<T> List<T>(BinaryReader reader, Func<T> read)
    {
        var count = reader.ReadInt32();
        if (count < 0 || count > reader.BaseStream.Length)
            throw new FormatException("It is cut off.");
        var items = new List<T>();
        for (var i = 0; i < count; i++)
            items.Add(read());
        return items;
    }

    private static void Name(BinaryWriter writer, EntryName name)
    {
        writer.Write(name.Record);
        writer.Write(name.Name);
        writer.Write(name.IsRequirement);
    }

    private static EntryName Name(BinaryReader reader) => new(reader.ReadString(), reader.ReadString(), reader.ReadBoolean());
}
