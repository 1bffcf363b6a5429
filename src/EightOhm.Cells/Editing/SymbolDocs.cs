using System.Net;
using System.Xml;
using System.Xml.Linq;
using EightOhm.Display.Formulas;
using EightOhm.Explaining;
using EightOhm.Finding;
using EightOhm.Quantities;
using Microsoft.CodeAnalysis;

namespace EightOhm.Cells.Editing;

/// <summary>What is written of a symbol, as HTML in which nothing of a symbol's own text is markup.</summary>
/// <remarks>The words are those of a function's description (<c>About</c>): takes, gives, refuses, note, source.</remarks>
internal sealed class SymbolDocs
{
    private const int MostInherited = 8;

    private readonly ISymbol _declared;
    private readonly ISymbol _symbol;
    private readonly XElement? _docs;
    // A record's primary constructor and the properties it makes are documented at the type.
    private readonly XElement? _owner;

    /// <summary>Reads what is written.</summary>
    public SymbolDocs(ISymbol symbol)
    {
        _declared = symbol;
        _symbol = symbol is IMethodSymbol { ReducedFrom: { } whole } ? whole.OriginalDefinition : symbol.OriginalDefinition;
        _docs = Read(_symbol);
        _owner = _symbol is IPropertySymbol or IMethodSymbol { MethodKind: MethodKind.Constructor } && _docs?.Element("summary") is null ? Read(_symbol.ContainingType) : null;
    }

    /// <summary>What it is: one paragraph; empty where nothing is written.</summary>
    public string Summary => Paragraph(Text(_symbol switch
    {
        IParameterSymbol parameter => new SymbolDocs(parameter.ContainingSymbol).Element(parameter),
        IPropertySymbol when _owner is not null => Named(_owner, _symbol.Name),
        _ => (_docs ?? _owner)?.Element("summary") ?? _owner?.Element("summary"),
    }));

    /// <summary>What a parameter is, with the unit in which such a value is spoken of.</summary>
    public string Of(IParameterSymbol parameter)
    {
        var (text, unit) = (Text(Element(parameter)), UnitOf(parameter.Type));
        return text.Length == 0 ? SymbolHtml.Write(unit) : SymbolHtml.Write(unit.Length == 0 ? text : $"{unit}. {text}");
    }

    /// <summary>All of it: how it is declared, what it is, what it takes, gives, refuses, its remarks, its source and an example.</summary>
    public string Whole()
    {
        IReadOnlyList<IParameterSymbol> parameters = _symbol is IMethodSymbol method ? method.Parameters : _symbol is IPropertySymbol property ? property.Parameters : [];
        var lines = parameters.Select(p => Line(p.Name, Of(p)))
            .Append(Line("gives", SymbolHtml.Write(Text(_docs?.Element("returns")))))
            .Append(Line("unit", SymbolHtml.Write(Unit())))
            .Concat((_docs?.Elements("exception") ?? []).Select(Text).Distinct().Select(r => Line("refuses", SymbolHtml.Write(r))))
            .Append(Line("note", SymbolHtml.Write(Text(_docs?.Element("remarks") ?? _owner?.Element("remarks")))))
            .Append(Line("source", SymbolHtml.Write(Source())));
        var all = string.Concat(lines);
        var example = Example();
        return $"<div class=\"eo-about\"><p><code>{WebUtility.HtmlEncode(SymbolWords.Signature(_declared))}</code></p>{Summary}{(all.Length == 0 ? "" : $"<dl>{all}</dl>")}"
            + (example.Length == 0 ? "" : $"<pre>{WebUtility.HtmlEncode(example)}</pre>") + "</div>";
    }

    private static string Line(string what, string html) => html.Length == 0 ? "" : $"<dt>{SymbolHtml.Write(what)}</dt><dd>{html}</dd>";

    private static string Paragraph(string text) => text.Length == 0 ? "" : $"<p>{SymbolHtml.Write(text)}</p>";

    private static string Text(XElement? element) => DocsText.Of(element);

    private static XElement? Named(XElement? docs, string parameter) => docs?.Elements("param").FirstOrDefault(p => p.Attribute("name")?.Value == parameter);

    private XElement? Element(IParameterSymbol parameter) => Named(_docs, parameter.Name) ?? Named(_owner, parameter.Name);

    // Where words are written of what it gives they say the unit themselves.
    private string Unit() => _docs?.Element("returns") is not null || _declared is INamedTypeSymbol or INamespaceSymbol or IMethodSymbol { MethodKind: MethodKind.Constructor } || SymbolWords.TypeOf(_declared) is not { } type ? "" : UnitOf(type);

    private string Source()
    {
        foreach (var attribute in _symbol.GetAttributes())
        {
            if (attribute.AttributeClass?.Name == nameof(FormulaAttribute) && attribute.ConstructorArguments is [{ Value: string source }, ..])
                return source;
            if (attribute.AttributeClass?.Name == nameof(WorkedAttribute) && attribute.ConstructorArguments is [{ Value: string how }, ..])
                return attribute.NamedArguments.FirstOrDefault(n => n.Key == nameof(WorkedAttribute.Source)).Value.Value is string { Length: > 0 } stands ? stands : $"computed: {how}";
        }

        return "";
    }

    // Each statement a line, as it stands in the source.
    private string Example() => (_docs?.Element("example") ?? _owner?.Element("example"))?.Element("code") is { } code
        ? string.Join('\n', code.Value.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0))
        : "";

    private static string UnitOf(ITypeSymbol type)
    {
        var item = type switch
        {
            INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } nullable => nullable.TypeArguments[0],
            IArrayTypeSymbol array => array.ElementType,
            INamedTypeSymbol { Name: nameof(IReadOnlyList<>), TypeArguments: [var one] } => one,
            _ => type,
        };
        return item.ContainingNamespace?.ToDisplayString() is "UnitsNet" or "EightOhm.Quantities" && QuantityKinds.Find(item.Name) is { } kind ? kind.Spoken?.Symbol ?? kind.Symbol : "";
    }

    // What is inherited is read where it was written; what is written anew goes before it.
    private static XElement? Read(ISymbol? symbol, int deep = 0)
    {
        if (symbol is null || deep > MostInherited)
            return null;
        var own = symbol.GetDocumentationCommentXml() is { Length: > 0 } xml ? Parsed(xml) : null;
        if (own is not null && own.Element("inheritdoc") is null)
            return own;
        var from = own?.Element("inheritdoc")?.Attribute("cref")?.Value is { } cref ? Named(symbol, cref) : Inherited(symbol);
        if (Read(from?.OriginalDefinition, deep + 1) is not { } inherited)
            return own;
        foreach (var element in inherited.Elements().Where(e => own?.Elements(e.Name).Any(o => o.Attribute("name")?.Value == e.Attribute("name")?.Value) == true).ToList())
            element.Remove();
        inherited.AddFirst(own?.Elements().Where(e => e.Name != "inheritdoc") ?? []);
        return inherited;
    }

    // M:EightOhm.Record.DesignRecord.Target``1(…), in the assembly of the symbol that says so.
    private static ISymbol? Named(ISymbol symbol, string cref)
    {
        if (symbol.ContainingAssembly is not { } assembly || cref.Length < 3)
            return null;
        var name = cref[2..].Split('(')[0];
        if (cref.StartsWith("T:", StringComparison.Ordinal))
            return assembly.GetTypeByMetadataName(name);
        var dot = name.LastIndexOf('.');
        return dot < 0 ? null : assembly.GetTypeByMetadataName(name[..dot])?.GetMembers().FirstOrDefault(m => m.GetDocumentationCommentId() == cref);
    }

    private static XElement? Parsed(string xml)
    {
        try
        {
            return XElement.Parse(xml);
        }
        catch (XmlException)
        {
            return null;
        }
    }

    private static ISymbol? Inherited(ISymbol symbol) => symbol switch
    {
        IMethodSymbol { OverriddenMethod: { } method } => method,
        IPropertySymbol { OverriddenProperty: { } property } => property,
        INamedTypeSymbol or INamespaceSymbol => null,
        { ContainingType: { } type } => type.AllInterfaces.SelectMany(i => i.GetMembers(symbol.Name)).FirstOrDefault(m => SymbolEqualityComparer.Default.Equals(type.FindImplementationForInterfaceMember(m), symbol)),
        _ => null,
    };
}
