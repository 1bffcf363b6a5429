#pragma warning disable CA1822
using EightOhm.Cli.Output;

namespace EightOhm.Cli;

internal sealed class RecordCopy
{
    public string? DesignName => null;
    public static RecordCopy Make(string folder, string copyTo, IReadOnlyList<string> settings)
    {
        foreach (var s in settings)
            if (!s.Contains('=', StringComparison.Ordinal)) throw RunFailure.BadInput($"--set '{s}' has no '='. Write \"name=value with unit\", for example --set \"P=120 W\".");
        _ = (folder, copyTo);
        return new();
    }
    public IDisposable Enter() => new MemoryStream();
    public IReadOnlyList<ComplianceRow> Compliance() => [];
    public void AddTo(SavedFiles files) { _ = files; }
}
