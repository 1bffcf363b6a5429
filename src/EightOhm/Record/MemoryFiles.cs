namespace EightOhm.Record;

/// <summary>No disk at all: what a scratch record keeps lives as long as the record.</summary>
internal sealed class MemoryFiles : IFileLayer
{
    private readonly Dictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    public byte[]? Read(string path) => _files.GetValueOrDefault(path);

    public void Write(string path, byte[] bytes) => _files[path] = bytes;

    public void Rename(string from, string to)
    {
        _files[to] = _files[from];
        _files.Remove(from);
    }

    public void Discard(string path) => _files.Remove(path);
}
