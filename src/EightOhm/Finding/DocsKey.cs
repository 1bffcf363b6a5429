using System.Collections.Concurrent;
using System.Reflection;
using System.Xml.Linq;

namespace EightOhm.Finding;

/// <summary>The documentation that the build wrote into a library, by member.</summary>
internal static class DocsKey
{
    private static readonly ConcurrentDictionary<Assembly, IReadOnlyDictionary<string, XElement>> Read = new();

    /// <summary>What is written of a type or a member, or null.</summary>
    public static XElement? Find(MemberInfo member) =>
        Read.GetOrAdd(member.Module.Assembly, ReadAll).GetValueOrDefault(Of(member));

    // The same key as the build made.
    private static string Of(MemberInfo member) => member switch
    {
        Type type => Name(type),
        MethodBase method => $"{Name(method.DeclaringType!)}.{method.Name}({string.Join(',', method.GetParameters().Select(p => p.Name))})",
        _ => $"{Name(member.DeclaringType!)}.{member.Name}()",
    };

    private static string Name(Type type) => (type.IsGenericType ? type.GetGenericTypeDefinition() : type).FullName!;

    private static Dictionary<string, XElement> ReadAll(Assembly assembly)
    {
        var docs = new Dictionary<string, XElement>(StringComparer.Ordinal);
        var text = assembly.GetType("EightOhm.Written.FunctionDocs")?.GetMethod("Text", BindingFlags.NonPublic | BindingFlags.Static)?.Invoke(null, null) as string;
        foreach (var member in XElement.Parse(text ?? "<docs/>").Elements())
            docs[member.Attribute("k")!.Value] = member;
        return docs;
    }
}
