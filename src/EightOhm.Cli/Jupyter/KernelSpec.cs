using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace EightOhm.Cli.Jupyter;

/// <summary>The file by which Jupyter starts the kernel.</summary>
internal static class KernelSpec
{
    // The kernel's own web server gives out a notebook's variables and asks nobody who they are: nobody but this machine may reach it.
    private const string LocalOnly = "--http-local-only";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The text of kernel.json.</summary>
    /// <param name="program">The kernel's program, an absolute path: Jupyter starts it in the notebook's folder, which knows no tool of ours.</param>
    /// <param name="feed">The folder of packages, which every restore of the kernel then looks into.</param>
    /// <param name="dotnet">The folder of .NET, or null if that is not known.</param>
    public static string Text(string program, string feed, string? dotnet)
    {
        var environment = new JsonObject
        {
            ["RestoreAdditionalProjectSources"] = feed,
            ["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1",
            ["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1",
            ["DOTNET_NOLOGO"] = "1",
            // The kernel was built for an earlier .NET than the one at hand.
            ["DOTNET_ROLL_FORWARD"] = "Major",
            // Most of a short session is the start, which ends before profiles pay.
            ["DOTNET_TieredPGO"] = "0",
            // The kernel is built as a server, which takes a heap for each processor of the machine; a notebook shares it with the rest of a desk.
            ["DOTNET_gcServer"] = "0",
        };
        if (dotnet is not null)
            environment["DOTNET_ROOT"] = dotnet;
        var spec = new JsonObject
        {
            ["argv"] = new JsonArray(program, "jupyter", "--default-kernel", "csharp", "{connection_file}", "--http-port-range", "2048-3000", LocalOnly),
            ["display_name"] = ".NET (C#)",
            ["language"] = "C#",
            // The extension hears the signal; to the message of the other mode the host answers without stopping anything.
            ["interrupt_mode"] = "signal",
            ["env"] = environment,
            ["metadata"] = new JsonObject { ["eightohm"] = EightOhm.Cells.BuildVersion.Text },
        };
        return spec.ToJsonString(Indented) + "\n";
    }

    /// <summary>Whether a kernel.json was written by this program.</summary>
    public static bool IsOurs(string text)
    {
        try
        {
            return JsonNode.Parse(text) is JsonObject spec && spec["metadata"] is JsonObject of && of["eightohm"] is not null;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
