using System.Globalization;
using System.Text;

namespace EightOhm.Display.Figures;

/// <summary>The colours of figures by day and by night, and the dashes, marker shapes and hatches that say the same without colour.</summary>
internal static class Palette
{
    public const string Font = "system-ui,-apple-system,'Segoe UI',Roboto,'Noto Sans','DejaVu Sans',sans-serif";

    /// <summary>How strongly what lies below a line is filled.</summary>
    public const double AreaOpacity = 0.22;

    public static readonly (string Light, string Dark) Paper = ("#ffffff", "#15181c");
    public static readonly (string Light, string Dark) Ink = ("#1d2127", "#e6e8ea");
    public static readonly (string Light, string Dark) Soft = ("#575e68", "#a7aeb8");
    public static readonly (string Light, string Dark) Grid = ("#d9dce0", "#363b43");
    public static readonly (string Light, string Dark) Faint = ("#eceef0", "#262a30");
    public static readonly (string Light, string Dark) Limit = ("#a3262a", "#f08a86");

    private static readonly (string Light, string Dark)[] Lines =
    [
        ("#17557e", "#7ab8e0"), ("#a8530f", "#e8a265"), ("#2d6e4b", "#7fc79d"),
        ("#7b3f77", "#d39bd0"), ("#6f6410", "#d3c65f"), ("#4b5563", "#b6bfcb"),
    ];

    private static readonly string[] Dashes = ["", "8 4", "2 3", "9 3 2 3", "14 4", "6 3 2 3 2 3"];
    private static readonly string[] LimitDashes = ["10 3", "3 3", "10 3 3 3"];
    private static readonly string[] Shapes = ["circle", "square", "diamond", "triangle-up", "x", "triangle-down"];
    private static readonly string[] Hatches = ["", "/", ".", "\\", "x", "-"];

    public static (string Light, string Dark) Line(int style) => Lines[style];

    /// <summary>Lengths of ink and gap in pixels; empty for an unbroken line.</summary>
    public static string Dash(int style) => Dashes[style];

    /// <summary>The dash of a figure's first, second, third limit: ink and gap in pixels.</summary>
    public static string LimitDash(int place) => LimitDashes[place % LimitDashes.Length];

    public static string Shape(int style) => Shapes[style];

    public static string Hatch(int style) => Hatches[style];

    /// <summary>A style that exists: past the last one they begin again.</summary>
    public static int Turn(int style) => ((style % Lines.Length) + Lines.Length) % Lines.Length;

    /// <summary>What each colour of the day becomes by night.</summary>
    public static IReadOnlyDictionary<string, string> ByNight { get; } =
        Lines.Concat([Paper, Ink, Soft, Grid, Faint, Limit]).ToDictionary(c => c.Light, c => c.Dark);

    /// <summary>The style sheet of a static picture that uses these line styles.</summary>
    public static string StyleSheet(IEnumerable<int> styles, int breakpoint)
    {
        var used = styles.Distinct().Order().ToArray();
        return $"text{{font-family:{Font}}}.title{{font-weight:600}}.end,.mark{{font-weight:500}}.mark,.limit,.value{{stroke-width:3;stroke-linejoin:round;paint-order:stroke}}.narrow{{display:none}}"
            + $"@media (max-width:{breakpoint}px){{.wide{{display:none}}.narrow{{display:inline}}}}"
            + Colours(used, c => c.Light)
            + "@media (prefers-color-scheme:dark){" + Colours(used, c => c.Dark) + "}";
    }

    /// <summary>The colour of a text.</summary>
    public static (string Light, string Dark) Of(TextBlock text) => text switch
    {
        { Style: { } style } => Line(style),
        { Role: TextRole.Soft } => Soft,
        { Role: TextRole.Limit } => Limit,
        _ => Ink,
    };

    private static string Colours(int[] styles, Func<(string Light, string Dark), string> at)
    {
        var css = new StringBuilder(
            $".paper{{fill:{at(Paper)}}}text{{fill:{at(Ink)}}}.soft{{fill:{at(Soft)}}}.grid{{stroke:{at(Grid)}}}.minor{{stroke:{at(Faint)}}}"
            + $".axis{{stroke:{at(Soft)}}}.dot{{fill:{at(Paper)};stroke:{at(Ink)}}}.rule{{stroke:{at(Limit)}}}.limit{{fill:{at(Limit)}}}"
            + $".span{{stroke:{at(Ink)};fill:none}}.hatch{{stroke:{at(Paper)};stroke-width:1.6;fill:none}}.mark,.limit,.value{{stroke:{at(Paper)}}}");
        foreach (var style in styles)
            css.Append(CultureInfo.InvariantCulture, $".l{style}{{stroke:{at(Line(style))}}}.f{style}{{fill:{at(Line(style))}}}");
        return css.ToString();
    }
}
