using System.Reflection;
using EightOhm.Explaining;

namespace EightOhm.Finding;

/// <summary>All functions of the rooms: formulas, solvers, and what makes and judges the things of the trade.</summary>
public static class FunctionIndex
{
    private const BindingFlags Here = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    private static readonly Lazy<IReadOnlyList<FunctionDescription>> Found = new(() =>
        [.. Rooms.Types.SelectMany(Functions).Select(Describe).OrderBy(f => f.Room, StringComparer.Ordinal).ThenBy(f => f.Name, StringComparer.Ordinal).ThenBy(f => f.Signature, StringComparer.Ordinal)]);

    /// <summary>All functions, by room and name.</summary>
    public static IReadOnlyList<FunctionDescription> All => Found.Value;

    internal static FunctionDescription Describe(MemberInfo member) => new(member, FunctionWords.Of(member));

    // What a designer calls: what is documented and gives something. A room's own figures of a result are shown with the result.
    private static IEnumerable<MemberInfo> Functions(Type type)
    {
        if (type.IsEnum || typeof(Delegate).IsAssignableFrom(type) || typeof(Attribute).IsAssignableFrom(type) || typeof(Exception).IsAssignableFrom(type))
            return [];
        var members = type.GetMembers(Here).Where(m => m switch
        {
            MethodInfo method => method is { IsSpecialName: false } && method.ReturnType != typeof(void) && method.GetBaseDefinition() == method && method.Name[0] != '<',
            PropertyInfo property => property.IsDefined(typeof(FormulaAttribute)) || property.IsDefined(typeof(WorkedAttribute)),
            _ => false,
        }).Where(m => DocsKey.Find(m) is not null);
        var made = type is { IsClass: true, IsAbstract: false } or { IsValueType: true } ? type.GetConstructors().OrderByDescending(c => c.GetParameters().Length).FirstOrDefault(c => c.GetParameters() is { Length: > 0 } p && p[0].ParameterType != type) : null;
        return made is null || DocsKey.Find(type) is null ? members : members.Prepend(made);
    }
}
