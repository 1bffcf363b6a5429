using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;

namespace EightOhm.Tests.Record;

/// <summary>A lambda may use its parameters and what it makes of them, nothing else.</summary>
public sealed class CaptureTests
{
    private static readonly double Factor = 2;
    private readonly DesignRecord _record = DesignRecord.Scratch();
    private readonly double _scale = 3;

    public CaptureTests() => _record.Target("P", 100.W);

    private double Scale => _scale;

    private static double Setting { get; set; } = 4;

    [Fact]
    public void A_variable_is_refused_by_its_name()
    {
        var R_x = 8.Ohm;
        Refused("R_x is a variable from outside the lambda", () => _record.Compute("V", (Power P) => Maths.Sqrt(P * R_x)));
        var deeper = 2.0;
        Refused("deeper is a variable", () => _record.Compute("V", (Power P) => Enumerable.Range(1, 3).Sum(i => i * deeper)));
    }

    [Fact]
    public void Fields_and_properties_are_refused_by_their_names()
    {
        Refused("_scale is a variable", () => _record.Compute("V", (Power P) => _scale * 2));
        Refused("_scale is a variable", () => _record.Compute("V", (Power P) => Scale * 2));
        Refused("Factor is a variable", () => _record.Compute("V", (Power P) => Factor * 2));
        Refused("Setting is a variable", () => _record.Compute("V", (Power P) => Setting * 2));
    }

    [Fact]
    public void What_a_function_of_the_program_uses_is_found_through_any_number_of_calls()
    {
        Refused("Factor is a variable", () => _record.Compute("V", (Power P) => Outer(P)));
        Refused("Setting is a variable", () => _record.Compute("V", (Power P) => new Holder(2).Twice()));
        var x = 5.0;
        Refused("x is a variable", () => _record.Compute("V", (Power P) => Local()));

        double Local() => x;
    }

    [Fact]
    public void The_record_itself_and_code_that_cannot_be_read_are_refused()
    {
        var other = DesignRecord.Scratch();
        Assert.Throws<RecordException>(() => _record.Compute("V", (Power P) => other.Get<double>("x")));
        Refused("the record is read inside the lambda", () => _record.Compute("V", (Power P) => DesignRecord.Scratch().Get<double>("x")));
        System.Linq.Expressions.Expression<Func<Power, double>> tree = P => (double)(P / P);
        Refused("a function made at run time cannot be read", () => _record.Compute("V", tree.Compile()));
    }

    [Fact]
    public void What_the_lambda_makes_itself_is_its_own()
    {
        const double Half = 0.5;
        Assert.Equal(50.W, _record.Compute("P_half", (Power P) => P * Half));
        Assert.Equal(6, _record.Compute("a", (Power P) =>
        {
            var scale = 2.0;
            double Inner(double x) => x * scale;
            return new[] { 1.0, 2.0 }.Select(x => Inner(x)).Sum();
        }));
        Assert.Equal(12, _record.Compute("b", (Power P) => new Own(3).Times(4) is var own && new Pair(own, 0) is var pair ? pair.First : 0));
        Assert.Equal(40.V, _record.Compute("c", (Power P) => Pure(P)));
    }

    private void Refused(string what, Action act)
    {
        Assert.Contains($"V: {what}", Assert.Throws<RecordException>(act).Message, StringComparison.Ordinal);
        Assert.DoesNotContain(_record.Entries, e => e.Name == "V");
    }

    private static ElectricPotential Pure(Power P) => Maths.Sqrt(2 * P * 8.Ohm);

    private static double Outer(Power P) => Inner((double)P.Watts);

    private static double Inner(double p) => p * Factor;

    private sealed class Holder(double x)
    {
        public double Twice() => x * Setting;
    }

    private sealed class Own(double x)
    {
        public double Times(double y) => x * y;
    }

    private readonly record struct Pair(double First, double Second);
}
