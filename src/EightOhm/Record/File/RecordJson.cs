using System.Text.Encodings.Web;
using System.Text.Json;
using EightOhm.Json;

namespace EightOhm.Record;

/// <summary>How a record's JSON is written.</summary>
internal static class RecordJson
{
    public const string Format = "eightohm-record";
    public const int Version = 2;

    /// <summary>The file: one member a line.</summary>
    public static readonly JsonWriterOptions Lines = new()
    {
        Indented = true,
        NewLine = "\n",
        MaxDepth = JsonReading.Depth,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // Ω, √ and ° as themselves; the file is never put into a page.
    };

    /// <summary>A rule: on one line, so that a changed rule is one changed line.</summary>
    public static readonly JsonWriterOptions OneLine = Lines with { Indented = false };
}
