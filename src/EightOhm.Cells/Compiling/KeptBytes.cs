using System.Text;
using EightOhm.Cells.Sources;

namespace EightOhm.Cells.Compiling;

/// <summary>How what is kept is written as bytes and read again; bytes may be cut off or anybody's.</summary>
internal static class KeptBytes
{
    /// <summary>Bytes of a format.</summary>
    /// <param name="format">Its number.</param>
    /// <param name="write">Writes what follows the number.</param>
    public static byte[] Of(int format, Action<BinaryWriter> write)
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(format);
        write(writer);
        writer.Flush();
        return stream.ToArray();
    }

    /// <summary>What was written; null where the bytes are of another format, or nothing that <see cref="Of"/> gave.</summary>
    /// <param name="bytes">The bytes.</param>
    /// <param name="format">The format's number.</param>
    /// <param name="read">Reads what follows the number.</param>
    public static T? Read<T>(byte[] bytes, int format, Func<BinaryReader, T?> read)
        where T : class
    {
        using var reader = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        try
        {
            return reader.ReadInt32() == format ? read(reader) : null;
        }
        catch (Exception e) when (e is IOException or FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    public static void WriteBlock(this BinaryWriter writer, byte[] bytes)
    {
        writer.Write(bytes.Length);
        writer.Write(bytes);
    }

    // A length that lies must not take the memory first.
    public static byte[] ReadBlock(this BinaryReader reader) =>
        reader.ReadInt32() is var length && length >= 0 && length <= reader.BaseStream.Length - reader.BaseStream.Position
            ? reader.ReadBytes(length)
            : throw new FormatException("It is cut off.");

    public static void WriteList<T>(this BinaryWriter writer, IReadOnlyCollection<T> items, Action<T> write)
    {
        writer.Write(items.Count);
        foreach (var item in items)
            write(item);
    }

    public static List<T> ReadList<T>(this BinaryReader reader, Func<T> read)
    {
        var count = reader.ReadInt32();
        if (count < 0 || count > reader.BaseStream.Length)
            throw new FormatException("It is cut off.");
        var items = new List<T>();
        for (var i = 0; i < count; i++)
            items.Add(read());
        return items;
    }

    public static void WriteName(this BinaryWriter writer, EntryName name)
    {
        writer.Write(name.Record);
        writer.Write(name.Name);
        writer.Write(name.IsRequirement);
    }

    public static EntryName ReadName(this BinaryReader reader) => new(reader.ReadString(), reader.ReadString(), reader.ReadBoolean());

    public static void WriteWrites(this BinaryWriter writer, IReadOnlyCollection<EntryWrite> writes) => writer.WriteList(writes, w =>
    {
        writer.WriteName(w.Entry);
        writer.Write(w.Line);
        writer.WriteList(w.Sources, writer.WriteName);
    });

    public static List<EntryWrite> ReadWrites(this BinaryReader reader) =>
        reader.ReadList(() => new EntryWrite(reader.ReadName(), reader.ReadInt32(), reader.ReadList(reader.ReadName)));
}
