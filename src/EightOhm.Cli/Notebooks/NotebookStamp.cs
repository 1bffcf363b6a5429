using System.Text.Json.Nodes;
using EightOhm.Cells;

namespace EightOhm.Cli.Notebooks;

/// <summary>What a saved notebook says of its outputs: from which code, by which EightOhm, with which record. Kept in the notebook's metadata as "eightohm".</summary>
/// <param name="Code">Fingerprint of all code cells and of EightOhm's version.</param>
/// <param name="Outputs">Fingerprint of the outputs themselves, which a notebook program may change or empty.</param>
/// <param name="Record">Fingerprint of the records and of the other files that the cells name, as the run left them.</param>
internal sealed record NotebookStamp(string Code, string Outputs, string Record)
{
    public const string Key = "eightohm";

    /// <summary>The stamp of a notebook as it is now.</summary>
    /// <param name="notebook">The notebook, with its outputs.</param>
    /// <param name="record">The fingerprint of what its cells read.</param>
    public static NotebookStamp Of(NotebookFile notebook, string record)
    {
        var code = notebook.Cells.Where(c => c.IsCode).ToList();
        return new NotebookStamp(
            Fingerprint([BuildVersion.Text, .. code.Select(c => c.Source)]),
            Fingerprint(code.Select(c => c.Outputs.ToJsonString())),
            record);
    }

    /// <summary>A short fingerprint of texts, in their order.</summary>
    public static string Fingerprint(IEnumerable<string> texts) => Cells.Fingerprint.Of(texts, 16);

    public static NotebookStamp? Read(JsonObject metadata) =>
        metadata[Key] is JsonObject stamp
            ? new NotebookStamp(NbFormat.Text(stamp["code"]), NbFormat.Text(stamp["outputs"]), NbFormat.Text(stamp["record"]))
            : null;

    public void Write(JsonObject metadata) =>
        metadata[Key] = new JsonObject { ["code"] = Code, ["outputs"] = Outputs, ["record"] = Record };
}
