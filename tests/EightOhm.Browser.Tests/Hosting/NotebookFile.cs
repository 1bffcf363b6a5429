using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>One output of a cell: its kind and its texts by MIME type; a stream's text stands under <c>stream</c>.</summary>
internal sealed record CellOutput(string Kind, IReadOnlyDictionary<string, string> Data)
{
    public string? Html => Data.GetValueOrDefault("text/html");

    public string? Text => Data.GetValueOrDefault("text/plain");
}

/// <summary>A code cell with its outputs.</summary>
internal sealed record CodeCell(int Number, string Source, IReadOnlyList<CellOutput> Outputs)
{
    /// <summary>A cell that loads a package: what it prints is the host's, and differs between hosts.</summary>
    public bool Loads => Source.Contains("#r \"nuget:", StringComparison.Ordinal);
}

/// <summary>A notebook as it stands in its file.</summary>
internal sealed partial record NotebookFile(string Name, IReadOnlyList<CodeCell> Cells)
{
    public IEnumerable<CellOutput> Outputs => Cells.SelectMany(cell => cell.Outputs);

    /// <summary>The version in each package directive for EightOhm.Notebook.</summary>
    public IEnumerable<string> PackageVersions =>
        Cells.SelectMany(cell => PackageDirective().Matches(cell.Source)).Select(match => match.Groups["version"].Value);

    /// <summary>The values shown as <c>NAME = value</c>, as text; of a name shown twice the last. The number of a source at the line's end is no part of the value.</summary>
    public IReadOnlyDictionary<string, string> NamedNumbers
    {
        get
        {
            var numbers = new SortedDictionary<string, string>(StringComparer.Ordinal);
            foreach (var text in Outputs.Select(output => output.Text).OfType<string>())
                foreach (Match match in NamedNumber().Matches(text))
                    numbers[match.Groups["name"].Value] = match.Groups["value"].Value.Trim();
            return numbers;
        }
    }

    public static NotebookFile Read(string path)
    {
        return Parse(Path.GetFileName(path), File.ReadAllText(path));
    }

    private static NotebookFile Parse(string name, string json)
    {
        using var document = JsonDocument.Parse(json);
        var cells = document.RootElement.GetProperty("cells").EnumerateArray()
            .Select((cell, at) => (Cell: cell, Number: at + 1))
            .Where(entry => entry.Cell.GetProperty("cell_type").GetString() == "code")
            .Select(entry => new CodeCell(entry.Number, Joined(entry.Cell.GetProperty("source")),
                [.. entry.Cell.GetProperty("outputs").EnumerateArray().Select(Output)]));
        return new NotebookFile(name, [.. cells]);
    }

    private static CellOutput Output(JsonElement output)
    {
        var kind = output.GetProperty("output_type").GetString()!;
        return new CellOutput(kind, kind switch
        {
            "stream" => new Dictionary<string, string> { ["stream"] = Joined(output.GetProperty("text")) },
            "error" => new Dictionary<string, string> { ["error"] = string.Create(CultureInfo.InvariantCulture, $"{output.GetProperty("ename")}: {output.GetProperty("evalue")}") },
            _ => output.GetProperty("data").EnumerateObject().ToDictionary(entry => entry.Name, entry => Joined(entry.Value)),
        });
    }

    // The format allows a text as one string or as its lines.
    private static string Joined(JsonElement text) => text.ValueKind switch
    {
        JsonValueKind.Array => string.Concat(text.EnumerateArray().Select(line => line.GetString())),
        JsonValueKind.String => text.GetString()!,
        _ => text.GetRawText(),
    };

    [GeneratedRegex("""#r\s+"nuget:\s*EightOhm\.Notebook\s*,\s*(?<version>[^"\s]+)\s*""")]
    private static partial Regex PackageDirective();

    [GeneratedRegex(@"^(?<name>\w+) = (?:.* = )?(?<value>[-−\d][^=\n]*?)(?: {2}\[[\d, ]+\])?$", RegexOptions.Multiline)]
    private static partial Regex NamedNumber();
}
