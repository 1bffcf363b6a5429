using EightOhm.Display;

namespace EightOhm.Cells;

/// <summary>What a cell sees without a using.</summary>
public static class CellUsings
{
    /// <summary>What EightOhm brings in, as the one line of C# that is run before the first cell.</summary>
    public static string Script { get; } = string.Join(' ', StandardUsings.All);
}
