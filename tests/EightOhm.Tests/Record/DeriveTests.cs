using System.Linq.Expressions;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Constants;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Tests.Record;

public sealed class DeriveTests : IDisposable
{
    private static readonly double Factor = 2;
    private readonly TestFolder _folder = new();
    private readonly DesignRecord _record;

    public DeriveTests()
    {
        _record = _folder.Open();
        _record.Target("P", 100.W);
        _record.Target("R_L", 8.Ohm);
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_rule_gives_its_value_and_follows_its_entries()
    {
        Assert.Equal(Sqrt(100.W * 8.Ohm), _record.Derive("V_rms", (Power P, ElectricResistance R_L) => Sqrt(P * R_L)));
        var entry = _record.EntryOf("V_rms");
        Assert.Equal((EntryState.Current, "Sqrt(P * R_L)", "28.28 V"), (entry.State, entry.Rule, entry.Reads));
        Assert.Equal(["P", "R_L"], entry.From);
        Assert.Equal("(P, R_L) => Sqrt((P * R_L))", entry.Expression!.ToString());
        _record.Target("R_L", 4.Ohm);
        Assert.Equal(Sqrt(100.W * 4.Ohm), _record.Get<ElectricPotential>("V_rms"));
    }

    [Fact]
    public void A_rule_reads_as_it_would_be_typed()
    {
        _record.Derive("a", (Power P) => (P - Literals.get_W(20.5)) / 2.0);
        _record.Derive("b", (ElectricResistance R_L) => Sqrt(4 * (k * Literals.get_degC(25)) * R_L));
        _record.Derive("c", (Power P) => P > Literals.get_W(50) ? -(2.0 * pi) : 1);
        Assert.Equal(["(P - 20.5.W) / 2", "Sqrt(4 * (k * 25.degC) * R_L)", "P > 50.W ? -(2 * pi) : 1"], _record.Entries.Skip(2).Select(e => e.Rule));
    }

    [Fact]
    public void A_variable_of_the_notebook_is_refused_by_name()
    {
        var R_x = 4.Ohm;
        var before = _folder.Text;
        var message = Assert.Throws<RecordException>(() => _record.Derive("V", (Power P) => Sqrt(P * R_x))).Message;
        Assert.StartsWith("V: R_x is a variable of the notebook; make it an entry", message, StringComparison.Ordinal);
        Assert.Contains("Factor is a variable", Assert.Throws<RecordException>(() => _record.Derive("V", (Power P) => P * Factor)).Message, StringComparison.Ordinal);
        const double Half = 0.5;
        Assert.Equal(50.W, _record.Derive("P_half", (Power P) => P * Half));
        Assert.NotEqual(before, _folder.Text);
        Assert.Null(_record.Entries.FirstOrDefault(e => e.Name == "V"));
    }

    [Fact]
    public void What_is_not_EightOhms_is_refused_by_name()
    {
        Refused("Math.Exp(Double)", () => _record.Derive("x", (Power P) => Math.Exp((double)(P / Literals.get_W(1)))));
        Refused("DeriveTests.Twice(Power)", () => _record.Derive("x", (Power P) => Twice(P)));
        Refused("Environment.TickCount", () => _record.Derive("x", (Power P) => P * Environment.TickCount));
        Refused("String.Length", () => _record.Derive("x", (Power P) => P.Unit.GetType().Name.Length));
        Refused("Guard.Positive(Power, String, String)", () => _record.Derive("x", (Power P) => Guard.Positive(P, "P", "x")));
        Assert.Contains("cannot keep", Assert.Throws<RecordException>(() => _record.Derive("x", (Power P) => P > Literals.get_W(1))).Message, StringComparison.Ordinal);

        static void Refused(string what, Action act) =>
            Assert.Contains($"x: {what} cannot stand in a rule", Assert.Throws<RecordException>(act).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_entries_wrong_types_and_circles_are_refused()
    {
        Assert.Equal("The record has no R_x. Did you mean R_L? It has P, R_L.", Assert.Throws<RecordException>(() => _record.Derive("V", (Power P, ElectricResistance R_x) => Sqrt(P * R_x))).Message);
        Assert.Contains("V takes P for ElectricPotential, but the record has it as Power", Assert.Throws<RecordException>(() => _record.Derive("V", (ElectricPotential P) => P)).Message, StringComparison.Ordinal);
        _record.Derive("a", (Power P) => P * 2.0);
        _record.Derive("b", (Power a) => a * 2.0);
        Assert.Contains("a ← b ← a", Assert.Throws<RecordException>(() => _record.Derive("a", (Power b) => b * 2.0)).Message, StringComparison.Ordinal);
        Assert.Contains("a ← a", Assert.Throws<RecordException>(() => _record.Derive("a", (Power a) => a * 2.0)).Message, StringComparison.Ordinal);
        Assert.Equal(400.W, _record.Get<Power>("b"));
    }

    [Fact]
    public void A_rule_that_cannot_be_computed_is_refused_with_its_reason()
    {
        var message = Assert.Throws<RecordException>(() => _record.Derive("V", (Power P, ElectricResistance R_L) => Sqrt((P - Literals.get_W(200)) * R_L))).Message;
        Assert.StartsWith("V has no answer: The value under the root must be", message, StringComparison.Ordinal);
        Assert.Contains("has no finite value", Assert.Throws<RecordException>(() => _record.Derive("x", (Power P) => 1.0 / ((double)(P / P) - 1))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_without_an_answer_takes_the_place_of_the_one_that_had_one()
    {
        _record.Derive("V", (Power P, ElectricResistance R_L) => Sqrt(P * R_L));
        _record.Target("V_min", 20.V);
        Assert.Equal(RequirementState.Met, _record.Require("swing", "V").AtLeast("V_min").State);
        Assert.Throws<RecordException>(() => _record.Derive("V", (Power P, ElectricResistance R_L) => Sqrt((P - Literals.get_W(200)) * R_L)));
        Assert.Equal(RequirementState.CannotTell, Assert.Single(_folder.Open().Compliance()).State);
        _record.Set("P", "300 W");
        Assert.Equal(RequirementState.Met, Assert.Single(_folder.Open().Compliance()).State);
    }

    [Fact]
    public void Ten_thousand_rules_in_a_row_need_no_deeper_stack_than_one()
    {
        var record = _folder.Open();
        using (record.Batch())
        {
            record.Target("x0", 1.0);
            for (var i = 1; i <= 10_000; i++)
                record.Derive($"x{i}", Next(i - 1));
        }

        Assert.Equal(10_001, record.Get<double>("x10000"));
        record.Set("x0", "2");
        Assert.Equal(10_002, record.Get<double>("x10000"));
        var again = _folder.Open();
        Assert.Equal(10_002, again.Get<double>("x10000"));
        Assert.Equal("x10000 is derived from x0; set that.", Assert.Throws<RecordException>(() => again.Set("x10000", "1")).Message);
        Assert.Contains("x1 would come from itself: x1 ← x10000 ← x9999 ← … ← x3 ← x2 ← x1. ", Assert.Throws<RecordException>(() => Circle(again)).Message, StringComparison.Ordinal);

        static Expression<Func<double, double>> Next(int i)
        {
            var x = Expression.Parameter(typeof(double), $"x{i}");
            return Expression.Lambda<Func<double, double>>(Expression.Add(x, Expression.Constant(1.0)), x);
        }

        static void Circle(DesignRecord record)
        {
            record.Derive("y", (double x10000) => x10000);
            record.Remove("y");
            record.Derive("x1", (double x10000) => x10000);
        }
    }

    [Fact]
    public void Sources_that_many_share_are_looked_at_once()
    {
        // Each entry names the one before twice: a walk that forgets what it saw would take 2⁶⁰ steps.
        var record = DesignRecord.Scratch();
        record.Target("s0", 1.0);
        record.Derive("t0", (double s0) => s0);
        for (var i = 1; i <= 60; i++)
        {
            record.Derive($"s{i}", Half($"s{i - 1}", $"t{i - 1}"));
            record.Derive($"t{i}", Half($"t{i - 1}", $"s{i - 1}"));
        }

        Assert.Equal(1, record.Get<double>("s60"));
        Assert.Equal("s60 is derived from s0; set that.", Assert.Throws<RecordException>(() => record.Set("s60", "1")).Message);

        static Expression<Func<double, double, double>> Half(string one, string other)
        {
            var (a, b) = (Expression.Parameter(typeof(double), one), Expression.Parameter(typeof(double), other));
            return Expression.Lambda<Func<double, double, double>>(Expression.Divide(Expression.Add(a, b), Expression.Constant(2.0)), a, b);
        }
    }

    [Fact]
    public void A_rule_too_deep_for_a_file_is_refused_before_it_is_kept()
    {
        var x = Expression.Parameter(typeof(double), "x");
        var deep = Enumerable.Range(0, 5000).Aggregate((Expression)x, (e, _) => Expression.Add(e, x));
        _record.Target("x", 1.0);
        Assert.Contains("too deep for a rule", Assert.Throws<RecordException>(() => _record.Derive("y", Expression.Lambda<Func<double, double>>(deep, x))).Message, StringComparison.Ordinal);
        var allowed = Enumerable.Range(0, 100).Aggregate((Expression)x, (e, _) => Expression.Add(e, x));
        Assert.Equal(101, _record.Derive("y", Expression.Lambda<Func<double, double>>(allowed, x)));
        Assert.Equal(101, _folder.Open().Get<double>("y"));
    }

    [Fact]
    public void Rules_take_up_to_eight_entries()
    {
        for (var i = 1; i <= 8; i++)
            _record.Target($"x{i}", (double)i);
        Assert.Equal(36, _record.Derive("sum", (double x1, double x2, double x3, double x4, double x5, double x6, double x7, double x8) => x1 + x2 + x3 + x4 + x5 + x6 + x7 + x8));
    }

    private static Power Twice(Power p) => p * 2.0;

    [Fact]
    public void A_quotient_that_a_cell_keeps_is_saved_as_a_quotient_and_a_division_of_whole_numbers_is_refused()
    {
        _record.Choose("x_n", 3.0);
        Assert.Equal(0.5, _record.Derive("x", (double x_n) => x_n * (EightOhm.Explaining.FormulaSteps.Kept(1.0) / 6)));
        Assert.Equal("x = x_n · 1/6 = 3 · 1/6 = 0.5", _record.Explain("x").ToString());
        _record.Choose("k", 3);
        var refused = Assert.Throws<RecordException>(() => _record.Derive("y", (int k) => k / 2 * 1.0)).Message;
        Assert.Contains("k / 2 divides whole numbers and drops the rest. Write k / 2.0.", refused, StringComparison.Ordinal);
    }
}
