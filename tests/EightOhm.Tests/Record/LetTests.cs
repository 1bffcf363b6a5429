using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class LetTests : IDisposable
{
    private static readonly double Factor = 2;
    private readonly TestFolder _folder = new();
    private readonly DesignRecord _record;

    public LetTests()
    {
        _record = _folder.Open();
        _record.Given("P", 100.W);
        _record.Given("R_L", 8.Ohm);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_rule_gives_its_value_and_follows_its_entries()
    {
        Assert.Equal(Sqrt(100.W * 8.Ohm), _record.Let("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L)));
        var entry = _record.EntryOf("V_rms");
        Assert.Equal(("computed", "Sqrt(P * R_L)", "28.28 V"), (entry.State, entry.Rule, entry.Reads));
        Assert.Equal(["P", "R_L"], entry.From);
        Assert.Equal("(P, R_L) => Sqrt((P * R_L))", entry.Expression!.ToString());
        _record.Given("R_L", 4.Ohm);
        Assert.Equal(Sqrt(100.W * 4.Ohm), _record.Get<ElectricPotential>("V_rms"));
    }

    [Fact]
    public void A_rule_reads_as_it_would_be_typed()
    {
        _record.Let("a", (Power P) => (P - Literals.get_W(20.5)) / 2.0);
        _record.Let("b", (ElectricResistance R_L) => Sqrt(4 * (k * Literals.get_degC(25)) * R_L));
        _record.Let("c", (Power P) => P > Literals.get_W(50) ? -(2.0 * pi) : 1);
        Assert.Equal(["(P - 20.5.W) / 2", "Sqrt(4 * (k * 25.degC) * R_L)", "P > 50.W ? -(2 * pi) : 1"], _record.Entries.Skip(2).Select(e => e.Rule));
    }

    [Fact]
    public void A_variable_of_the_notebook_is_refused_by_name()
    {
        var R_x = 4.Ohm;
        var before = _folder.Text;
        var message = Assert.Throws<RecordException>(() => _record.Let("V", (Power P) => Sqrt(P * R_x))).Message;
        Assert.StartsWith("V: R_x is a variable of the notebook; make it a Given", message, StringComparison.Ordinal);
        Assert.Contains("Factor is a variable", Assert.Throws<RecordException>(() => _record.Let("V", (Power P) => P * Factor)).Message, StringComparison.Ordinal);
        const double Half = 0.5;
        Assert.Equal(50.W, _record.Let("P_half", (Power P) => P * Half));
        Assert.NotEqual(before, _folder.Text);
        Assert.Null(_record.Entries.FirstOrDefault(e => e.Name == "V"));
    }

    [Fact]
    public void What_is_not_EightOhms_is_refused_by_name()
    {
        Refused("Math.Exp(Double)", () => _record.Let("x", (Power P) => Math.Exp((double)(P / Literals.get_W(1)))));
        Refused("LetTests.Twice(Power)", () => _record.Let("x", (Power P) => Twice(P)));
        Refused("Environment.TickCount", () => _record.Let("x", (Power P) => P * Environment.TickCount));
        Refused("String.Length", () => _record.Let("x", (Power P) => P.Unit.GetType().Name.Length));
        Refused("Guard.Positive(Power, String, String)", () => _record.Let("x", (Power P) => Guard.Positive(P, "P", "x")));
        Assert.Contains("cannot keep", Assert.Throws<RecordException>(() => _record.Let("x", (Power P) => P > Literals.get_W(1))).Message, StringComparison.Ordinal);

        static void Refused(string what, Action act) =>
            Assert.Contains($"x: {what} cannot stand in a rule", Assert.Throws<RecordException>(act).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_entries_wrong_types_and_circles_are_refused()
    {
        Assert.Equal("The record has no R_x. It has P, R_L.", Assert.Throws<RecordException>(() => _record.Let("V", (Power P, ElectricResistance R_x) => Sqrt(P * R_x))).Message);
        Assert.Contains("V takes P for ElectricPotential, but the record has it as Power", Assert.Throws<RecordException>(() => _record.Let("V", (ElectricPotential P) => P)).Message, StringComparison.Ordinal);
        _record.Let("a", (Power P) => P * 2.0);
        _record.Let("b", (Power a) => a * 2.0);
        Assert.Contains("a ← b ← a", Assert.Throws<RecordException>(() => _record.Let("a", (Power b) => b * 2.0)).Message, StringComparison.Ordinal);
        Assert.Contains("a ← a", Assert.Throws<RecordException>(() => _record.Let("a", (Power a) => a * 2.0)).Message, StringComparison.Ordinal);
        Assert.Equal(400.W, _record.Get<Power>("b"));
    }

    [Fact]
    public void A_rule_that_cannot_be_computed_is_refused_with_its_reason()
    {
        var message = Assert.Throws<RecordException>(() => _record.Let("V", (Power P, ElectricResistance R_L) => Sqrt((P - Literals.get_W(200)) * R_L))).Message;
        Assert.StartsWith("V cannot be computed: The value under the root must be", message, StringComparison.Ordinal);
        Assert.Contains("has no finite value", Assert.Throws<RecordException>(() => _record.Let("x", (Power P) => 1.0 / ((double)(P / P) - 1))).Message, StringComparison.Ordinal);
        Assert.Equal(2, _record.Entries.Count);
    }

    [Fact]
    public void Rules_take_up_to_eight_entries()
    {
        for (var i = 1; i <= 8; i++)
            _record.Given($"x{i}", (double)i);
        Assert.Equal(36, _record.Let("sum", (double x1, double x2, double x3, double x4, double x5, double x6, double x7, double x8) => x1 + x2 + x3 + x4 + x5 + x6 + x7 + x8));
    }

    private static Power Twice(Power p) => p * 2.0;

    [Fact]
    public void A_quotient_that_a_cell_keeps_is_saved_as_a_quotient_and_a_division_of_whole_numbers_is_refused()
    {
        _record.Given("n", 3.0);
        Assert.Equal(0.5, _record.Let("x", (double n) => n * (EightOhm.Explaining.FormulaSteps.Kept(1.0) / 6)));
        Assert.Equal("x = n · 1/6 = 3 · 1/6 = 0.5", _record.Explain("x").ToString());
        _record.Given("k", 3);
        var refused = Assert.Throws<RecordException>(() => _record.Let("y", (int k) => k / 2 * 1.0)).Message;
        Assert.Equal("y: k / 2 divides whole numbers and drops the rest. Write k / 2.0.", refused);
    }
}
