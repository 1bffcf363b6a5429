namespace EightOhm.Record;

/// <summary>The few things that a record asks of the disk, so that tests can stop between any two of them.</summary>
internal interface IFileLayer
{
    /// <summary>The file's bytes, or null when there is none.</summary>
    byte[]? Read(string path);

    /// <summary>Writes a whole file and waits until it is on the disk.</summary>
    void Write(string path, byte[] bytes);

    /// <summary>Puts a file in another's place in one step.</summary>
    void Rename(string from, string to);

    /// <summary>Removes a file that a killed process left behind, unless another is writing it now.</summary>
    void Discard(string path);
}
