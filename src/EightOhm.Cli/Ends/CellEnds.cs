using System.Globalization;

namespace EightOhm.Cli.Ends;

/// <summary>Counts of cells in words.</summary>
internal static class CellEnds
{
    /// <summary>How many cells were not calculated because of one, as the end of its sentence; empty for none.</summary>
    public static string After(int cells) => cells switch
    {
        0 => "",
        1 => " (With it 1 cell was not calculated.)",
        _ => string.Create(CultureInfo.InvariantCulture, $" (With it {cells} cells were not calculated.)"),
    };
}
