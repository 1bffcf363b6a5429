using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Editing;

/// <summary>The documentation of an assembly from the files that the compiler wrote; they are read when the first member is asked for.</summary>
/// <param name="files">The files' paths; the first that knows a member tells of it.</param>
internal sealed class DocsFiles(params IReadOnlyList<string> files) : DocumentationProvider
{
    private readonly Lazy<Dictionary<string, string>>[] _read = [.. files.Select(f => new Lazy<Dictionary<string, string>>(() => Read(f)))];

    /// <inheritdoc/>
    protected override string? GetDocumentationForSymbol(string documentationMemberID, CultureInfo preferredCulture, CancellationToken cancellationToken = default) =>
        _read.Select(r => r.Value.GetValueOrDefault(documentationMemberID)).FirstOrDefault(text => text is not null) ?? "";

    /// <inheritdoc/>
    public override bool Equals(object? obj) => ReferenceEquals(this, obj);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    // A file that is not what it should be costs its words, not the answer.
    private static Dictionary<string, string> Read(string file)
    {
        var members = new Dictionary<string, string>(StringComparer.Ordinal);
        try
        {
            using var reader = XmlReader.Create(file);
            while (!reader.EOF)
            {
                if (reader is { NodeType: XmlNodeType.Element, Name: "member" } && reader.GetAttribute("name") is { } name)
                    members[name] = ((XElement)XNode.ReadFrom(reader)).ToString(SaveOptions.DisableFormatting);
                else
                    reader.Read();
            }
        }
        catch (Exception e) when (e is XmlException or IOException or UnauthorizedAccessException)
        {
        }

        return members;
    }
}
