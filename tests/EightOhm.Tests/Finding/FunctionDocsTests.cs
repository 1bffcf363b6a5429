using System.Reflection;
using EightOhm.Explaining;
using EightOhm.Finding;
using EightOhm.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Finding;

/// <summary>What there is to know of a formula is in its documentation: what it is, what it gives, in what unit, where it stands.</summary>
public class FunctionDocsTests
{
    // How a returned kind's unit is named in words, where it is not by its symbol.
    private static readonly Dictionary<Type, string[]> Units = new()
    {
        [typeof(double)] = ["plain number"],
        [typeof(Ratio)] = ["fraction"],
        [typeof(Gain)] = ["gain", "ratio", "headroom", "crest factor", "attenuation", "rejection"],
        [typeof(Angle)] = ["degrees"],
        [typeof(Temperature)] = ["°C"],
        [typeof(JouleIntegral)] = ["A²·s"],
    };

    private static readonly ILookup<string, MemberInfo> Public = FormulaSteps.FormulasOf(typeof(FormulaSteps).Assembly)
        .Where(m => m.DeclaringType!.IsVisible && m is MethodInfo { IsPublic: true } or PropertyInfo { GetMethod.IsPublic: true })
        .ToLookup(m => $"{m.DeclaringType!.Name}.{m.Name}");

    public static TheoryData<string> Formulas => [.. Public.Select(named => named.Key)];

    [Fact]
    public void There_are_formulas_to_look_at() => Assert.True(Public.Sum(named => named.Count()) > 250);

    [Theory]
    [MemberData(nameof(Formulas))]
    public void A_formula_says_what_it_is_what_it_gives_in_what_unit_and_where_it_stands(string name)
    {
        foreach (var member in Public[name])
        {
            var about = FunctionIndex.Describe(member);
            Assert.NotEmpty(about.Summary);
            Assert.NotEmpty(about.Source);
            Assert.DoesNotContain(about.Parameters, p => p.Text.Length == 0);
            if (member is not MethodInfo method)
                continue;
            Assert.True(DocsKey.Find(member)?.Element("returns") is not null, $"{name} does not say what it returns");
            var type = method.ReturnType.IsGenericType ? method.ReturnType.GetGenericArguments()[0] : method.ReturnType;
            var wanted = Units.GetValueOrDefault(type) ?? [$"in {QuantityKinds.Of(type).Symbol}"];
            // Or the unit comes first: "V, rms, at the output".
            var first = about.Returns.Split(',', '.', ';', ' ')[0];
            Assert.True(first == QuantityKinds.Of(type).Symbol || (first is "A/V" or "A/A") || wanted.Any(w => about.Returns.Contains(w, StringComparison.OrdinalIgnoreCase)), $"{name} returns \"{about.Returns}\", which does not say {string.Join(" or ", wanted)}");
        }
    }
}
