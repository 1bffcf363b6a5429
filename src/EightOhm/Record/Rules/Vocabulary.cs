using System.Reflection;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>The functions, properties and constructors that a rule may use, each by a name of its own. A record can name only what stands here, so that loading one runs nothing else.</summary>
internal static class Vocabulary
{
    private const string Literal = "literal.";
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
    private static readonly Lazy<Dictionary<string, List<MemberInfo>>> Own = new(Collect);

    /// <summary>The names of our own, with what each means now.</summary>
    public static IReadOnlyDictionary<string, List<MemberInfo>> All => Own.Value;

    /// <summary>The name of a member in a record, or null when a rule may not use it.</summary>
    public static string? NameOf(MemberInfo member)
    {
        if (member.DeclaringType is not { } owner || Operands(member) is null)
            return null;
        if (member is ConstructorInfo)
            return IsOurs(owner) ? owner.GetCustomAttribute<RecordNameAttribute>()?.Name ?? KindName(owner) : null;
        if (member.GetCustomAttribute<RecordNameAttribute>() is { } own)
            return IsOurs(owner) ? own.Name : null;
        if (owner == typeof(Literals))
            return member.Name.StartsWith("get_", StringComparison.Ordinal) ? Literal + member.Name[4..] : null;
        // A quantity made from a number, or read in a unit: its own name and the unit's.
        return KindName(owner) is { } kind && (member is PropertyInfo || IsFrom(member, owner)) ? $"{kind}.{member.Name}" : null;
    }

    /// <summary>The member of a name that takes such operands, or null.</summary>
    /// <param name="name">The name, or one that it had before.</param>
    /// <param name="operands">The types; an instance's own comes first.</param>
    public static MemberInfo? Find(string name, IReadOnlyList<Type> operands)
    {
        var candidates = Candidates(name).Select(m => (Member: m, Takes: Operands(m)!)).Where(c => c.Takes.Count == operands.Count).ToList();
        return candidates.FirstOrDefault(c => c.Takes.SequenceEqual(operands)).Member
            ?? candidates.FirstOrDefault(c => c.Takes.Zip(operands).All(p => p.First.IsAssignableFrom(p.Second))).Member;
    }

    /// <summary>Whether a name is known for any operands.</summary>
    public static bool Knows(string name) => Candidates(name).Any();

    /// <summary>What a member takes, an instance first; null when it takes or gives what a rule cannot hold.</summary>
    public static IReadOnlyList<Type>? Operands(MemberInfo member)
    {
        var (isStatic, parameters, gives) = member switch
        {
            ConstructorInfo c => (true, c.GetParameters(), c.DeclaringType!),
            MethodInfo m => (m.IsStatic, m.GetParameters(), m.ReturnType),
            PropertyInfo { GetMethod: { IsPublic: true } get } => (get.IsStatic, get.GetParameters(), get.ReturnType),
            _ => (true, null, typeof(void)),
        };
        if (parameters is null || member is MethodBase { IsPublic: false } or MethodBase { IsGenericMethod: true } || member.IsDefined(typeof(ObsoleteAttribute), false))
            return null;
        var takes = parameters.Select(p => p.ParameterType);
        Type[] operands = isStatic ? [.. takes] : [member.DeclaringType!, .. takes];
        return operands.Append(gives).All(IsValue) ? operands : null;
    }

    private static bool IsValue(Type type) => KindNames.Name(type) is not null || (IsOurs(type) && type.IsDefined(typeof(RecordNameAttribute), false));

    private static IEnumerable<MemberInfo> Candidates(string name)
    {
        if (All.TryGetValue(name, out var own))
            return own;
        if (name.StartsWith(Literal, StringComparison.Ordinal))
            return typeof(Literals).GetMethods(Public).Where(m => NameOf(m) == name);
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        if (KindNames.Find(dot < 0 ? name : name[..dot])?.Type is not { } kind)
            return [];
        // A kind may have had another name when the file was written: the rest of the name decides.
        return dot < 0
            ? kind.GetConstructors().Where(c => NameOf(c) is not null)
            : kind.GetMember(name[(dot + 1)..], Public).Where(m => NameOf(m) is { } found && found.EndsWith(name[dot..], StringComparison.Ordinal));
    }

    private static Dictionary<string, List<MemberInfo>> Collect()
    {
        var found = new Dictionary<string, List<MemberInfo>>(StringComparer.Ordinal);
        foreach (var type in typeof(Vocabulary).Assembly.GetExportedTypes())
        {
            foreach (var member in type.GetMembers(Public).Where(m => m is ConstructorInfo ? type.IsDefined(typeof(RecordNameAttribute), false) : m.IsDefined(typeof(RecordNameAttribute), false)))
            {
                var names = (member is ConstructorInfo ? type : member).GetCustomAttribute<RecordNameAttribute>()!;
                foreach (var name in names.Others.Prepend(names.Name).Where(_ => Operands(member) is not null))
                {
                    if (!found.TryGetValue(name, out var members))
                        found[name] = members = [];
                    members.Add(member);
                }
            }
        }

        return found;
    }

    private static bool IsOurs(Type type) => type.Assembly == typeof(Vocabulary).Assembly && type.IsPublic;

    private static string? KindName(Type type) => QuantityKinds.Find(type) is { } kind && !type.IsPrimitive ? KindNames.Of(kind) : null;

    private static bool IsFrom(MemberInfo member, Type owner) =>
        member is MethodInfo { IsStatic: true } method && method.ReturnType == owner && method.Name.StartsWith("From", StringComparison.Ordinal);
}
