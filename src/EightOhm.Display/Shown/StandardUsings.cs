namespace EightOhm.Display;

/// <summary>What a cell or a program brings in to write as the chapters do. A room that announces itself is among it.</summary>
/// <remarks>A cell gets it from the extension, a program that references the package from its <c>EightOhm.Display.props</c> where implicit usings are on
/// (<c>EightOhmUsings</c> set to <c>false</c> leaves it away); a test compares both with this.</remarks>
public static class StandardUsings
{
    // What every room stands on, then the rooms.
    private static readonly string[] Floor = ["Quantities", "Explaining", "Finding", "Record", "Teaching", "Display", "Display.Figures", "Display.Schematics", "Display.Tables"];

    /// <summary>The namespaces.</summary>
    public static IReadOnlyList<string> Namespaces { get; } =
        ["UnitsNet", "EightOhm", .. Floor.Concat(Rooms.All.Select(r => r.Name)).Select(n => $"EightOhm.{n}")];

    /// <summary>The classes whose functions are written bare: <c>Sqrt</c>, <c>pi</c>, <c>Explain</c>, <c>Say</c>.</summary>
    public static IReadOnlyList<string> Statics { get; } = [.. new[] { typeof(Quantities.Maths), typeof(Quantities.Constants), typeof(Explaining.Workings), typeof(Finding.Finder), typeof(Sentences) }.Select(t => t.FullName!)];

    /// <summary>Names that two namespaces hold, with the type that is meant. In the trade a thermal resistance is in K/W; UnitsNet's is one per area.</summary>
    public static IReadOnlyList<(string Name, string Type)> Aliases { get; } = [(nameof(ThermalResistance), typeof(ThermalResistance).FullName!)];

    /// <summary>All of it as C#, a using after the other.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        .. Namespaces.Select(n => $"using {n};"),
        .. Statics.Select(s => $"using static {s};"),
        .. Aliases.Select(a => $"using {a.Name} = {a.Type};"),
    ];
}
