using System.Text.Json.Nodes;

namespace EightOhm.Cli.Tests.Making;

/// <summary>A notebook of one cell, to be copied.</summary>
internal static class Template
{
    public static string Notebook(string source, string outputs = "[]")
    {
        var cell = Workshop.Cell("code", source);
        cell["outputs"] = JsonNode.Parse(outputs);
        return new JsonObject { ["cells"] = new JsonArray(cell), ["metadata"] = new JsonObject(), ["nbformat"] = 4, ["nbformat_minor"] = 5 }.ToJsonString();
    }

    public static string Source(byte[] notebook) =>
        string.Concat(JsonNode.Parse(notebook)!["cells"]![0]!["source"]!.AsArray().Select(l => (string)l!));
}
