using System.Text.Json.Nodes;

namespace EightOhm.Cli.Tests;

/// <summary>A temporary folder with small notebooks in it, and the program run on them in this process.</summary>
public sealed class Workshop : IDisposable
{
    private const string Package = "#r \"nuget: EightOhm.Notebook, 0.1.0\"";

    public string Folder { get; } = Directory.CreateTempSubdirectory("eightohm-").FullName;

    public string Notebooks => Path.Combine(Folder, "notebooks");

    public string Book => Path.Combine(Folder, "book");

    /// <summary>Writes a notebook: a heading cell, a cell with the package line, then the code cells given (so the first of them is cell 3).</summary>
    public string Notebook(string name, params string[] code)
    {
        return Cells(name, [Cell("markdown", $"# Chapter {name}"), Cell("code", Package), .. code.Select(source => Cell("code", source))]);
    }

    /// <summary>Writes a notebook of these cells.</summary>
    public string Cells(string name, params JsonObject[] cells)
    {
        return File(name + ".ipynb", new JsonObject
        {
            ["cells"] = new JsonArray([.. cells]),
            ["metadata"] = new JsonObject { ["kernelspec"] = new JsonObject { ["display_name"] = ".NET (C#)", ["language"] = "C#", ["name"] = ".net-csharp" } },
            ["nbformat"] = 4,
            ["nbformat_minor"] = 5,
        }.ToJsonString());
    }

    public string File(string name, string text)
    {
        var path = Path.Combine(Notebooks, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    public static JsonObject Cell(string kind, string source)
    {
        var cell = new JsonObject { ["cell_type"] = kind, ["metadata"] = new JsonObject(), ["source"] = source };
        if (kind == "code")
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }

        return cell;
    }

    /// <summary>Runs the program; the book goes to <see cref="Book"/> unless the arguments name another place.</summary>
    public async Task<Ran> RunAsync(string notebooks, params string[] more)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        string[] place = more.Contains("--out") ? [] : ["--out", Book];
        var code = await CommandLine.InvokeAsync(["run", notebooks, .. place, .. more], output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }

    /// <summary>The outputs that a notebook holds on disk, cell by cell.</summary>
    public static JsonArray[] SavedOutputs(string notebook) =>
        [.. JsonNode.Parse(System.IO.File.ReadAllText(notebook))!["cells"]!.AsArray()
            .Where(c => (string?)c!["cell_type"] == "code").Select(c => c!["outputs"]!.AsArray())];

    /// <summary>Every file under the folder and its content: what a run that failed must not have changed.</summary>
    public SortedDictionary<string, string> Everything() => new(
        Directory.GetFiles(Folder, "*", SearchOption.AllDirectories)
            // Compiled cells may be written at any time, and deleted.
            .Where(f => Path.GetFileName(Path.GetDirectoryName(f)) != EightOhm.Cells.Compiling.KeptImages.Folder)
            .ToDictionary(f => Path.GetRelativePath(Folder, f), f => Convert.ToHexString(System.IO.File.ReadAllBytes(f))),
        StringComparer.Ordinal);

    /// <summary>What lies beside the notebooks, without the compiled cells.</summary>
    public IEnumerable<string> BesideNotebooks() =>
        Directory.GetFileSystemEntries(Notebooks).Select(f => Path.GetFileName(f)).Where(name => name != EightOhm.Cells.Compiling.KeptImages.Folder);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

public sealed record Ran(int Code, string Output, string Error);
