using EightOhm.Quantities;
using EightOhm.Tests.Quantities;
using UnitsNet;

namespace EightOhm.Tests.Docs;

public class QuantitiesPageTests
{
    [Fact]
    public void The_tables_in_docs_quantities_are_what_the_code_says()
    {
        WrittenTable.Check("quantities.md", "kinds", Kinds());
        WrittenTable.Check("quantities.md", "literals", LiteralsByKind());
        WrittenTable.Check("quantities.md", "operators", OperatorsByLeft());
        WrittenTable.Check("quantities.md", "units", [
            "| quantity | unit | symbol | in the SI unit |", "|---|---|---|---|",
            .. Units<ThermalResistance, ThermalResistanceUnit>(), .. Units<VoltageNoiseDensity, VoltageNoiseDensityUnit>(), .. Units<CurrentNoiseDensity, CurrentNoiseDensityUnit>()]);
    }

    [Fact]
    public void Every_complete_quantity_of_ours_is_in_the_table_of_units()
    {
        var complete = typeof(Gain).Assembly.GetExportedTypes().Where(t => t.IsValueType && typeof(IQuantity).IsAssignableFrom(t)).Select(t => t.Name).Order(StringComparer.Ordinal);
        Assert.Equal(["CurrentNoiseDensity", "HeatCapacity", "ThermalResistance", "VoltageNoiseDensity"], complete);
    }

    private static IEnumerable<string> Kinds() =>
    [
        "| kind | unit | also read as | prefixes | 12.345 of it reads |", "|---|---|---|---|---|",
        .. QuantityKinds.All.Select(k => $"| {k.Name} | {Cell(k.Symbol)} | {Cell(string.Join(", ", k.Spellings.Select(s => s.Text)))} | {Prefixes(k)} | {QuantityFormat.Long(k.FromSi(k.Type == typeof(int) ? 12 : 12.345))} |"),
    ];

    private static IEnumerable<string> LiteralsByKind() =>
    [
        "| kind | literals |", "|---|---|",
        .. LiteralTests.Getters(typeof(double)).GroupBy(m => m.ReturnType.Name).Select(g => $"| {g.Key} | {string.Join(", ", g.Select(m => $"`{m.Name[4..]}`"))} |"),
    ];

    // Products and quotients between kinds: ours and UnitsNet's, each once.
    private static IEnumerable<string> OperatorsByLeft()
    {
        var kinds = QuantityKinds.All.ToDictionary(k => k.Type);
        var all = typeof(Algebra).GetMethods().Concat(kinds.Keys.Where(t => t != typeof(double) && t != typeof(int)).SelectMany(t => t.GetMethods()))
            .Where(m => m.Name is "op_Multiply" or "op_Division" && m.GetParameters().All(p => kinds.ContainsKey(p.ParameterType)) && kinds.ContainsKey(m.ReturnType) && !m.IsDefined(typeof(ObsoleteAttribute), false))
            .Select(m => (Left: m.GetParameters()[0].ParameterType, Sign: m.Name == "op_Multiply" ? "·" : "/", Right: m.GetParameters()[1].ParameterType, Gives: m.ReturnType))
            // A scaled value is of its own kind, and a ratio of equals a number: that goes without saying.
            .Where(o => !(o.Right == typeof(double) && o.Gives == o.Left) && !(o.Left == typeof(double) && o.Sign == "·") && !(o.Left == o.Right && o.Sign == "/"))
            .Distinct().ToList();
        return
        [
            "| left | with | gives |", "|---|---|---|",
            .. kinds.Keys.SelectMany(left => all.Where(o => o.Left == left)).Select(o => $"| {o.Left.Name} | {o.Sign} {o.Right.Name} | {o.Gives.Name} |"),
        ];
    }

    private static IEnumerable<string> Units<T, TUnit>()
        where T : struct, IOwnQuantity<T, TUnit>
        where TUnit : struct, Enum =>
        T.Units.Info.UnitInfos.Select(i => i.Value).Select(u =>
            $"| {typeof(T).Name} | {u} | {UnitsNetSetup.Default.UnitAbbreviations.GetDefaultAbbreviation(u, System.Globalization.CultureInfo.InvariantCulture)} | {Engineering.Number(T.From(1, u).Si)} |");

    private static string Prefixes(QuantityKind k) => k.Most == k.Least ? "none" : $"10^{k.Least} to 10^{k.Most}".Replace('-', '−');

    private static string Cell(string text) => text.Length == 0 ? "–" : text;
}
