using System.Linq.Expressions;
using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Tests.Record;

/// <summary>What a record may hold is held for good: a renamed or moved function must still answer to every name that a file may have.</summary>
public sealed class VocabularyTests
{
    private const BindingFlags Public = BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    // The first column is what files hold and never loses a line; the second is what it is called in the code today.
    private static string Approved { get; } = Path.Combine(Docs.WrittenTable.Root(), "tests", "EightOhm.Tests", "Record", "Examples", "vocabulary.txt");

    private static Assembly Ours => typeof(QuantityKinds).Assembly;

    [Fact]
    public void Every_approved_name_still_means_something_and_every_name_is_approved()
    {
        var present = Present().ToDictionary(p => p.Key, p => p.Member, StringComparer.Ordinal);
        var approved = File.ReadAllLines(Approved).Select(l => l.Split('\t')).ToDictionary(l => l[0], l => l[1], StringComparer.Ordinal);
        var lost = approved.Keys.Where(k => !present.ContainsKey(k)).ToList();
        Assert.True(lost.Count == 0, $"Files may hold these, and nothing answers to them any more: {string.Join("; ", lost)}. Put the old name among the others of a [RecordName], or bring the function back.");
        if (Environment.GetEnvironmentVariable("EIGHTOHM_WRITE_DOCS") == "1")
            File.WriteAllLines(Approved, present.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => $"{p.Key}\t{p.Value}"));
        else
            Assert.True(present.OrderBy(p => p.Key, StringComparer.Ordinal).SequenceEqual(approved.OrderBy(p => p.Key, StringComparer.Ordinal)), $"Names are new or belong to another member now: {string.Join("; ", present.Except(approved).Take(20).Select(p => $"{p.Key} = {p.Value}"))}. Look at them, then EIGHTOHM_WRITE_DOCS=1 dotnet test writes the list.");
    }

    [Fact]
    public void Every_formula_over_quantities_has_a_name()
    {
        var nameless = Ours.GetExportedTypes().SelectMany(t => t.GetMembers(Public))
            .Where(m => m.IsDefined(typeof(FormulaAttribute)) || m.IsDefined(typeof(SolvesAttribute)))
            .Where(m => m is MethodInfo { IsStatic: true } method && method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType).All(t => KindNames.Name(t) is not null))
            .Where(m => Vocabulary.NameOf(m) is null)
            .Select(m => $"{m.DeclaringType!.Name}.{m.Name}").ToList();
        Assert.True(nameless.Count == 0, $"Put [RecordName(\"…\")] on {string.Join(", ", nameless)}.");
    }

    [Fact]
    public void What_a_name_finds_goes_by_that_name()
    {
        var members = Vocabulary.All.Where(v => v.Value.Any(m => Vocabulary.NameOf(m) == v.Key)).ToList();
        Assert.True(members.Count > 250);
        foreach (var (name, overloads) in members)
        {
            Assert.Equal(overloads.Count, overloads.DistinctBy(m => string.Join(", ", Vocabulary.Operands(m)!.Select(t => t.FullName))).Count());
            Assert.All(overloads, m => Assert.Equal(m, Vocabulary.Find(name, Vocabulary.Operands(m)!)));
        }
    }

    [Fact]
    public void An_old_name_of_a_kind_is_read()
    {
        Assert.Equal(typeof(ThermalResistance), KindNames.Find("HeatResistance")!.Type);
        Assert.Equal("ThermalResistance", KindNames.Of(QuantityKinds.Of(typeof(ThermalResistance))));
        Assert.Equal("FromSi", Vocabulary.Find("HeatResistance.FromSi", [typeof(double)])?.Name);
    }

    [Fact]
    public void Operators_are_found_by_sign_and_kinds_as_the_compiler_finds_them()
    {
        foreach (var method in OwnOperators())
        {
            var types = method.GetParameters().Select(p => p.ParameterType).ToArray();
            if (OperatorType(method) is { } type && types.All(t => KindNames.Name(t) is not null) && KindNames.Name(method.ReturnType) is not null)
                Assert.Equal(method, Operators.Method(type, types));
        }
    }

    private static IEnumerable<(string Key, string Member)> Present()
    {
        foreach (var (name, members) in Vocabulary.All)
        {
            foreach (var member in members)
                yield return ($"{name}({Kinds(Vocabulary.Operands(member)!)}) -> {Kind(Gives(member))}", $"{member.DeclaringType!.Name}.{member.Name}");
        }

        foreach (var literal in typeof(Literals).GetMethods(Public).Where(m => Vocabulary.NameOf(m) is not null))
            yield return ($"{Vocabulary.NameOf(literal)}({Kinds(Vocabulary.Operands(literal)!)}) -> {Kind(literal.ReturnType)}", $"Literals.{literal.Name}");
        foreach (var kind in QuantityKinds.All)
        {
            yield return ($"kind {KindNames.Of(kind)}", kind.Type.Name);
            foreach (var other in kind.Type.GetCustomAttribute<RecordNameAttribute>()?.Others ?? [])
                yield return ($"kind {other}", kind.Type.Name);
            foreach (var member in kind.Type.GetMembers(Public).Where(m => kind.Type.Assembly == Ours && Vocabulary.NameOf(m) is not null && !(m is ConstructorInfo ? kind.Type : m).IsDefined(typeof(RecordNameAttribute))))
                yield return ($"{Vocabulary.NameOf(member)}({Kinds(Vocabulary.Operands(member)!)}) -> {Kind(Gives(member))}", $"{kind.Type.Name}.{member.Name}");
        }

        foreach (var method in OwnOperators().Where(m => OperatorType(m) is not null && Vocabulary.Operands(m) is not null))
            yield return ($"{Operators.Sign(OperatorType(method)!.Value)}({Kinds(Vocabulary.Operands(method)!)}) -> {Kind(method.ReturnType)}", $"{method.DeclaringType!.Name}.{method.Name}");
    }

    private static IEnumerable<MethodInfo> OwnOperators() => QuantityKinds.All.Select(k => k.Type).Where(t => t.Assembly == Ours).Append(typeof(Algebra))
        .SelectMany(t => t.GetMethods(Public)).Where(m => m.IsStatic && m.Name.StartsWith("op_", StringComparison.Ordinal));

    private static ExpressionType? OperatorType(MethodInfo method) => method.Name switch
    {
        "op_Addition" => ExpressionType.Add,
        "op_Subtraction" => ExpressionType.Subtract,
        "op_Multiply" => ExpressionType.Multiply,
        "op_Division" => ExpressionType.Divide,
        "op_UnaryNegation" => ExpressionType.Negate,
        "op_LessThan" => ExpressionType.LessThan,
        "op_LessThanOrEqual" => ExpressionType.LessThanOrEqual,
        "op_GreaterThan" => ExpressionType.GreaterThan,
        "op_GreaterThanOrEqual" => ExpressionType.GreaterThanOrEqual,
        "op_Equality" => ExpressionType.Equal,
        "op_Inequality" => ExpressionType.NotEqual,
        _ => null,
    };

    private static Type Gives(MemberInfo member) => member switch
    {
        MethodInfo method => method.ReturnType,
        PropertyInfo property => property.PropertyType,
        _ => member.DeclaringType!,
    };

    private static string Kinds(IEnumerable<Type> types) => string.Join(", ", types.Select(Kind));

    private static string Kind(Type type) => KindNames.Name(type) ?? type.GetCustomAttribute<RecordNameAttribute>()!.Name;
}
