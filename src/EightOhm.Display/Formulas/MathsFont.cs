namespace EightOhm.Display.Formulas;

/// <summary>The maths font that a page of ours brings along: without one that has a MATH table, Chromium draws a root without its sign.</summary>
/// <remarks>A subset of STIX Math under the SIL Open Font License, renamed as the license asks; see LICENSE-maths-font.txt.</remarks>
public static class MathsFont
{
    /// <summary>The family name to use in a style sheet.</summary>
    public const string Family = "EightOhm Maths";

    /// <summary>The file name to keep it under beside pages.</summary>
    public const string FileName = "maths-font.woff2";

    /// <summary>The style rules that make formulas use it, for pages that have the file beside them.</summary>
    public const string Css =
        $$"""
        @font-face { font-family: "{{Family}}"; src: url("{{FileName}}") format("woff2"); }
        math { font-family: "{{Family}}", "Cambria Math", "STIX Two Math", "Latin Modern Math", math; }
        """;

    /// <summary>The font file.</summary>
    public static byte[] Bytes()
    {
        using var stream = typeof(MathsFont).Assembly.GetManifestResourceStream(FileName)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
