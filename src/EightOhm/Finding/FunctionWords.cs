using System.Reflection;
using System.Text;
using System.Xml.Linq;
using EightOhm.Explaining;
using EightOhm.Quantities;

namespace EightOhm.Finding;

/// <summary>Reads what there is to say of a function from its member and its documentation.</summary>
internal sealed record FunctionWords(string Name, string Room, string Signature, string Summary, IReadOnlyList<FunctionParameter> Parameters, string Returns, string Unit, IReadOnlyList<string> Refuses, string Remarks, string Source, string Example)
{
    public static FunctionWords Of(MemberInfo member)
    {
        var docs = DocsKey.Find(member);
        // A record's primary constructor is documented at its type.
        var owner = member is ConstructorInfo ? DocsKey.Find(member.DeclaringType!) : null;
        var result = member switch { MethodInfo m => m.ReturnType, PropertyInfo p => p.PropertyType, _ => member.DeclaringType! };
        var parameters = member is MethodBase method ? method.GetParameters() : [];
        var name = member is ConstructorInfo ? Plain(member.DeclaringType!) : $"{Plain(member.DeclaringType!)}.{member.Name}";
        var summary = DocsText.Of((owner ?? docs)?.Element("summary"));
        var returns = member is MethodInfo ? DocsText.Of(docs?.Element("returns")) : summary;
        return new(
            name,
            Rooms.All.FirstOrDefault(r => r.Namespace == member.DeclaringType!.Namespace)?.Name ?? "",
            $"{(member is ConstructorInfo ? "new " : "")}{name}{(member is MethodBase ? $"({string.Join(", ", parameters.Select(p => p.Name))})" : "")}",
            summary,
            [.. parameters.Select(p => Parameter(p, docs, owner))],
            returns.Length > 0 ? returns : InWords(result),
            UnitOf(result),
            [.. (docs?.Elements("exception") ?? []).Select(DocsText.Of).Distinct()],
            DocsText.Of((owner ?? docs)?.Element("remarks")),
            member.GetCustomAttribute<FormulaAttribute>()?.Source ?? Worked(member),
            Lines((docs?.Element("example") ?? owner?.Element("example"))?.Element("code")));
    }

    private static FunctionParameter Parameter(ParameterInfo parameter, XElement? docs, XElement? owner)
    {
        var text = (docs?.Elements("param") ?? []).Concat(owner?.Elements("param") ?? []).FirstOrDefault(p => p.Attribute("name")!.Value == parameter.Name);
        var type = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return new(parameter.Name!, InWords(type), UnitOf(type), DocsText.Of(text));
    }

    private static string Worked(MemberInfo member) => member.GetCustomAttribute<WorkedAttribute>() is { } worked
        ? worked.Source.Length > 0 ? worked.Source : $"computed: {worked.How}"
        : "";

    private static string UnitOf(Type type) => QuantityKinds.Find(Item(type)) is { } kind ? kind.Spoken?.Symbol ?? kind.Symbol : "";

    private static Type Item(Type type) => type.IsSZArray ? type.GetElementType()!
        : type.IsConstructedGenericType && (type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) || type.GetGenericTypeDefinition() == typeof(Balance<>)) ? type.GetGenericArguments()[0] : type;

    private static string InWords(Type type) => Item(type) is var item && item != type ? $"{(type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Balance<>) ? "a balance" : "a list")} of {InWords(item)}"
        : type == typeof(double) ? "a number" : type == typeof(int) ? "a whole number" : type == typeof(bool) ? "yes or no"
        : type == typeof(UnitsNet.ElectricPotential) ? "voltage" : type == typeof(UnitsNet.ElectricCurrent) ? "current" : type == typeof(UnitsNet.ElectricResistance) ? "resistance" : type == typeof(UnitsNet.Ratio) ? "fraction"
        : Spaced(Plain(type));

    private static string Plain(Type type)
    {
        var name = type.Name.Split('`')[0];
        return type.IsGenericType ? $"{name}<{string.Join(", ", type.GetGenericArguments().Select(Plain))}>" : type.IsNested && !type.IsGenericParameter ? $"{Plain(type.DeclaringType!)}.{name}" : name;
    }

    internal static string Spaced(string name)
    {
        var words = new StringBuilder();
        for (var i = 0; i < name.Length; i++)
        {
            if (i > 0 && char.IsUpper(name[i]) && (char.IsLower(name[i - 1]) || (i + 1 < name.Length && char.IsLower(name[i + 1]))))
                words.Append(' ');
            words.Append(char.ToLowerInvariant(name[i]));
        }

        return words.ToString();
    }

    // Each statement a line; the lines of the source are one in the documentation.
    private static string Lines(XElement? code) => code is null ? "" : string.Join('\n', code.Value.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0));
}
