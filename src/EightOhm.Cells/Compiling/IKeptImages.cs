namespace EightOhm.Cells.Compiling;

/// <summary>Cells that were compiled before.</summary>
public interface IKeptImages
{
    /// <summary>A cell; null where it is not kept.</summary>
    /// <param name="key">The cell's key.</param>
    CompiledCell? Find(string key);

    /// <summary>Keeps a cell.</summary>
    /// <param name="cell">The cell.</param>
    void Add(CompiledCell cell);
}
