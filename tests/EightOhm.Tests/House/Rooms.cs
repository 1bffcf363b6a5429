using System.Reflection;
using System.Reflection.Emit;

namespace EightOhm.Tests.House;

/// <summary>Which room of the library names types of which other, and one member that does.</summary>
internal sealed class Rooms(Dictionary<string, Dictionary<string, string>> references)
{
    private const string House = "EightOhm.";

    private static readonly OpCode[] Short = new OpCode[256], Long = new OpCode[256];

    static Rooms()
    {
        foreach (var code in typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (OpCode)f.GetValue(null)!))
            (code.Size == 1 ? Short : Long)[code.Value & 0xFF] = code;
    }

    /// <summary>From a room to the rooms it refers to, with a member that does.</summary>
    public Dictionary<string, Dictionary<string, string>> References => references;

    /// <summary>Reads an assembly of the house.</summary>
    public static Rooms Of(Assembly assembly)
    {
        var references = new Dictionary<string, Dictionary<string, string>>();
        foreach (var type in assembly.GetTypes())
        {
            if (Room(type) is not { } room)
                continue;
            var seen = references.TryGetValue(room, out var known) ? known : references[room] = [];
            foreach (var (other, where) in Named(type))
                foreach (var named in Flat(other))
                    if (named.Assembly == assembly && Room(named) is { } to && to != room)
                        seen.TryAdd(to, $"{type.Name}.{where} names {named.Name}");
        }

        foreach (var to in references.Values.SelectMany(r => r.Keys).Distinct().ToArray())
            references.TryAdd(to, []);
        return new Rooms(references);
    }

    /// <summary>A way round through rooms that ends where it began; empty where there is none.</summary>
    public IReadOnlyList<string> Ring()
    {
        var done = new HashSet<string>();
        foreach (var room in references.Keys.Order(StringComparer.Ordinal))
            if (From(room, [], done) is { Count: > 0 } ring)
                return ring;
        return [];
    }

    /// <summary>What refers from each room of a ring to the next.</summary>
    public string Why(IReadOnlyList<string> ring) => string.Join("; ", ring.Zip(ring.Skip(1)).Select(p => references[p.First][p.Second]));

    private List<string> From(string room, List<string> way, HashSet<string> done)
    {
        if (way.IndexOf(room) is >= 0 and var at)
            return [.. way[at..], room];
        if (!done.Add(room))
            return [];
        way.Add(room);
        foreach (var next in references[room].Keys.Order(StringComparer.Ordinal))
            if (From(next, way, done) is { Count: > 0 } ring)
                return ring;
        way.RemoveAt(way.Count - 1);
        return [];
    }

    private static string? Room(Type type) => type.Namespace is { } space && space.StartsWith(House, StringComparison.Ordinal) ? space[House.Length..].Split('.')[0] : null;

    private static IEnumerable<(Type Type, string Where)> Named(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
        foreach (var above in type.GetInterfaces().Append(type.BaseType).OfType<Type>())
            yield return (above, "base");
        foreach (var attribute in type.GetCustomAttributesData())
            yield return (attribute.AttributeType, "attribute");
        foreach (var field in type.GetFields(all))
            yield return (field.FieldType, field.Name);
        foreach (var property in type.GetProperties(all))
            foreach (var attribute in property.GetCustomAttributesData())
                yield return (attribute.AttributeType, property.Name);
        foreach (var method in type.GetMethods(all).Cast<MethodBase>().Concat(type.GetConstructors(all)))
        {
            foreach (var parameter in method.GetParameters())
                yield return (parameter.ParameterType, method.Name);
            if (method is MethodInfo { ReturnType: var returned })
                yield return (returned, method.Name);
            foreach (var attribute in method.GetCustomAttributesData())
                yield return (attribute.AttributeType, method.Name);
            foreach (var named in InBody(method))
                yield return (named, method.Name);
        }
    }

    private static IEnumerable<Type> InBody(MethodBase method)
    {
        if (method.GetMethodBody() is not { } body)
            yield break;
        foreach (var local in body.LocalVariables)
            yield return local.LocalType;
        var il = body.GetILAsByteArray()!;
        Type[] ofType = method.DeclaringType is { IsGenericType: true } g ? g.GetGenericArguments() : [], ofMethod = method is { IsGenericMethod: true } ? method.GetGenericArguments() : [];
        for (var at = 0; at < il.Length;)
        {
            var code = il[at] == 0xFE ? Long[il[at + 1]] : Short[il[at]];
            at += code.Size;
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineType or OperandType.InlineTok)
            {
                var member = method.Module.ResolveMember(BitConverter.ToInt32(il, at), ofType, ofMethod);
                if (member is Type type)
                    yield return type;
                else if (member?.DeclaringType is { } owner)
                    yield return owner;
                if (member is MethodInfo { IsGenericMethod: true } generic)
                    foreach (var argument in generic.GetGenericArguments())
                        yield return argument;
            }

            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(il, at)),
                _ => 4,
            };
        }
    }

    // A list of something names the something too.
    private static IEnumerable<Type> Flat(Type type)
    {
        if (type.HasElementType)
            return Flat(type.GetElementType()!);
        return type.IsGenericType ? type.GetGenericArguments().SelectMany(Flat).Append(type) : [type];
    }
}
